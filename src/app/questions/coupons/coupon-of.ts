import type { Bed, CouponHost, Refused } from '../../../core/coupons/coupon.ts';
import { holeGauge } from '../../../core/coupons/hole-gauge.ts';
import { pullCoupon } from '../../../core/coupons/pull-coupon.ts';
import { torqueCoupon } from '../../../core/coupons/torque-coupon.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Coupon } from '../../../solids/coupon-mesh.ts';
import type { CouponKind } from '../../../wording/coupons.ts';

/** What a person wishes of a coupon; lengths in mm. */
export interface CouponWish {
  readonly kind: CouponKind;
  readonly axis: CouponHost['axis'];
  /** Bores of the gauge, and the step between them. */
  readonly count: number;
  readonly step: number;
  /** Number that stands on a coupon with an insert. */
  readonly number: number;
  readonly bed: Bed;
}

/** The coupon for the joint on the sheet, with its own walls. */
export function couponOf(joint: Joint, assessment: JointAssessment, wish: CouponWish): Coupon | Refused {
  const { hole, dimensions } = assessment;
  const { bossDiameter, layerHeight } = joint.host;
  const host: CouponHost = {
    axis: wish.axis,
    wall: hole.wall,
    layerHeight,
    ...(bossDiameter === undefined ? {} : { bossDiameter }),
  };
  const { bed, count, step, number } = wish;
  if (wish.kind === 'hole-gauge') return holeGauge({ host, hole, count, step, bed });
  const insert = {
    knurlDiameter: dimensions.knurlDiameter.estimate,
    knurledLength: dimensions.knurledLength.estimate,
  };
  if (wish.kind === 'pull-coupon') return pullCoupon({ host, hole, insert, number, bed });
  const { clearanceHole } = joint.clamped;
  return torqueCoupon({ host, hole, insert, number, bed, clearanceHole, gap: joint.gap });
}
