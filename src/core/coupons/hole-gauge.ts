import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import {
  type Bed,
  type CouponHole,
  type CouponHost,
  type CouponRefusal,
  couponVolume,
  fitsOn,
  holeVolume,
  mouthOf,
  type OnBed,
  onBed,
  type Refused,
  refused,
  type Sides,
  sidesOnBed,
} from './coupon.ts';
import { drawnDiameters, type GaugeRow, type GaugeWish, gaugeRow } from './gauge-row.ts';
import { type Label, labelVolume } from './label.ts';

/** Bore below which a nozzle of 0.4 mm leaves nothing to measure, mm. */
const LEAST_BORE = 1;

/** One bore of the row. */
export interface GaugeBore {
  readonly number: number;
  readonly drawn: number;
  /** Middle of the bore on the face, mm. */
  readonly at: readonly [across: number, up: number];
}

/** A row of numbered bores round the expected size. Lengths mm; the face lies across the bores. */
export interface HoleGauge {
  readonly kind: 'hole-gauge';
  readonly axis: CouponHost['axis'];
  readonly bores: readonly GaugeBore[];
  readonly labels: readonly Label[];
  readonly depth: number;
  readonly chamfer: number;
  readonly floor: number;
  /** From the middle of one bore to the next. */
  readonly pitch: number;
  /** Plastic from a bore to the edge. */
  readonly surround: number;
  readonly length: number;
  readonly width: number;
  /** Without the raised numbers. */
  readonly thickness: number;
  /** The diameters of the bores in their order, with their ways. */
  readonly diameters: readonly Derived[];
  /** The joint's own hole, with the ways to its sizes. */
  readonly hole: CouponHole;
  readonly floorUnder: Derived;
  readonly sides: Sides;
  readonly onBed: OnBed;
  readonly volume: Derived;
}

function holeFault({ host, hole }: GaugeWish, diameters: readonly Derived[]): CouponRefusal | undefined {
  const { chamfer, depth } = hole;
  const { bossDiameter } = host;
  const tooSmall = diameters.find(({ value }) => value < LEAST_BORE);
  if (tooSmall) return { code: 'bore-too-small', bore: tooSmall, least: LEAST_BORE };
  if (chamfer.value >= depth.value) return { code: 'chamfer-deeper-than-hole', chamfer, depth };
  const mouth = mouthOf(hole);
  return bossDiameter !== undefined && bossDiameter <= mouth.value
    ? { code: 'boss-without-wall', mouth, bossDiameter }
    : undefined;
}

/** How many bores of a row fit on the bed, [-]. */
const mostBores = (bed: Bed, { edge, pitch }: GaugeRow): Derived => ({
  symbol: 'n_b',
  value: Math.max(0, Math.floor((bed.x - 2 * edge.value) / pitch.value + 1)),
  unit: '-',
  formula: 'greatest number of bores whose row is within x_b',
  entries: [entryFrom(edge), entryFrom(pitch), entry('x_b', bed.x, 'mm')],
  source: 'own-model',
  standing: 'estimate',
});

/** Why a row does not stand on a bed, and how many of its bores would; undefined where it does. */
function bedFault({ bed, count }: GaugeWish, size: Sides, row: GaugeRow): CouponRefusal | undefined {
  const box = onBed(size);
  if (fitsOn(bed, box)) return undefined;
  const most = mostBores(bed, row);
  return most.value > 0 && fitsOn(bed, { ...box, x: 0 })
    ? { code: 'too-many-bores', count, most, bed }
    : { code: 'larger-than-bed', size, bed };
}

/**
 * A row of bores round the drawn diameter of the joint, each with its number, in a block as deep as the hole needs.
 *
 *     D_i = D_CAD + (i − ⌊(n + 1)/2⌋) · step
 *     e = 2 · t + 2 mm, or (Db − D_CAD)/2 in a boss        plastic from a bore to the edge and to its neighbour
 *
 * Blind, so that no mouth lies on the bed. Walls come out as in the joint where the slicer's settings are the same; of a
 * boss the row has the wall, not the round outside.
 *
 * @param wish - host, hole [mm], number of bores n [-] ≥ 1, step [mm] > 0, bed [mm]
 * @returns dimensions [mm] and volume [mm³], or why it cannot be made: a bore below 1 mm, a chamfer deeper than the
 * hole, a boss without wall, a row longer than the bed
 * @source own-model infill between two walls
 * @source trade-practice floor of 2 mm
 */
export function holeGauge(wish: GaugeWish): HoleGauge | Refused {
  const { host, hole } = wish;
  const diameters = drawnDiameters(wish);
  const drawn = diameters.map(({ value }) => value);
  const fault = holeFault(wish, diameters);
  if (fault) return refused(fault);
  const row = gaugeRow(wish, diameters);
  const { edge, pitch, middle, baseline, length, width, floor, raised } = row;
  const sides = sidesOnBed(row, host.axis);
  const tooLarge = bedFault(wish, sides, row);
  if (tooLarge) return refused(tooLarge);
  const across = (place: number) => edge.value + place * pitch.value;
  const bores = drawn.map(
    (diameter, place): GaugeBore => ({ number: place + 1, drawn: diameter, at: [across(place), middle] }),
  );
  const labels = bores.map(
    ({ number }, place): Label => ({ number, at: [across(place), baseline], raised: raised.value }),
  );
  const thickness = floor.value + hole.depth.value;
  return {
    kind: 'hole-gauge',
    axis: host.axis,
    bores,
    labels,
    depth: hole.depth.value,
    chamfer: hole.chamfer.value,
    floor: floor.value,
    pitch: pitch.value,
    surround: row.surround.value,
    length: length.value,
    width: width.value,
    thickness,
    diameters,
    hole,
    floorUnder: floor,
    sides,
    onBed: onBed(sides),
    volume: volumeOf({ block: length.value * width.value * thickness, hole, drawn, labels }),
  };
}

function volumeOf(given: {
  readonly block: number;
  readonly hole: CouponHole;
  readonly drawn: readonly number[];
  readonly labels: readonly Label[];
}): Derived {
  const { block, hole, drawn, labels } = given;
  const bores = drawn.reduce(
    (sum, value) => sum + holeVolume({ ...hole, drawn: { ...hole.drawn, value } }),
    0,
  );
  const numbers = labels.reduce((sum, label) => sum + labelVolume(label), 0);
  return couponVolume(block - bores + numbers, 'block − bores + numbers', [
    entry('block', block, 'mm³'),
    entry('bores', bores, 'mm³'),
    entry('numbers', numbers, 'mm³'),
  ]);
}
