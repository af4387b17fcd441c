import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { type Block, couponLength, floorIn } from './coupon.ts';
import { type CouponWish, flangeThickness } from './held-insert.ts';
import { LABEL_CLEARANCE, LABEL_HEIGHT, labelEntries, labelWidth, raisedBy } from './label.ts';
import { ringInnerDiameter } from './pulling-ring.ts';
import { rimInnerDiameter } from './rim.ts';

/** Width of the rim in a larger part, mm: it bears the clamp force without yielding first. */
const RIM_WIDTH = 3;
/** Gap under the washer where the joint has none, mm: as much as an insert may rise before it turns loose. */
const LEAST_GAP = 1;

export interface TorqueWish extends CouponWish {
  /** Hole in the clamped part, mm. */
  readonly clearanceHole: number;
  /** Free distance between clamped part and face in the joint, mm; 0 is none. */
  readonly gap: number;
}

/** Rim and room round each bore, mm. */
export interface Stations {
  readonly rimInner: Derived;
  readonly rimOuter: Derived;
  /** Width of plastic that each insert has for itself. */
  readonly field: Derived;
}

/**
 * Rim of a torque coupon and the plastic round each of its inserts.
 *
 *     D_rim = D_ri + 6 mm, or the boss        w_f = max(D_r, D_rim + 3 mm)
 *
 * @param wish - what is asked of the coupon
 * @returns inner and outer diameter of the rim D_ri and D_rim, field w_f [mm]
 * @source own-model as much plastic round each as a pull needs free
 */
export function stationsOf(wish: TorqueWish): Stations {
  const { host, insert } = wish;
  const { bossDiameter } = host;
  const rimInner = rimInnerDiameter(wish);
  const rimOuter = couponLength({
    symbol: 'D_rim',
    value: bossDiameter ?? rimInner.value + 2 * RIM_WIDTH,
    formula: bossDiameter === undefined ? 'D_ri + 6 mm' : 'boss',
    entries: [bossDiameter === undefined ? entryFrom(rimInner) : entry('boss', bossDiameter, 'mm')],
  });
  const ring = ringInnerDiameter(insert, host);
  const field = couponLength({
    symbol: 'w_f',
    value: Math.max(ring.value, rimOuter.value + 2 * LABEL_CLEARANCE),
    formula: 'max(D_r, D_rim + 3 mm)',
    entries: [entryFrom(ring), entryFrom(rimOuter)],
  });
  return { rimInner, rimOuter, field };
}

/** How far the rim rises over the face, mm: the joint's gap, or the usual one where it has none. */
export const rimHeightOf = ({ gap }: TorqueWish): number => (gap > 0 ? gap : LEAST_GAP);

/**
 * Length, width and height of a torque coupon.
 *
 *     l_c = max(2 · w_f, w_n + 3 mm)        w_c = w_f + h_n + 1.5 mm
 *     h_c = t_f + max(r_n, f_c + T + h_r)        in a larger part t_f + T + max(r_n, h_r)
 *
 * @param wish - what is asked of the coupon
 * @param stations - field w_f of each insert [mm]
 * @returns sides as modelled [mm]
 * @source own-model rim and room round each bore
 */
export function torqueBlock(wish: TorqueWish, { field }: Stations): Block {
  const { host, hole, insert, number } = wish;
  const base = flangeThickness(insert, host);
  const floor = floorIn(host);
  const raised = raisedBy(host);
  const { depth } = hole;
  const rim = rimHeightOf(wish);
  const isBoss = host.bossDiameter !== undefined;
  return {
    length: couponLength({
      symbol: 'l_c',
      value: Math.max(2 * field.value, labelWidth(number) + 2 * LABEL_CLEARANCE),
      formula: 'max(2 · w_f, w_n + 3 mm)',
      entries: [entryFrom(field), labelEntries.width(number)],
    }),
    width: couponLength({
      symbol: 'w_c',
      value: field.value + LABEL_HEIGHT + LABEL_CLEARANCE,
      formula: 'w_f + h_n + 1.5 mm',
      entries: [entryFrom(field), labelEntries.height],
    }),
    height: couponLength({
      symbol: 'h_c',
      value: isBoss
        ? base.value + Math.max(raised.value, floor.value + depth.value + rim)
        : base.value + depth.value + Math.max(raised.value, rim),
      formula: isBoss
        ? `t_f + max(r_n, f_c + ${depth.symbol} + h_r)`
        : `t_f + ${depth.symbol} + max(r_n, h_r)`,
      entries: [
        entryFrom(base),
        entryFrom(raised),
        entryFrom(depth),
        entry('h_r', rim, 'mm'),
        ...(isBoss ? [entryFrom(floor)] : []),
      ],
    }),
  };
}
