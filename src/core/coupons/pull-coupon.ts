import type { InsertAxis } from '../host/host.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import {
  type Block,
  type CouponHole,
  type CouponNotice,
  couponLength,
  couponVolume,
  fitsOn,
  floorIn,
  holeVolume,
  noticesFor,
  type OnBed,
  onBed,
  type Refused,
  refused,
  type Sides,
  sidesOnBed,
} from './coupon.ts';
import { boreIn, bossIn, type CouponWish, flangeThickness, holeFault } from './held-insert.ts';
import {
  LABEL_CLEARANCE,
  LABEL_HEIGHT,
  type Label,
  labelEntries,
  labelVolume,
  labelWidth,
  raisedBy,
} from './label.ts';
import { ringInnerDiameter } from './pulling-ring.ts';

/** Width on which the pulling ring bears, mm. */
const RING_WIDTH = 6;
/** One insert, held down by a ring on a flange. Lengths mm; the flange's face lies across the bore. */
export interface PullCoupon {
  readonly kind: 'pull-coupon';
  readonly axis: InsertAxis;
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
  /** The joint's own hole, with the ways to its sizes. */
  readonly hole: CouponHole;
  readonly sides: Sides;
  readonly onBed: OnBed;
  readonly notices: readonly CouponNotice[];
  readonly volume: Derived;
}

/** Largest outer diameter of the ring that pulls, mm. */
const ringOuterOver = (ringInner: Derived): Derived =>
  couponLength({
    symbol: 'D_ro',
    value: ringInner.value + 2 * RING_WIDTH,
    formula: 'D_r + 12 mm',
    entries: [entryFrom(ringInner)],
  });

/** Length, width and height of a pull coupon, mm. */
function blockOf({ host, hole, insert, number }: CouponWish, ringOuter: Derived): Block {
  const flange = flangeThickness(insert, host);
  const floor = floorIn(host);
  const raised = raisedBy(host);
  const { depth } = hole;
  const isBoss = host.bossDiameter !== undefined;
  return {
    length: couponLength({
      symbol: 'l_c',
      value: Math.max(ringOuter.value, labelWidth(number) + 2 * LABEL_CLEARANCE),
      formula: 'max(D_ro, w_n + 3 mm)',
      entries: [entryFrom(ringOuter), labelEntries.width(number)],
    }),
    width: couponLength({
      symbol: 'w_c',
      value: ringOuter.value + LABEL_HEIGHT + 2 * LABEL_CLEARANCE,
      formula: 'D_ro + h_n + 3 mm',
      entries: [entryFrom(ringOuter), labelEntries.height],
    }),
    height: couponLength({
      symbol: 'h_c',
      value: isBoss
        ? flange.value + Math.max(raised.value, floor.value + depth.value)
        : flange.value + depth.value + raised.value,
      formula: isBoss ? `t_f + max(r_n, f_c + ${depth.symbol})` : `t_f + ${depth.symbol} + r_n`,
      entries: [
        entryFrom(flange),
        entryFrom(raised),
        entryFrom(depth),
        ...(isBoss ? [entryFrom(floor)] : []),
      ],
    }),
  };
}

/** The body of a pull coupon before its volume, mm. */
function bodyOf(wish: CouponWish) {
  const { host, hole, insert, number } = wish;
  const ringInner = ringInnerDiameter(insert, host);
  const outer = ringOuterOver(ringInner);
  const ringOuter = outer.value;
  const block = blockOf(wish, outer);
  const boss = bossIn(host, hole);
  const flange = flangeThickness(insert, host).value;
  const sides = sidesOnBed(block, host.axis);
  const length = block.length.value;
  const label: Label = {
    number,
    at: [length / 2, ringOuter + LABEL_CLEARANCE],
    raised: raisedBy(host).value,
  };
  return {
    ringInner,
    ringOuter,
    length,
    width: block.width.value,
    flangeThickness: boss ? flange : flange + hole.depth.value,
    ...(boss ? { boss } : {}),
    bore: { ...boreIn(hole), at: [length / 2, ringOuter / 2] as const },
    floor: boss ? boss.height - hole.depth.value : flange,
    label,
    hole,
    sides,
    onBed: onBed(sides),
  };
}

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
  const { host, hole, bed } = wish;
  const fault = holeFault(wish);
  if (fault) return fault;
  const body = bodyOf(wish);
  if (!fitsOn(bed, body.onBed)) return refused({ code: 'larger-than-bed', size: body.sides, bed });
  const { length, width, boss, label } = body;
  const parts = {
    flange: length * width * body.flangeThickness,
    boss: boss ? (Math.PI / 4) * boss.diameter ** 2 * boss.height : 0,
    bores: holeVolume(hole),
    numbers: labelVolume(label),
  };
  return {
    kind: 'pull-coupon',
    axis: host.axis,
    ...body,
    notices: noticesFor(host),
    volume: couponVolume(
      parts.flange + parts.boss - parts.bores + parts.numbers,
      'flange + boss − bores + numbers',
      [
        entry('flange', parts.flange, 'mm³'),
        entry('boss', parts.boss, 'mm³'),
        entry('bores', parts.bores, 'mm³'),
        entry('numbers', parts.numbers, 'mm³'),
      ],
    ),
  };
}
