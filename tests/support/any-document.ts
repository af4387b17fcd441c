import { CATALOGUE } from '../../src/data/catalogue.ts';
import {
  DOCUMENT_FORMAT,
  DOCUMENT_VERSION,
  type InsertRecord,
  type JointDocument,
} from '../../src/storage/document.ts';
import { LEAST_LOAD_N } from '../../src/storage/least-values.ts';
import { LIMITS, type LimitName } from '../../src/storage/limits.ts';
import { anyTests } from './any-tests.ts';
import fc from './fast-check.ts';

/** A file knows no −0. */
const withoutSign = (value: number) => value + 0;

/** A number of the door's own range; its ends come up often. */
const within = (name: LimitName) => {
  const { least, greatest } = LIMITS[name];
  return fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: least, max: greatest, noNaN: true }).map(withoutSign) },
    { weight: 1, arbitrary: fc.constantFrom(least, greatest) },
  );
};

/** The same, half of the time kept to what people really enter. */
const mostly = (name: LimitName, min: number, max: number) =>
  fc.oneof(
    { weight: 3, arbitrary: fc.double({ min, max, noNaN: true }).map(withoutSign) },
    { weight: 1, arbitrary: within(name) },
  );
const whole = (name: LimitName) => fc.integer({ min: LIMITS[name].least, max: LIMITS[name].greatest });
const oneOf = <T>(rows: readonly T[]) => fc.constantFrom(...rows);

/** One insert: half of them drawn so that they can exist, from the bare edge on, half freely from the ranges. */
const insertFor = (thread: string, diameter: number): fc.Arbitrary<InsertRecord> => {
  const freely = fc.record({
    knurl: within('insertDiameter_mm'),
    pilot: within('insertDiameter_mm'),
    length: within('insertLength_mm'),
    knurled: fc.option(within('insertLength_mm'), { nil: undefined }),
  });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const fitting = fc
    .record({ a: share, b: share, c: share, k: fc.option(share, { nil: undefined }) })
    .map(({ a, b, c, k }) => {
      const knurl = diameter + 0.6 + a * (2.2 * diameter - 0.6);
      const length = 0.5 * diameter + c * 4.5 * diameter;
      return {
        knurl,
        pilot: diameter + 1e-6 + b * (knurl - diameter - 1e-3),
        length: Math.max(length, 0.41 * knurl),
        knurled: k === undefined ? undefined : Math.max(0.05, k * length),
      };
    });
  return fc
    .record({
      values: fc.oneof({ weight: 15, arbitrary: fitting }, { weight: 1, arbitrary: freely }),
      count: fc.option(whole('count'), { nil: undefined }),
    })
    .map(({ values: { knurl, pilot, length, knurled }, count }) => ({
      id: 'drawn',
      thread,
      knurlDiameter_mm: [knurl],
      pilotDiameter_mm: [pilot],
      length_mm: [length],
      ...(knurled === undefined ? {} : { knurledLength_mm: [knurled] }),
      ...(count === undefined ? {} : { count }),
    }));
};

const threads = CATALOGUE.threads.map(({ id, nominalDiameter }) => ({ id, nominalDiameter }));
type Thread = (typeof threads)[number];
type Parts<Key extends keyof JointDocument['joint']> = fc.Arbitrary<JointDocument['joint'][Key]>;

const host: Parts<'host'> = fc
  .record({
    material: oneOf(CATALOGUE.hostMaterials.map(({ id }) => id)),
    axis: fc.constantFrom('along-build', 'across-build'),
    wall: fc.oneof(
      fc.record({
        kind: fc.constant('lines'),
        count: whole('wallLines'),
        lineWidth_mm: within('lineWidth_mm'),
        convention: fc.constantFrom('rounded-beads', 'plain-beads'),
      }),
      fc.record({
        kind: fc.constant('measured'),
        thickness_mm: within('wallThickness_mm'),
        lineWidth_mm: within('lineWidth_mm'),
      }),
    ),
    layerShare: fc.double({ min: 0.05, max: 1, noNaN: true }),
    infill: fc.record({
      pattern: oneOf(CATALOGUE.infillPatterns.map(({ id }) => id)),
      density_percent: within('infill_percent'),
    }),
    topSkin_mm: within('topSkin_mm'),
    thickness_mm: mostly('hostThickness_mm', 6, 40),
    boss: fc.option(mostly('bossDiameter_mm', 5, 25), { nil: undefined }),
  })
  .map(({ layerShare, boss, ...rest }) => ({
    ...rest,
    layerHeight_mm: Math.max(LIMITS.layerHeight_mm.least, Math.min(1, layerShare * rest.wall.lineWidth_mm)),
    ...(boss === undefined ? {} : { bossDiameter_mm: boss }),
  }));

