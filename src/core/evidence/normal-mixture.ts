import { normalProbability } from '../numerics/normal-distribution.ts';
import { rootInBracket } from '../numerics/root.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import type { LogStudent } from './coupon-ratio.ts';

/** One normal distribution of a mixture. */
export interface NormalPart {
  readonly mean: number;
  readonly deviation: number;
  readonly weight: number;
}

const momentsOf = (parts: readonly NormalPart[]): { readonly mean: number; readonly deviation: number } => {
  let total = 0;
  let mean = 0;
  for (const part of parts) {
    total += part.weight;
    mean += part.weight * part.mean;
  }
  mean /= total;
  let square = 0;
  for (const part of parts) square += part.weight * ((part.mean - mean) ** 2 + part.deviation ** 2);
  return { mean, deviation: Math.sqrt(square / total) };
};

/** Error that a quantile may have, over the mixture's deviation. */
const QUANTILE_TOLERANCE = 1e-7;

/**
 * Value that a mixture of normal distributions stays below with each of some chances.
 *
 *     x with Σ w·Φ((x − m)/s)/Σw = p
 *
 * @param parts - mean m [-], deviation s [-], > 0, and weight w [-] of each
 * @param chances - p [-], 0 < p < 1
 * @returns x [-] for each chance
 */
export function mixtureQuantiles(parts: readonly NormalPart[], chances: readonly number[]): number[] {
  const { mean, deviation } = momentsOf(parts);
  let total = 0;
  for (const { weight } of parts) total += weight;
  const excess = (p: number) => (x: number) => {
    let below = 0;
    for (const part of parts) below += part.weight * normalProbability((x - part.mean) / part.deviation);
    return below / total - p;
  };
  return chances.map((p) => {
    const f = excess(p);
    let low = mean - deviation;
    let high = mean + deviation;
    for (let reach = deviation; f(low) > 0; reach *= 2) low -= reach;
    for (let reach = deviation; f(high) < 0; reach *= 2) high += reach;
    return rootInBracket({ f, low, high, tolerance: QUANTILE_TOLERANCE * deviation });
  });
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
  const [centre = 0, low = 0, rare = 0] = mixtureQuantiles(parts, [0.5, CHARACTERISTIC, RARE]);
  const freedom = freedomWithTail((centre - rare) / (centre - low), least, most);
  return { centre, scale: (low - centre) / studentQuantile(CHARACTERISTIC, freedom), freedom };
}
