import { logNormalProbability, logNormalSlope } from '../numerics/normal-logarithm.ts';
import { rootInBracket } from '../numerics/root.ts';
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

/** How many coupons of a size held. */
export const heldCount = ({ held }: SizeLikelihood): number =>
  held.reduce((total, { count }) => total + count, 0);

/** Near enough for choosing where to look: it decides no result. */
const MODE_TOLERANCE = 1e-2;

/**
 * Likeliest median of a size when that of the set-up is given.
 *
 *     x with (t − x)/κδ + d ln L/dx = 0
 *
 * @param size - its coupons
 * @param setup - median of the set-up t, in units of σ [-]
 * @returns x, in units of σ [-]
 */
export function likeliestMedian(size: SizeLikelihood, setup: number): number {
  const { precision, mean, held } = size;
  if (held.length === 0) return (setup + SIZE_RATIO * precision * mean) / (1 + SIZE_RATIO * precision);
  const broken = precision > 0 ? [mean] : [];
  return rootInBracket({
    f: (x) => (setup - x) / SIZE_RATIO + slopeAt(size, x).slope,
    low: Math.min(setup, ...broken),
    // Above every least value ln Φ rises by less than 0.8 per deviation, of which none is below 1.
    high: Math.max(setup, ...broken, ...held.map(({ least }) => least)) + SIZE_RATIO * heldCount(size),
    tolerance: MODE_TOLERANCE,
  });
}
