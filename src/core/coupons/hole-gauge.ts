import { withoutDust } from '../numerics/binary-dust.ts';
import { type Derived, entry } from '../sources/derived.ts';
import {
  type Bed,
  type CouponHole,
  type CouponHost,
  type CouponRefusal,
  couponVolume,
  fitsOn,
  floorIn,
  holeVolume,
  mouthOf,
  type OnBed,
  onBed,
  type Refused,
  refused,
} from './coupon.ts';
import { LABEL_CLEARANCE, LABEL_HEIGHT, type Label, labelVolume, labelWidth, raisedBy } from './label.ts';

/** Bore below which a nozzle of 0.4 mm leaves nothing to measure, mm. */
const LEAST_BORE = 1;
/** Infill between the walls of two neighbours, mm, so that each has its own. */
const INFILL_STRIP = 2;

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
  readonly onBed: OnBed;
  readonly volume: Derived;
}

export interface GaugeWish {
  readonly host: CouponHost;
  /** The joint's own hole: its drawn diameter stands in the row. */
  readonly hole: CouponHole;
  readonly count: number;
  readonly step: number;
  readonly bed: Bed;
}

/** Plastic round a bore, mm: that of the joint's boss, else its wall, a strip of infill and the wall of the outside. */
function surroundOf({ host, hole }: GaugeWish): number {
  const { bossDiameter, wall } = host;
  return bossDiameter === undefined ? 2 * wall.value + INFILL_STRIP : (bossDiameter - hole.drawn.value) / 2;
}

/** Drawn diameters of the row, ascending, mm; the joint's own is the middle one, of an even count the one before it. */
const diametersOf = ({ hole, count, step }: GaugeWish): readonly number[] =>
  Array.from({ length: count }, (_, place) =>
    withoutDust(hole.drawn.value + (place - Math.floor((count - 1) / 2)) * step),
  );

/** Where bores and numbers stand on the face, and its sides, mm. */
function rowOf(wish: GaugeWish, diameters: readonly number[]) {
  const { count, hole } = wish;
  const largest = Math.max(...diameters);
  const mouth = largest + 2 * hole.chamfer.value;
  const surround = surroundOf(wish);
  const label = labelWidth(count);
  const edge = Math.max(largest / 2 + surround, label / 2 + LABEL_CLEARANCE);
  const pitch = Math.max(largest + surround, mouth + LABEL_CLEARANCE, label + 2 * LABEL_CLEARANCE);
  const middle = largest / 2 + surround;
  const baseline = middle + mouth / 2 + LABEL_CLEARANCE;
  return {
    surround,
    edge,
    pitch,
    middle,
    baseline,
    length: 2 * edge + (count - 1) * pitch,
    width: Math.max(2 * middle, baseline + LABEL_HEIGHT + LABEL_CLEARANCE),
  };
}

type Row = ReturnType<typeof rowOf>;

function holeFault({ host, hole }: GaugeWish, smallest: number): CouponRefusal | undefined {
  const [chamfer, depth] = [hole.chamfer.value, hole.depth.value];
  const { bossDiameter } = host;
  if (smallest < LEAST_BORE) return { code: 'bore-too-small', bore: smallest, least: LEAST_BORE };
  if (chamfer >= depth) return { code: 'chamfer-deeper-than-hole', chamfer, depth };
  if (bossDiameter !== undefined && bossDiameter <= mouthOf(hole)) {
    return { code: 'boss-without-wall', mouth: mouthOf(hole), bossDiameter };
  }
  return undefined;
}

/** Why a row does not stand on a bed, and how many of its bores would; undefined where it does. */
function bedFault({ bed, count }: GaugeWish, size: OnBed, { edge, pitch }: Row): CouponRefusal | undefined {
  if (fitsOn(bed, size)) return undefined;
  const most = Math.max(0, Math.floor((bed.x - 2 * edge) / pitch + 1));
  return most > 0 && fitsOn(bed, { ...size, x: 0 })
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
  const diameters = diametersOf(wish);
  const fault = holeFault(wish, Math.min(...diameters));
  if (fault) return refused(fault);
  const row = rowOf(wish, diameters);
  const { surround, pitch, length, width } = row;
  const floor = floorIn(host);
  const raised = raisedBy(host);
  const thickness = floor + hole.depth.value;
  const size = onBed({ length, width, height: thickness + raised }, host.axis);
  const tooLarge = bedFault(wish, size, row);
  if (tooLarge) return refused(tooLarge);
  const across = (place: number) => row.edge + place * pitch;
  const bores = diameters.map(
    (drawn, place): GaugeBore => ({ number: place + 1, drawn, at: [across(place), row.middle] }),
  );
  const labels = bores.map(
    ({ number }, place): Label => ({ number, at: [across(place), row.baseline], raised }),
  );
  return {
    kind: 'hole-gauge',
    axis: host.axis,
    bores,
    labels,
    depth: hole.depth.value,
    chamfer: hole.chamfer.value,
    floor,
    pitch,
    surround,
    length,
    width,
    thickness,
    onBed: size,
    volume: volumeOf({ block: length * width * thickness, hole, diameters, labels }),
  };
}

function volumeOf(given: {
  readonly block: number;
  readonly hole: CouponHole;
  readonly diameters: readonly number[];
  readonly labels: readonly Label[];
}): Derived {
  const { block, hole, diameters, labels } = given;
  const bores = diameters.reduce(
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
