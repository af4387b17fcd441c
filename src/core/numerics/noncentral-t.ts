import { normalProbability, normalQuantile } from './normal-distribution.ts';
import { rootInBracket } from './root.ts';

/** Which noncentral t distribution. */
export interface NoncentralShape {
  /** Degrees of freedom ν, [-], real, ≥ 1. */
  readonly degrees: number;
  /** Mean of the normal variable in the numerator δ, [-]. */
  readonly noncentrality: number;
}

/** Where the density of ln(s/σ) is left out, exp(−40) of its peak. */
const LEFT_OUT = 40;
/**
 * Step of the rule. On the line of imaginary part ½ the integrand is at most exp(0.22·(2ν + δ²)) of its peak, so that the
 * rule's error exp(−2π·½/step + 0.22·(2ν + δ²)) is exp(−37), below the last digit.
 */
const stepOf = ({ degrees, noncentrality }: NoncentralShape): number =>
  Math.PI / (37 + 0.22 * (2 * degrees + noncentrality ** 2));

/** Mean of a function of s/σ over the distribution of ln(s/σ), by the trapezoidal rule for it and for 1. */
function meanOverDeviation(shape: NoncentralShape, of: (ratio: number) => number): number {
  const { degrees } = shape;
  const reach = LEFT_OUT / degrees;
  const low = -(reach + Math.sqrt(reach * (reach + 4))) / 2;
  const high = Math.sqrt(reach);
  const pieces = Math.ceil((high - low) / stepOf(shape));
  const step = (high - low) / pieces;
  let sum = 0;
  let weights = 0;
  for (let piece = 0; piece <= pieces; piece += 1) {
    const u = low + piece * step;
    // exp(2u) − 1 − 2u: 0 at the peak, where nothing cancels that matters.
    const weight = Math.exp((-degrees / 2) * (Math.expm1(2 * u) - 2 * u));
    weights += weight;
    if (weight > 0) sum += weight * of(Math.exp(u));
  }
  return sum / weights;
}

/**
 * Chance that a variable with the noncentral t distribution is at most t.
 *
 *     F(t) = P((Z + δ)/√(χ²ν/ν) ≤ t) = E[Φ(t·w − δ)],   w = √(χ²ν/ν)
 *
 * The mean over w is an integral over ln w by the trapezoidal rule, which converges exponentially; all terms are
 * positive. Absolute accuracy some 1e-15; chances far below that are not resolved.
 *
 * @param t - value [-]
 * @param shape - degrees of freedom ν [-], ≥ 1; noncentrality δ [-]
 * @returns F [-], 0 … 1
 * @example t 3.7, 4 degrees of freedom, δ 0 is Student's t: 0.9896
 */
export const noncentralTProbability = (t: number, shape: NoncentralShape): number =>
  meanOverDeviation(shape, (ratio) => normalProbability(t * ratio - shape.noncentrality));

/** Chance above t: small chances at the upper end keep their digits. */
const noncentralTTail = (t: number, shape: NoncentralShape): number =>
  meanOverDeviation(shape, (ratio) => normalProbability(shape.noncentrality - t * ratio));

/**
 * Value that a variable with the noncentral t distribution stays below with chance p.
 *
 *     t with F(t) = p
 *
 * @param p - chance [-], 1e-9 … 1 − 1e-9
 * @param shape - degrees of freedom ν [-], ≥ 1; noncentrality δ [-]
 * @returns t [-]
 * @example p 0.95, 4 degrees of freedom, δ 1.6449·√5 gives 4.203·√5
 */
export function noncentralTQuantile(p: number, shape: NoncentralShape): number {
  const excess = (t: number): number =>
    p < 0.5 ? noncentralTProbability(t, shape) - p : 1 - p - noncentralTTail(t, shape);
  const start = shape.noncentrality + normalQuantile(p);
  let width = 1;
  while (excess(start - width) > 0) width *= 2;
  const low = start - width;
  width = 1;
  while (excess(start + width) < 0) width *= 2;
  return rootInBracket({ f: excess, low, high: start + width });
}
