import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import {
  type CouponHost,
  type CouponNotice,
  couponVolume,
  fitsOn,
  floorIn,
  holeVolume,
  mouthOf,
  noticesFor,
  type OnBed,
  onBed,
  type Refused,
  refused,
  volumeEntries,
} from './coupon.ts';
import { LABEL_CLEARANCE, LABEL_HEIGHT, type Label, labelVolume, labelWidth, raisedBy } from './label.ts';
import { type CouponWish, flangeThickness, holeFault, ringInnerDiameter } from './pull-coupon.ts';

/** Room between knurl and rim, each side, mm: the bulge of melt stays under the washer. */
const RIM_CLEARANCE = 0.5;
/** Width of the rim in a larger part, mm: it bears the clamp force without yielding first. */
const RIM_WIDTH = 3;
/** Two lines of a nozzle of 0.4 mm, mm. */
const LEAST_RIM = 0.8;
/** Gap under the washer where the joint has none, mm: as much as an insert may rise before it turns loose. */
const LEAST_GAP = 1;
/** How far the washer lies on the rim, each side, mm. */
const WASHER_OVERLAP = 0.5;

/** Two inserts of one joint to tighten to the end. Lengths mm; the face lies across the bores. */
export interface TorqueCoupon {
  readonly kind: 'torque-coupon';
  readonly axis: CouponHost['axis'];
  /** Base that is held in a vise; without a boss the block that the inserts sit in. */
  readonly length: number;
  readonly width: number;
  readonly baseThickness: number;
  /** The joint's free-standing bosses on the base; absent: the bores are in the block itself. */
  readonly boss?: { readonly diameter: number; readonly height: number };
  readonly bore: { readonly drawn: number; readonly depth: number; readonly chamfer: number };
  /** Middle of the bore with the flat face: the washer lies on the insert. */
  readonly flatAt: readonly [across: number, up: number];
  /** Middle of the bore with the raised rim: the washer bridges a gap. */
  readonly rimAt: readonly [across: number, up: number];
  readonly rim: { readonly outer: number; readonly height: number };
  readonly floor: number;
  readonly label: Label;
  /** Inner diameter of the rim, above the knurl's. */
  readonly rimInner: Derived;
  /** A washer that bridges the rim is at least as wide. */
  readonly leastWasher: Derived;
  readonly onBed: OnBed;
  readonly notices: readonly CouponNotice[];
  readonly volume: Derived;
}

export interface TorqueWish extends CouponWish {
  /** Hole in the clamped part, mm. */
  readonly clearanceHole: number;
  /** Free distance between clamped part and face in the joint, mm; 0 is none. */
  readonly gap: number;
}

/**
 * Inner diameter of the rim that a washer bridges over the insert.
 *
 *     D_ri = max(Dk + 1 mm, dh, D_CAD + 2 · c + 0.5 mm)
 *
 * So nothing bears on the knurl, and the insert is free to be drawn up.
 *
 * @param wish - insert, hole, clearance hole dh [mm]
 * @returns D_ri [mm]
 * @source own-model room for the bulge of melt
 * @example Dk 5, dh 3.4, mouth 5.2 mm gives 6 mm
 */
