import { incompleteBetaParts } from './incomplete-beta.ts';
import { logBeta } from './log-gamma.ts';
import { normalQuantile } from './normal-distribution.ts';

/** Beyond this ratio t/√ν the tail is its leading power to double accuracy, and t² need not be formed. */
const POWER_TAIL_FROM = 1e9;

/** Newton's method needs 3 to 10 steps; rounding may keep the last one from vanishing. */
const MOST_STEPS = 30;

/** Chance above t, and between 0 and t, for t ≥ 0; each accurate in itself. */
function sideParts(t: number, degrees: number): { readonly tail: number; readonly centre: number } {
  const scaled = t / Math.sqrt(degrees);
  const a = degrees / 2;
  if (scaled > POWER_TAIL_FROM) {
    const tail = 0.5 * Math.exp(-degrees * Math.log(scaled) - Math.log(a) - logBeta(a, 0.5));
    return { tail, centre: 0.5 - tail };
  }
  const square = scaled * scaled;
  const { lower, upper } = incompleteBetaParts({
    a,
    b: 0.5,
    x: 1 / (1 + square),
    complement: square / (1 + square),
  });
  return { tail: lower / 2, centre: upper / 2 };
}

/** ln f(t), for t ≥ 0. */
function logDensity(t: number, degrees: number): number {
  const scaled = t / Math.sqrt(degrees);
  const logSum = scaled > POWER_TAIL_FROM ? 2 * Math.log(scaled) : Math.log1p(scaled * scaled);
  return (-(degrees + 1) / 2) * logSum - logBeta(degrees / 2, 0.5) - Math.log(degrees) / 2;
}

/**
 * Density of Student's t distribution.
 *
 *     f(t) = (1 + t²/ν)^(−(ν + 1)/2)/(√ν · B(ν/2, ½))
 *
 * @param t - value [-]
 * @param degrees - degrees of freedom ν [-], real, ≥ 1
 * @returns f [-]
 */
export const studentDensity = (t: number, degrees: number): number =>
  Math.exp(logDensity(Math.abs(t), degrees));

/**
 * Chance that a variable with Student's t distribution is at most t.
 *
 *     F(t) = ½ · I(ν/(ν + t²); ν/2, ½)     for t ≤ 0, and 1 − F(−t) above
 *
 * The lower tail keeps its relative accuracy; the chance above t is F(−t), never 1 − F(t).
 *
 * @param t - value [-]
 * @param degrees - degrees of freedom ν [-], real, ≥ 1
 * @returns F [-], 0 … 1
 * @example t 2.015, 5 degrees of freedom gives 0.950
 */
export function studentProbability(t: number, degrees: number): number {
  const { tail, centre } = sideParts(Math.abs(t), degrees);
  return t <= 0 ? tail : 0.5 + centre;
}

/**
 * Value that a variable with Student's t distribution stays below with chance p.
 *
 *     t with F(t) = p
 *
 * Newton's method on the logarithms of chance and value from the normal quantile: that start is nearer to the median
 * than the answer for every ν, and both curves are concave, so the steps cannot leave the right side.
 *
 * @param p - chance [-], 0 < p < 1
 * @param degrees - degrees of freedom ν [-], real, ≥ 1
 * @returns t [-]
 * @example p 0.95, 5 degrees of freedom gives 2.015
 */
export function studentQuantile(p: number, degrees: number): number {
  const tailChance = Math.min(p, 1 - p);
  if (tailChance === 0.5) return 0;
  const centreChance = Math.abs(p - 0.5);
  let t = Math.abs(normalQuantile(p));
  for (let step = 1, steps = 0; Math.abs(step) > 1e-15 && steps < MOST_STEPS; steps += 1) {
    const { tail, centre } = sideParts(t, degrees);
    const slope = Math.log(t) + logDensity(t, degrees);
    step =
      tailChance < 0.25
        ? Math.log(tail / tailChance) * Math.exp(Math.log(tail) - slope)
        : Math.log(centreChance / centre) * Math.exp(Math.log(centre) - slope);
    t *= Math.exp(step);
  }
  return p < 0.5 ? -t : t;
}
