import { logNormalProbability, logNormalSlope } from '../numerics/normal-logarithm.ts';
import { SIZE_RATIO } from './bond-prior.ts';
import type { CouponRatio } from './coupon-ratio.ts';

/** Everything about one size for one scatter σ; lengths are in units of σ, counted from the prior median. */
export interface SizeLikelihood {
  /** Sum of 1/τ² of the broken ones, and their mean weighted by it. */
  readonly precision: number;
  readonly mean: number;
  /** What of the log-likelihood of the broken ones does not depend on the size's own median. */
  readonly constant: number;
  readonly held: readonly HeldCoupon[];
}

/** Coupons that held the same ratio, measured alike. */
interface HeldCoupon {
  readonly least: number;
  /** Deviation of one coupon: √(σ² + own²)/σ. */
  readonly deviation: number;
  readonly count: number;
}

/**
 * The coupons of one size as functions of its own median.
 *
 * @param ratios - of one size, logRatio less the logarithm of the prior median [-]
 * @param scatter - σ [-], > 0
 * @returns sums over the broken ones, and the held ones
 */
export function sizeLikelihood(ratios: readonly CouponRatio[], scatter: number): SizeLikelihood {
  let precision = 0;
  let weighted = 0;
  let squares = 0;
  let constant = 0;
  const held: (HeldCoupon & { count: number })[] = [];
  for (const { logRatio, outcome, ownDeviation } of ratios) {
    const at = logRatio / scatter;
    const deviation = Math.hypot(1, ownDeviation / scatter);
    if (outcome === 'held') {
      const same = held.find((other) => other.least === at && other.deviation === deviation);
      if (same === undefined) held.push({ least: at, deviation, count: 1 });
      else same.count += 1;
      continue;
    }
    const weight = 1 / deviation ** 2;
    const before = precision === 0 ? at : weighted / precision;
    // Sum of squares about the running mean: nothing cancels where all agree far from the prior.
    squares += ((weight * precision) / (weight + precision)) * (at - before) ** 2;
    precision += weight;
    weighted += weight * at;
    constant -= Math.log(deviation * scatter);
  }
  return {
    precision,
    mean: precision === 0 ? 0 : weighted / precision,
    constant: constant - squares / 2,
    held,
  };
}

/** ln L of the size's own median x, [-]. */
export function logLikelihoodAt({ precision, mean, held }: SizeLikelihood, x: number): number {
  let value = (-precision * (x - mean) ** 2) / 2;
  for (const { least, deviation, count } of held) {
    value += count * logNormalProbability((x - least) / deviation);
  }
  return value;
}

/** Slope of ln L over x, and how strongly it is curved downwards. */
export function slopeAt(
  { precision, mean, held }: SizeLikelihood,
  x: number,
): { readonly slope: number; readonly curvature: number } {
  let slope = precision * (mean - x);
  let curvature = precision;
  for (const { least, deviation, count } of held) {
    const s = (x - least) / deviation;
    const rise = logNormalSlope(s);
    slope += (count * rise) / deviation;
    curvature += (count * rise * (rise + s)) / deviation ** 2;
  }
  return { slope, curvature };
}

/** The likeliest median of a size, and how strongly its coupons bend ln L there. */
export interface LikeliestMedian {
  readonly at: number;
  readonly curvature: number;
}

/** Near enough, in units of σ, for choosing where to look: it decides no result. */
const MODE_TOLERANCE = 0.05;

/**
 * Likeliest median of a size when that of the set-up is given.
 *
 *     x with (t − x)/κδ + d ln L/dx = 0
 *
 * By Newton's method: the slope falls and is convex, so from the second step on it comes from below and cannot overshoot.
 *
 * @param size - its coupons
 * @param setup - median of the set-up t, in units of σ [-]
 * @param start - x to begin with, in units of σ [-]
 * @returns x, in units of σ, and the curvature there
 */
export function likeliestMedian(size: SizeLikelihood, setup: number, start: number): LikeliestMedian {
  let at = start;
  for (;;) {
    const { slope, curvature } = slopeAt(size, at);
    const step = ((setup - at) / SIZE_RATIO + slope) / (1 / SIZE_RATIO + curvature);
    at += step;
    if (Math.abs(step) < MODE_TOLERANCE) return { at, curvature };
  }
}
