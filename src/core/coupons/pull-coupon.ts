import { pulledReach } from '../joint/bonded-ring.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import {
  type Bed,
  type CouponHole,
  type CouponHost,
  type CouponInsert,
  type CouponNotice,
  couponVolume,
  fitsOn,
  floorIn,
  holeVolume,
  inLayers,
  mouthOf,
  noticesFor,
  type OnBed,
  onBed,
  type Refused,
  refused,
  volumeEntries,
} from './coupon.ts';
import { LABEL_CLEARANCE, LABEL_HEIGHT, type Label, labelVolume, labelWidth, raisedBy } from './label.ts';

/** Free room for the pulled plastic, in knurl diameters, [-]. */
const FREE_PER_KNURL = 3;
/** Room between the ring and the walls or the boss inside it, each side, mm. */
const RING_CLEARANCE = 2;
/** Width on which the pulling ring bears, mm. */
const RING_WIDTH = 6;
/** Rounding of what is turned or bought for the fixture, mm. */
const RING_STEP = 1;
/** Flange under the hole, in knurl diameters, [-], so that the ring does not bend it through. */
const FLANGE_PER_KNURL = 1.5;

/** One insert, held down by a ring on a flange. Lengths mm; the flange's face lies across the bore. */
export interface PullCoupon {
  readonly kind: 'pull-coupon';
  readonly axis: CouponHost['axis'];
  /** Flange; without a boss the block that the insert sits in. */
  readonly length: number;
  readonly width: number;
  readonly flangeThickness: number;
  /** The joint's free-standing boss on the flange; absent: the bore is in the block itself. */
  readonly boss?: { readonly diameter: number; readonly height: number };
  readonly bore: {
    readonly drawn: number;
    readonly depth: number;
    readonly chamfer: number;
    readonly at: readonly [across: number, up: number];
  };
  /** Plastic between the bore's bottom and the flange's top, or its back in a block. */
  readonly floor: number;
  readonly label: Label;
  /** Least inner diameter of the pulling ring. */
  readonly ringInner: Derived;
  /** Largest outer diameter of the pulling ring. */
  readonly ringOuter: number;
  readonly onBed: OnBed;
  readonly notices: readonly CouponNotice[];
  readonly volume: Derived;
}

export interface CouponWish {
  readonly host: CouponHost;
  readonly hole: CouponHole;
  readonly insert: CouponInsert;
  /** What is raised on it, to tell it from the others. */
  readonly number: number;
  readonly bed: Bed;
}

/**
 * Diameter that a pull needs free round an insert, so that nothing outside it holds the plastic down.
 *
 *     D_r = ⌈max(3 · Dk, 1.55 · Dk + 1.27 · Lk, Dk + 2 · t + 4 mm, Db + 4 mm)/(1 mm)⌉ · 1 mm
 *
 * Three knurl diameters is an estimate; the second is the reach of the sheared plastic that finite elements gave; walls
 * and boss stand clear by 2 mm a side. Long-fibre plastics and thin plates bend farther.
 *
 * @param insert - knurl diameter Dk and knurled length Lk [mm]
 * @param host - wall t [mm], boss diameter Db [mm] or none
 * @returns D_r [mm], whole millimetres
 * @source own-model reach of a pull, docs/finite-element.md
 * @example Dk 5, Lk 3.6, t 1.17 mm without a boss gives 15 mm
 */
