/** What each folder of src may import. A folder that is missing here makes the architecture test fail. */

export interface Room {
  /** Other rooms it may import; "types" means `import type` only. Every room may import itself. */
  readonly rooms: Readonly<Record<string, 'all' | 'types'>>;
  /** npm packages, without the path inside them; "node:" stands for the modules of Node itself. */
  readonly packages: readonly string[];
}

export const ROOMS: Readonly<Record<string, Room>> = {
  core: { rooms: {}, packages: [] },
  data: { rooms: { core: 'types' }, packages: [] },
  storage: { rooms: { core: 'all' }, packages: ['zod', 'papaparse'] },
  wording: { rooms: { core: 'all', storage: 'all', solids: 'types' }, packages: [] },
  headless: { rooms: { core: 'all', data: 'all', storage: 'all', wording: 'all' }, packages: ['node:'] },
  solids: { rooms: { core: 'all' }, packages: ['fflate', 'earcut', 'saxes'] },
  workers: { rooms: { core: 'all', data: 'all', solids: 'all' }, packages: [] },
  app: {
    rooms: { core: 'all', data: 'all', storage: 'all', wording: 'all', workers: 'all', solids: 'all' },
    packages: ['react', 'react-dom', 'mathjs', 'recharts', 'zod'],
  },
};

/** The folders of src/core, ground floor first. A folder may import itself and every storey below its own. */
export const CORE_STOREYS: readonly (readonly string[])[] = [
  ['units', 'sources', 'numerics'],
  ['inserts', 'host', 'screws', 'evidence'],
  ['holes', 'pull-out', 'torque', 'relaxation', 'loads', 'hole-finding'],
  ['joint'],
  ['chance', 'service', 'coupons', 'bench'],
  ['recommend'],
  ['steps'],
];

/** The exceptions: which folder may import which other ones of its own storey, in one direction. */
export const SIDEWAYS: Readonly<Record<string, readonly string[]>> = {
  units: ['sources'],
  numerics: ['sources'],
  inserts: ['screws'],
  'pull-out': ['torque'],
};

/** Folders whose sub-folders must not import each other: somebody above joins them. */
export const SEPARATE_WITHIN: readonly string[] = ['src/app/questions'];
