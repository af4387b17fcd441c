import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { type CouponHole, type CouponInsert, mouthOf } from './coupon.ts';

/** Room between knurl and rim, each side, mm: the bulge of melt stays under the washer. */
const RIM_CLEARANCE = 0.5;
/** How far the washer lies on the rim, each side, mm. */
const WASHER_OVERLAP = 0.5;

/** What the rim over an insert has to clear, mm. */
export interface RimWish {
  readonly insert: CouponInsert;
  readonly hole: CouponHole;
  readonly clearanceHole: number;
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
export function rimInnerDiameter(wish: RimWish): Derived {
  const { insert, hole, clearanceHole } = wish;
  const { knurlDiameter } = insert;
  return {
    symbol: 'D_ri',
    value: Math.max(
      knurlDiameter.value + 2 * RIM_CLEARANCE,
      clearanceHole,
      mouthOf(hole).value + RIM_CLEARANCE,
    ),
    unit: 'mm',
    formula: `max(D_k + 1 mm, d_h, ${hole.drawn.symbol} + 2 · c + 0.5 mm)`,
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

/**
 * Diameter of a washer that bridges the rim: 0.5 mm on it, each side.
 *
 *     D_wa = D_ri + 1 mm
 *
 * @param rimInner - inner diameter of the rim D_ri [mm]
 * @returns D_wa [mm]
 * @source own-model overlap
 */
export function leastWasherOver(rimInner: Derived): Derived {
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
