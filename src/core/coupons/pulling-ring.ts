import { pulledReach } from '../joint/bonded-ring.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { CouponHost, CouponInsert } from './coupon.ts';

/** Free room for the pulled plastic, in knurl diameters, [-]. */
const FREE_PER_KNURL = 3;
/** Room between the ring and the walls or the boss inside it, each side, mm. */
const RING_CLEARANCE = 2;
/** Rounding of what is turned or bought for the fixture, mm. */
const RING_STEP = 1;

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
    formula:
      bossDiameter === undefined
        ? '⌈max(3 · D_k, 1.55 · D_k + 1.27 · L_k, D_k + 2 · t + 4 mm)⌉'
        : '⌈max(3 · D_k, 1.55 · D_k + 1.27 · L_k, D_k + 2 · t + 4 mm, boss + 4 mm)⌉',
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