export function ringInnerDiameter(
  insert: CouponInsert,
  host: Pick<CouponHost, 'wall' | 'bossDiameter'>,
): Derived {
  const { knurlDiameter, knurledLength } = insert;
  const { wall, bossDiameter } = host;
  const least = Math.max(
    FREE_PER_KNURL * knurlDiameter.value,
    pulledReach({ knurlDiameter: knurlDiameter.value, length: knurledLength.value }),
    knurlDiameter.value + 2 * wall.value + 2 * RING_CLEARANCE,
    (bossDiameter ?? 0) + 2 * RING_CLEARANCE,
  );
  return {
    symbol: 'D_r',
    value: Math.ceil(least / RING_STEP - 1e-9) * RING_STEP,
    unit: 'mm',
    formula: `⌈max(3 · D_k, 1.55 · D_k + 1.27 · L_k, D_k + 2 · t + 4 mm${bossDiameter === undefined ? '' : ', boss + 4 mm'})⌉`,
    entries: [
      entryFrom(knurlDiameter),
      entryFrom(knurledLength),
      entryFrom(wall),
      ...(bossDiameter === undefined ? [] : [entry('boss', bossDiameter, 'mm')]),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** Why a hole does not go into its host, the same for every coupon with an insert; undefined where it does. */
export function holeFault({ host, hole }: Pick<CouponWish, 'host' | 'hole'>): Refused | undefined {
  const { bossDiameter } = host;
  const [chamfer, depth, mouth] = [hole.chamfer.value, hole.depth.value, mouthOf(hole)];
  if (chamfer >= depth) return refused({ code: 'chamfer-deeper-than-hole', chamfer, depth });
  if (bossDiameter !== undefined && bossDiameter <= mouth) {
    return refused({ code: 'boss-without-wall', mouth, bossDiameter });
  }
  return undefined;
}

/** Thickness that carries a pull or a grip, mm: 1.5 knurl diameters in whole layers. */
export const flangeThickness = (insert: CouponInsert, host: CouponHost): number =>
  inLayers(FLANGE_PER_KNURL * insert.knurlDiameter.value, host);

/**
 * A coupon with one insert for pulling: the joint's hole in its boss on a flange, or in a block as part of a larger part.
 *
 * The ring of the fixture bears on the flange outside D_r, so it does not prop boss or walls; the number stands on a
 * strip beside the ring. In a block 1.5 Dk of plastic stays under the hole.
 *
 * @param wish - host, hole, insert [mm], number to raise, bed [mm]
 * @returns dimensions [mm] and volume [mm³], or why it cannot be made: a boss without wall, a chamfer deeper than the hole,
 * larger than the bed
 * @source own-model ring and flange
 * @source trade-practice floor of 2 mm
 */
export function pullCoupon(wish: CouponWish): PullCoupon | Refused {
  const { host, hole, insert, number, bed } = wish;
  const fault = holeFault(wish);
  if (fault) return fault;
  const { bossDiameter } = host;
  const ringInner = ringInnerDiameter(insert, host);
  const ringOuter = ringInner.value + 2 * RING_WIDTH;
  const depth = hole.depth.value;
  const flange = flangeThickness(insert, host);
  const boss =
    bossDiameter === undefined ? undefined : { diameter: bossDiameter, height: floorIn(host) + depth };
  const length = Math.max(ringOuter, labelWidth(number) + 2 * LABEL_CLEARANCE);
  const width = ringOuter + LABEL_HEIGHT + 2 * LABEL_CLEARANCE;
  const thickness = boss ? flange : flange + depth;
  const raised = raisedBy(host);
  const label = { number, at: [length / 2, ringOuter + LABEL_CLEARANCE] as const, raised };
  const size = onBed({ length, width, height: thickness + Math.max(raised, boss?.height ?? 0) }, host.axis);
  if (!fitsOn(bed, size)) return refused({ code: 'larger-than-bed', size, bed });
  const parts = {
    flange: length * width * thickness,
    boss: boss ? (Math.PI / 4) * boss.diameter ** 2 * boss.height : 0,
    bores: holeVolume(hole),
    numbers: labelVolume(label),
  };
  return {
    kind: 'pull-coupon',
    axis: host.axis,
    length,
    width,
    flangeThickness: thickness,
    ...(boss ? { boss } : {}),
    bore: {
      drawn: hole.drawn.value,
      depth,
      chamfer: hole.chamfer.value,
      at: [length / 2, ringOuter / 2],
    },
    floor: boss ? boss.height - depth : flange,
    label,
    ringInner,
    ringOuter,
    onBed: size,
    notices: noticesFor(host),
    volume: couponVolume(
      parts.flange + parts.boss - parts.bores + parts.numbers,
      'flange + boss − bores + numbers',
      volumeEntries(parts),
    ),
  };
}