const withWasher = new Set(CATALOGUE.washers.map(({ thread }) => thread));

const screw = (thread: Thread): Parts<'screw'> =>
  oneOf(CATALOGUE.heads.filter((row) => row.thread === thread.id)).chain(({ standard, shape }) =>
    fc
      .record({
        head: fc.constant(standard),
        propertyClass: oneOf(CATALOGUE.propertyClasses.map(({ id }) => id)),
        friction: oneOf(CATALOGUE.frictionConditions.map(({ id }) => id)),
        washer:
          withWasher.has(thread.id) && shape !== 'countersunk'
            ? fc.constantFrom<('none' | 'plain')[]>('none', 'plain')
            : fc.constant('none' as const),
        threadLocking: fc.constantFrom<('none' | 'fluid')[]>('none', 'fluid'),
        length: fc.option(within('screwLength_mm'), { nil: undefined }),
      })
      .map(({ length, ...rest }) => ({
        thread: thread.id,
        ...rest,
        ...(length === undefined ? {} : { length_mm: length }),
      })),
  );

/** None, or one that can be told. */
const load = (name: 'pull_N' | 'shear_N', usual: number) =>
  fc
    .oneof(fc.constant(0), mostly(name, LEAST_LOAD_N, usual))
    .map((value) => (value < LEAST_LOAD_N ? 0 : value));

const place = fc.oneof(fc.constant(0), mostly('place_mm', -60, 60));
const moment = fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, mostly('moment_Nm', -2, 2));
const patternCount = fc.integer({ min: LIMITS.patternCount.least, max: 5 });

const pattern: fc.Arbitrary<JointDocument['joint']['pattern']> = fc.oneof(
  fc.constant({ kind: 'single' as const }),
  fc.record({
    kind: fc.constant('rectangular' as const),
    columns: patternCount,
    rows: patternCount,
    spacingX_mm: mostly('spacing_mm', 10, 80),
    spacingY_mm: mostly('spacing_mm', 10, 80),
  }),
  fc.record({
    kind: fc.constant('circular' as const),
    count: patternCount,
    diameter_mm: mostly('spacing_mm', 10, 80),
  }),
  fc.record({
    kind: fc.constant('free' as const),
    positions_mm: fc.array(fc.record({ x: place, y: place }), { minLength: 1, maxLength: 6 }),
  }),
);

const sleeve = fc.option(
  fc.record({
    material: oneOf(CATALOGUE.clampedMaterials.filter(({ kind }) => kind === 'metal').map(({ id }) => id)),
    outsideDiameter_mm: mostly('sleeveDiameter_mm', 5, 12),
  }),
  { nil: undefined, freq: 3 },
);

type Clamped = JointDocument['joint']['clamped'];
const withoutAbsentSleeve = ({
  sleeve: given,
  ...rest
}: Omit<Clamped, 'sleeve'> & { sleeve: Clamped['sleeve'] | undefined }): Clamped => ({
  ...rest,
  ...(given === undefined ? {} : { sleeve: given }),
});

const absent = { nil: undefined };
type Existing = NonNullable<JointDocument['joint']['holes']['existing']>;

/** A hole that is there in two of three joints: from much too small to much too wide for inserts of the thread. */
const existing = ({ nominalDiameter: d }: Thread): fc.Arbitrary<Existing | undefined> =>
  fc.option(
    fc
      .record({
        diameter_mm: mostly('holeDiameter_mm', d, 2.6 * d),
        known: fc.constantFrom<Existing['known'][]>('as-drawn', 'as-measured'),
        depth: fc.option(mostly('holeDepth_mm', 1, 12), absent),
      })
      .map(({ depth, ...rest }) => ({ ...rest, ...(depth === undefined ? {} : { depth_mm: depth }) })),
    { nil: undefined, freq: 3 },
  );

