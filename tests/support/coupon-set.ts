import { holeGauge } from '../../src/core/coupons/hole-gauge.ts';
import { pullCoupon } from '../../src/core/coupons/pull-coupon.ts';
import { torqueCoupon } from '../../src/core/coupons/torque-coupon.ts';
import type { Coupon } from '../../src/solids/coupon-mesh.ts';
import {
  BOSS,
  holeOf,
  LARGER_PART,
  lyingDown,
  made,
  SMALL_HOLE,
  SMALL_INSERT,
  USUAL_BED,
} from './coupons.ts';

const hosts = { part: LARGER_PART, boss: BOSS };

/** Each kind of coupon in each host and lie, by a name that a file may have; all ten digits are among them. */
export function couponSet(): Readonly<Record<string, Coupon>> {
  const set: Record<string, Coupon> = {};
  for (const [hostName, upright] of Object.entries(hosts)) {
    for (const [lie, host] of Object.entries({ upright, lying: lyingDown(upright) })) {
      const common = { host, hole: SMALL_HOLE, bed: USUAL_BED };
      const insert = { ...common, insert: SMALL_INSERT };
      set[`hole-gauge-${hostName}-${lie}`] = made(holeGauge({ ...common, count: 7, step: 0.1 }));
      set[`pull-coupon-${hostName}-${lie}`] = made(pullCoupon({ ...insert, number: 3 }));
      set[`torque-coupon-${hostName}-${lie}`] = made(
        torqueCoupon({ ...insert, number: 29, clearanceHole: 3.4, gap: 1.3 }),
      );
    }
  }
  const plain = { host: LARGER_PART, hole: holeOf(3.3, 4.2, 0), bed: USUAL_BED };
  set['hole-gauge-without-chamfer'] = made(holeGauge({ ...plain, count: 12, step: 0.05 }));
  set['pull-coupon-with-many-digits'] = made(pullCoupon({ ...plain, insert: SMALL_INSERT, number: 480_576 }));
  return set;
}
