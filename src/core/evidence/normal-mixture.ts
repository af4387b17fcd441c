import { normalProbability, normalQuantile } from '../numerics/normal-distribution.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import type { LogStudent } from './coupon-ratio.ts';

/** One normal distribution of a mixture. */
export interface NormalPart {
  readonly mean: number;
  readonly deviation: number;
  readonly weight: number;
}

function momentsOf(parts: readonly NormalPart[]): {
  readonly mean: number;
  readonly deviation: number;
  readonly total: number;
} {
  let total = 0;
  let mean = 0;
  for (const part of parts) {
    total += part.weight;
    mean += part.weight * part.mean;
  }
  mean /= total;
  let square = 0;
  for (const part of parts) square += part.weight * ((part.mean - mean) ** 2 + part.deviation ** 2);
  return { mean, deviation: Math.sqrt(square / total), total };
}

/** Error that a quantile may have, over the mixture's deviation. */
const QUANTILE_TOLERANCE = 1e-7;
/** Beyond so many deviations a normal distribution is all or nothing, to 1e-12. */
const FAR = 7;

/** Chance below x, and density there, times the sum of the weights. */
function massBelow(
  parts: readonly NormalPart[],
  x: number,
): { readonly below: number; readonly density: number } {
  let below = 0;
  let density = 0;
  for (const { mean, deviation, weight } of parts) {
    const s = (x - mean) / deviation;
    if (s > FAR) below += weight;
    else if (s > -FAR) {
      below += weight * normalProbability(s);
      density += (weight / deviation) * Math.exp((-s * s) / 2);
    }
  }
  return { below, density: density / Math.sqrt(2 * Math.PI) };
}

/**
 * Value that a mixture of normal distributions stays below with a chance.
 *
 *     x with Σ w·Φ((x − m)/s)/Σw = p
 *
 * By Newton's method, halving between the ends it has seen where a step would leave them.
 *
 * @param parts - mean m [-], deviation s [-], > 0, and weight w [-] of each
 * @param p - chance [-], 0 < p < 1
 * @returns x [-]
 */
export function mixtureQuantile(parts: readonly NormalPart[], p: number): number {
  const { mean, deviation, total } = momentsOf(parts);
  let low = Math.min(...parts.map((part) => part.mean - 2 * FAR * part.deviation));
  let high = Math.max(...parts.map((part) => part.mean + 2 * FAR * part.deviation));
  let x = mean + normalQuantile(p) * deviation;
  for (;;) {
    const { below, density } = massBelow(parts, x);
    const excess = below - p * total;
    if (excess > 0) high = x;
    else low = x;
    const newton = x - excess / density;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - x) < QUANTILE_TOLERANCE * deviation) return next;
    x = next;
  }
}

const CHARACTERISTIC = 0.05;
const RARE = 0.001;

/** How much farther than the 5 % quantile the 1 ‰ quantile of Student's t lies from the median. */
const tailRatio = (freedom: number): number =>
  studentQuantile(RARE, freedom) / studentQuantile(CHARACTERISTIC, freedom);

/** Whole degrees of freedom whose tail ratio is nearest; the ratio falls with the freedom. */
function freedomWithTail(ratio: number, least: number, most: number): number {
  let low = least;
  let high = most;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (tailRatio(middle) > ratio) low = middle;
    else high = middle;
  }
  return Math.abs(tailRatio(low) - ratio) <= Math.abs(tailRatio(high) - ratio) ? low : high;
}

/**
 * Student's t that stands for a mixture of normal distributions, on the side of little strength.
 *
 *     same median and 5 % quantile; whole degrees of freedom within limits, so that the 1 ‰ quantile is nearest
 *
 * An approximation: the upper side of a mixture that held coupons have made lopsided is not met.
 *
 * @param parts - the mixture
 * @param least - fewest degrees of freedom [-], whole, ≥ 1
 * @param most - most degrees of freedom [-], whole, ≥ least
 * @returns centre, scale and freedom
 */
export function studentLike(parts: readonly NormalPart[], least: number, most: number): LogStudent {
  const centre = mixtureQuantile(parts, 0.5);
  const low = mixtureQuantile(parts, CHARACTERISTIC);
  const rare = mixtureQuantile(parts, RARE);
  const freedom = freedomWithTail((centre - rare) / (centre - low), least, most);
  return { centre, scale: (low - centre) / studentQuantile(CHARACTERISTIC, freedom), freedom };
}