const holes = (thread: Thread): Parts<'holes'> =>
  fc
    .record({
      compensation: fc.constantFrom<('in-cad' | 'in-slicer')[]>('in-cad', 'in-slicer'),
      fit_mm: within('fit_mm'),
      step_mm: within('step_mm'),
      there: existing(thread),
    })
    .map(({ there, ...rest }) => ({ ...rest, ...(there === undefined ? {} : { existing: there }) }));

const jointOf = (thread: Thread): fc.Arbitrary<JointDocument['joint']> =>
  fc.record({
    clamped: fc
      .record({
        material: oneOf(CATALOGUE.clampedMaterials.map(({ id }) => id)),
        thickness_mm: mostly('clampedThickness_mm', 0.5, 12),
        clearanceHole_mm: mostly(
          'clearanceHole_mm',
          1.01 * thread.nominalDiameter,
          1.7 * thread.nominalDiameter,
        ),
        sleeve,
      })
      .map(withoutAbsentSleeve),
    gap_mm: fc.oneof(fc.constant(0), within('gap_mm')),
    sunk_mm: fc.oneof(fc.constant(0), within('sunk_mm')),
    insertSide: fc.constantFrom('near-side', 'far-side'),
    seat: fc.oneof(
      { weight: 2, arbitrary: fc.constant('from-geometry' as const) },
      fc.constantFrom<JointDocument['joint']['seat'][]>('on-insert', 'on-plastic', 'over-gap', 'far-side'),
    ),
    host,
    setting: fc.constantFrom('heat-set', 'cold-pressed', 'hammered'),
    holes: holes(thread),
    screw: screw(thread),
    pattern,
    loads: fc.record({
      pull_N: load('pull_N', 300),
      shear_N: load('shear_N', 100),
      shearAcross_N: load('shear_N', 100),
      at_mm: fc.record({ x: place, y: place, z: place }),
      moment_Nm: fc.record({ x: moment, y: moment, z: moment }),
      pivot: fc.oneof(
        fc.constant({ kind: 'centroid' as const }),
        fc.record({
          kind: fc.constant('edge' as const),
          x_mm: mostly('edge_mm', 200, 900),
          y_mm: mostly('edge_mm', 200, 900),
        }),
      ),
      retightenings: fc.integer({ min: LIMITS.retightenings.least, max: LIMITS.retightenings.greatest }),
      vibration: fc.constantFrom('none', 'present'),
      serviceTemperature_degC: mostly('serviceTemperature_degC', -10, 60),
      duration_h: within('duration_h'),
    }),
    use: fc.constant('general'),
    tool: fc.record({
      kind: fc.constantFrom('torque-driver', 'hand'),
      settings_Nm: fc.array(within('setting_Nm'), { maxLength: 8 }),
      step_Nm: within('toolStep_Nm'),
    }),
    factors: fc.record({ limits: mostly('factor', 1, 1.5), closed: within('factor') }),
  });

/** Any document that the schema accepts, from the door's own ranges; its parts need not fit one another. */
export const anyDocument: fc.Arbitrary<JointDocument> = oneOf(threads).chain((thread) =>
  fc
    .record({
      joint: jointOf(thread),
      permissibleError_mm: within('permissibleError_mm'),
      drawer: fc.array(insertFor(thread.id, thread.nominalDiameter), { minLength: 1, maxLength: 3 }),
    })
    .map(({ joint, permissibleError_mm, drawer }) => ({
      format: DOCUMENT_FORMAT,
      version: DOCUMENT_VERSION,
      name: 'Drawn at random',
      scenario: '',
      joint,
      caliper: { permissibleError_mm },
      drawer: drawer.map((insert, index) => ({ ...insert, id: `drawn-${index}` })),
      printers: [],
      tests: [],
      evidence: 'used' as const,
    })),
);

/** The same with tests at the bench, of its own inserts or of ones that have gone. */
export const anyTestedDocument: fc.Arbitrary<JointDocument> = anyDocument.chain((document) =>
  fc
    .record({
      tests: anyTests(document),
      evidence: fc.constantFrom<JointDocument['evidence'][]>('used', 'left-out'),
    })
    .map((tested) => ({ ...document, ...tested })),
);