export function rimInnerDiameter(wish: Pick<TorqueWish, 'insert' | 'hole' | 'clearanceHole'>): Derived {
  const { insert, hole, clearanceHole } = wish;
  const { knurlDiameter } = insert;
  return {
    symbol: 'D_ri',
    value: Math.max(knurlDiameter.value + 2 * RIM_CLEARANCE, clearanceHole, mouthOf(hole) + RIM_CLEARANCE),
    unit: 'mm',
    formula: 'max(D_k + 1 mm, d_h, D_CAD + 2 · c + 0.5 mm)',
    entries: [
      entryFrom(knurlDiameter),
      entry('d_h', clearanceHole, 'mm'),
      entryFrom(hole.drawn),
      entryFrom(hole.chamfer),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

function leastWasherOver(rimInner: Derived): Derived {
  return {
    symbol: 'D_wa',
    value: rimInner.value + 2 * WASHER_OVERLAP,
    unit: 'mm',
    formula: 'D_ri + 1 mm',
    entries: [entryFrom(rimInner)],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** Rim and room round each bore, mm. */
interface Stations {
  readonly rimInner: Derived;
  readonly rimOuter: number;
  /** Width of plastic that each insert has for itself. */
  readonly field: number;
}

function stationsOf(wish: TorqueWish): Stations {
  const { host, insert } = wish;
  const rimInner = rimInnerDiameter(wish);
  const rimOuter = host.bossDiameter ?? rimInner.value + 2 * RIM_WIDTH;
  const field = Math.max(ringInnerDiameter(insert, host).value, rimOuter + 2 * LABEL_CLEARANCE);
  return { rimInner, rimOuter, field };
}

/**
 * A coupon with two inserts for tightening: one with a flat face, one under a raised rim.
 *
 * On the flat face a washer with a hole below the knurl bears on the insert; over the rim it bridges a gap and the screw
 * draws the insert up. Each insert has as much plastic round it as a pull needs free; the straight sides go into a vise.
 *
 * @param wish - host, hole, insert, clearance hole, gap [mm], number to raise, bed [mm]
 * @returns dimensions [mm] and volume [mm³], or why it cannot be made: as pullCoupon, and a boss without room for a rim
 * @source own-model rim, gap of the joint or 1 mm
 * @source trade-practice floor of 2 mm
 */
export function torqueCoupon(wish: TorqueWish): TorqueCoupon | Refused {
  const { host, hole, insert, number, bed } = wish;
  const fault = holeFault(wish);
  if (fault) return fault;
  const { bossDiameter } = host;
  const { rimInner, rimOuter, field } = stationsOf(wish);
  const rim = (rimOuter - rimInner.value) / 2;
  if (bossDiameter !== undefined && rim < LEAST_RIM) {
    return refused({ code: 'boss-without-rim', rim, least: LEAST_RIM, bossDiameter });
  }
  const depth = hole.depth.value;
  const base = flangeThickness(insert, host);
  const boss =
    bossDiameter === undefined ? undefined : { diameter: bossDiameter, height: floorIn(host) + depth };
  const baseThickness = boss ? base : base + depth;
  const rimHeight = wish.gap > 0 ? wish.gap : LEAST_GAP;
  const length = Math.max(2 * field, labelWidth(number) + 2 * LABEL_CLEARANCE);
  const width = field + LABEL_HEIGHT + LABEL_CLEARANCE;
  const raised = raisedBy(host);
  const label = { number, at: [length / 2, field] as const, raised };
  const size = onBed(
    { length, width, height: baseThickness + Math.max(raised, (boss?.height ?? 0) + rimHeight) },
    host.axis,
  );
  if (!fitsOn(bed, size)) return refused({ code: 'larger-than-bed', size, bed });
  const rimArea = (Math.PI / 4) * (rimOuter ** 2 - rimInner.value ** 2);
  const parts = {
    flange: length * width * baseThickness,
    boss: boss ? 2 * (Math.PI / 4) * boss.diameter ** 2 * boss.height : 0,
    rim: rimArea * rimHeight,
    bores: 2 * holeVolume(hole),
    numbers: labelVolume(label),
  };
  return {
    kind: 'torque-coupon',
    axis: host.axis,
    length,
    width,
    baseThickness,
    ...(boss ? { boss } : {}),
    bore: { drawn: hole.drawn.value, depth, chamfer: hole.chamfer.value },
    flatAt: [length / 2 - field / 2, field / 2],
    rimAt: [length / 2 + field / 2, field / 2],
    rim: { outer: rimOuter, height: rimHeight },
    floor: boss ? boss.height - depth : base,
    label,
    rimInner,
    leastWasher: leastWasherOver(rimInner),
    onBed: size,
    notices: noticesFor(host),
    volume: couponVolume(
      parts.flange + parts.boss + parts.rim - parts.bores + parts.numbers,
      'flange + boss + rim − bores + numbers',
      volumeEntries(parts),
    ),
  };
}
