import type { SectionInput } from '../../../src/app/drawing/section-input.ts';

/** What a test wants different; a group is merged, everything else replaced. */
export type SectionChanges = {
  readonly [Group in 'clamped' | 'insert' | 'hole' | 'host']?: Partial<SectionInput[Group]>;
} & {
  readonly screw?: Partial<SectionInput['screw']>;
  readonly gap?: number;
  readonly seat?: SectionInput['seat'];
  readonly loads?: SectionInput['loads'];
};

const USUAL: SectionInput = {
  screw: {
    designation: 'M3',
    description: 'ISO 4762, class 8.8',
    state: 'chosen',
    nominalDiameter: 3,
    minorDiameter: 2.39,
    length: 8,
    head: { shape: 'cylindrical', diameter: 5.5, height: 3.1, socketAcrossFlats: 2.5, socketDepth: 1.3 },
  },
  clamped: { kind: 'metal', name: 'aluminium', thickness: 2.7, clearanceHole: 3.4 },
  gap: 0,
  insert: {
    side: 'near-side',
    sunk: 0,
    knurlDiameter: 4.93,
    pilotDiameter: 4.21,
    length: 5.3,
    knurledLength: 3.9,
    remelted: true,
  },
  hole: {
    borePrinted: 4.26,
    boreDrawn: 4.55,
    depth: 7.2,
    chamfer: 0.4,
    meltHeight: 0.66,
    meltVolume: 9.4,
    bite: 0.335,
    bossLeast: 9.1,
  },
  host: {
    name: 'PETG',
    thickness: 11.3,
    floor: 4.1,
    topSkin: 0.9,
    axis: 'along-build',
    wallThickness: 1.98,
    wallCount: 5,
    wallMeasured: false,
    lineWidth: 0.43,
    layerHeight: 0.2,
    infill: { density: 0.23, family: 'cellular', pattern: 'gyroid' },
  },
  seat: 'on-insert',
  loads: { pull: false, shear: false },
};

/** The usual M3 joint of these tests with something changed. */
export function section(changes: SectionChanges = {}, from: SectionInput = USUAL): SectionInput {
  return {
    screw: { ...from.screw, ...changes.screw },
    clamped: { ...from.clamped, ...changes.clamped },
    gap: changes.gap ?? from.gap,
    insert: { ...from.insert, ...changes.insert },
    hole: { ...from.hole, ...changes.hole },
    host: { ...from.host, ...changes.host },
    seat: changes.seat ?? from.seat,
    loads: changes.loads ?? from.loads,
  };
}

interface Size {
  readonly designation: string;
  readonly nominal: number;
  readonly minor: number;
  readonly head: readonly [diameter: number, height: number, socket: number];
  readonly clearance: number;
  readonly insert: readonly [knurl: number, pilot: number, length: number];
}

/** Smallest and largest inserts in use, and some between. */
const SIZES: readonly Size[] = [
  { designation: 'M2', nominal: 2, minor: 1.51, head: [3.8, 2, 1.5], clearance: 2.4, insert: [3.2, 2.8, 3] },
  {
    designation: 'M3',
    nominal: 3,
    minor: 2.39,
    head: [5.5, 3, 2.5],
    clearance: 3.4,
    insert: [4.6, 3.95, 5.7],
  },
  {
    designation: '6-32',
    nominal: 3.51,
    minor: 2.64,
    head: [5.7, 3.5, 2.8],
    clearance: 3.9,
    insert: [5.6, 4.8, 3.8],
  },
  { designation: 'M4', nominal: 4, minor: 3.14, head: [7, 4, 3], clearance: 4.5, insert: [5.6, 4.9, 8] },
  { designation: 'M6', nominal: 6, minor: 4.77, head: [10, 6, 5], clearance: 6.6, insert: [8.7, 7.7, 12.7] },
  { designation: 'M8', nominal: 8, minor: 6.47, head: [13, 8, 6], clearance: 9, insert: [11, 9.6, 20] },
];

function sized({ designation, nominal, minor, head, clearance, insert }: Size): SectionInput {
  const [knurlDiameter, pilotDiameter, length] = insert;
  const [diameter, height, socketAcrossFlats] = head;
  const depth = Math.ceil((length + 0.36 * knurlDiameter) / 0.2) * 0.2;
  const floor = 0.6 * knurlDiameter;
  return section({
    screw: {
      designation,
      nominalDiameter: nominal,
      minorDiameter: minor,
      length: Math.round(0.7 * nominal + length),
      head: { shape: 'cylindrical', diameter, height, socketAcrossFlats, socketDepth: 0.45 * height },
    },
    clamped: { thickness: 0.7 * nominal, clearanceHole: clearance },
    insert: { knurlDiameter, pilotDiameter, length, knurledLength: length - 0.28 * knurlDiameter },
    hole: {
      borePrinted: pilotDiameter + 0.05,
      boreDrawn: pilotDiameter + 0.3,
      depth,
      meltHeight: 0.12 * length,
      meltVolume: 0.7 * length * nominal,
      bossLeast: 1.85 * knurlDiameter,
    },
    host: { thickness: depth + floor, floor },
  });
}

const farSide = (near: SectionInput): SectionInput =>
  section(
    {
      seat: 'far-side',
      insert: { side: 'far-side' },
      hole: { depth: near.insert.length },
      host: { floor: near.host.thickness - near.insert.length },
      screw: { length: near.clamped.thickness + near.host.thickness },
    },
    near,
  );

/** Every combination that the drawing must bear: size, gap, side, boss. */
export function combinedSections(): readonly (readonly [name: string, input: SectionInput])[] {
  const plain = SIZES.map((size) => sized(size));
  const combined = plain.flatMap((base) =>
    [0, 0.2, 3].flatMap((gap) =>
      [base, farSide(base)].flatMap((sided) =>
        [undefined, 2.1 * base.insert.knurlDiameter].map((boss): readonly [string, SectionInput] => {
          const seat = gap > 0 && sided.seat === 'on-insert' ? 'over-gap' : sided.seat;
          const input = section({ gap, seat, host: boss === undefined ? {} : { bossDiameter: boss } }, sided);
          const name = `${base.screw.designation} ${base.insert.length} gap ${gap} ${sided.insert.side}`;
          return [boss === undefined ? name : `${name} boss`, input];
        }),
      ),
    ),
  );
  return combined;
}
