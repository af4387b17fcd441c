import type { Bed, CouponHole, CouponHost, CouponInsert, Refused } from '../../src/core/coupons/coupon.ts';
import type { CoreUnit, Derived } from '../../src/core/sources/derived.ts';

const given = (symbol: string, value: number, unit: CoreUnit = 'mm'): Derived => ({
  symbol,
  value,
  unit,
  formula: symbol,
  entries: [],
  source: 'your-measurement',
  standing: 'measured',
});

/** An M3 insert of knurl 5 mm, 3.6 mm knurled. */
export const SMALL_INSERT: CouponInsert = {
  knurlDiameter: given('D_k', 5),
  knurledLength: given('L_k', 3.6),
};

/** Three walls of 0.42 mm in a larger part, layers of 0.2 mm. */
export const LARGER_PART: CouponHost = { axis: 'along-build', wall: given('t', 1.17), layerHeight: 0.2 };
export const BOSS: CouponHost = { ...LARGER_PART, bossDiameter: 8.8 };

export const lyingDown = (host: CouponHost): CouponHost => ({ ...host, axis: 'across-build' });

export const holeOf = (drawn: number, depth: number, chamfer: number): CouponHole => ({
  drawn: given('D_CAD', drawn),
  depth: given('T', depth),
  chamfer: given('c', chamfer),
});

export const SMALL_HOLE: CouponHole = holeOf(4.55, 6.2, 0.5);

export const USUAL_BED: Bed = { x: 220, y: 215, z: 250 };

/** What a coupon is when it can be made; fails the test when it is refused. */
export function made<Coupon extends { readonly kind: string }>(
  answer: Coupon | Refused,
): Exclude<Coupon, Refused> {
  if ('refusal' in answer) throw new Error(`refused: ${answer.refusal.code}`);
  return answer as Exclude<Coupon, Refused>;
}
