import type { CouponPoint } from '../../core/bench/coupon-points.ts';
import type { HoldBand, LengthPoint } from '../../core/recommend/length-curve.ts';
import type { Derived } from '../../core/sources/derived.ts';

/** What coupons are drawn over the prediction of. */
export type TestedQuantity = 'pull-out' | 'torque-out' | 'jack-out';

/** A coupon with the one value of it that is drawn. */
export interface TestedCoupon extends CouponPoint {
  readonly value: Derived;
}

/** How one of them is found among the coupons and on the curve, and what stands at its picture. */
interface Quantity {
  /** What a coupon stands for; undefined where it says nothing of this quantity. */
  readonly of: (point: CouponPoint) => Derived | undefined;
  readonly bandOf: (point: LengthPoint) => HoldBand;
  readonly unit: 'N' | 'N·mm';
  readonly title: string;
  readonly axis: string;
  readonly column: string;
  /** How a coupon came to its value. */
  readonly caption: string;
}

export const TESTED_QUANTITIES: Readonly<Record<TestedQuantity, Quantity>> = {
  'pull-out': {
    of: ({ force }) => force,
    bandOf: ({ median, characteristic, upper }) => ({ median, characteristic, upper }),
    unit: 'N',
    title: 'Coupons over what is predicted: pull-out over length',
    axis: 'pull-out, N, over insert length, mm',
    column: 'Pull-out',
    caption:
      'What each coupon stands for in this joint: at its temperature, bore and layers; torques taken to a force',
  },
  'torque-out': {
    of: ({ torque }) => (torque?.of === 'torque-out' ? torque.value : undefined),
    bandOf: ({ torqueOut }) => torqueOut,
    unit: 'N·mm',
    title: 'Coupons over what is predicted: torque that turns the insert, over length',
    axis: 'torque at the insert, N·m, over insert length, mm',
    column: 'Torque at the insert',
    caption:
      'What each turned coupon stands for in this joint: at its temperature, bore and layers; of one that a screw turned, the share that its thread passed on',
  },
  'jack-out': {
    of: ({ torque }) => (torque?.of === 'jack-out' ? torque.value : undefined),
    bandOf: ({ jackOut }) => jackOut,
    unit: 'N·mm',
    title: 'Coupons over what is predicted: torque on the screw that pulls the insert out, over length',
    axis: 'torque on the screw, N·m, over insert length, mm',
    column: 'Torque on the screw',
    caption:
      'What each jacked-out coupon stands for in this joint: at its temperature, bore and layers. The friction of the screw was not measured, and is part of the band',
  },
};
