import type { HoleBehaviour } from '../../src/core/holes/print-error.ts';

/** The published fit itself: 0.2307·ln D − 0.6223 mm, never above −0.10 mm. */
export const PUBLISHED_FIT: HoleBehaviour = {
  offset: { value: -0.6223 + 0.2307 * Math.log(4), standardUncertainty: 0.1 },
  slope: { value: 0.2307, standardUncertainty: 0.07 },
  ceiling: -0.1,
  repeatability: 0.05,
  standing: 'estimate',
};

/** A printer whose coupons have spoken: no ceiling any more. */
export const MEASURED_FIT: HoleBehaviour = {
  offset: { value: -0.19, standardUncertainty: 0.03 },
  slope: { value: 0.17, standardUncertainty: 0.04 },
  repeatability: 0.06,
  standing: 'measured',
};
