import type { HoleBehaviour } from '../core/holes/print-error.ts';

/**
 * How an unknown printer closes vertical holes, until coupons of the real one speak: printed − drawn, mm.
 * Centre after hole-metrology-note (−0.302 mm at 4 mm, slope 0.2307, never above −0.10 mm), one printer, 3 to 10 mm.
 * Offset, its uncertainty and the repeatability are judged, not read.
 */
export const UNCALIBRATED_HOLES: HoleBehaviour = {
  offset: { value: -0.28, standardUncertainty: 0.1 },
  slope: { value: 0.23, standardUncertainty: 0.1 },
  ceiling: -0.1,
  repeatability: 0.05,
  standing: 'estimate',
};
