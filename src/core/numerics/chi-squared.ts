import { incompleteGammaParts } from './incomplete-gamma.ts';
import { normalQuantile } from './normal-distribution.ts';
import { rootInBracket } from './root.ts';

/** Chance below and above x, each accurate in itself. */
const chiSquaredParts = (x: number, degrees: number) => incompleteGammaParts({ a: degrees / 2, x: x / 2 });

/**
 * Chance that a variable with a chi-squared distribution is at most x.
 *
 *     F(x) = P(ν/2, x/2), the regularised incomplete gamma function
 *
 * @param x - value [-], ≥ 0
 * @param degrees - degrees of freedom ν [-], real, > 0
 * @returns F [-], 0 … 1
 * @example x 5.991, 2 degrees of freedom gives 0.95
 */
export const chiSquaredProbability = (x: number, degrees: number): number =>
  chiSquaredParts(x, degrees).lower;

/**
 * Chance that a variable with a chi-squared distribution is above x; keeps its relative accuracy where it is small.
 *
 *     1 − F(x) = Q(ν/2, x/2)
 *
 * @param x - value [-], ≥ 0
 * @param degrees - degrees of freedom ν [-], real, > 0
 * @returns 1 − F [-], 0 … 1
 */
export const chiSquaredTail = (x: number, degrees: number): number => chiSquaredParts(x, degrees).upper;

/** Factor by which the bracket about the first guess grows. */
const WIDER = 2;

/**
 * Value that a variable with a chi-squared distribution stays below with chance p.
 *
 *     x with F(x) = p
 *
 * A root of the logarithm of the smaller chance over ln x, about the cube of Wilson and Hilferty.
 *
 * @param p - chance [-], 0 < p < 1
 * @param degrees - degrees of freedom ν [-], real, > 0
 * @returns x [-]
 * @example p 0.95, 9 degrees of freedom gives 16.919
 */
export function chiSquaredQuantile(p: number, degrees: number): number {
  const excess = (logX: number): number => {
    const { lower, upper } = chiSquaredParts(Math.exp(logX), degrees);
    return p < 0.5 ? Math.log(lower / p) : Math.log((1 - p) / upper);
  };
  const cube = 1 - 2 / (9 * degrees) + normalQuantile(p) * Math.sqrt(2 / (9 * degrees));
  const guess = Math.log(degrees) + 3 * Math.log(Math.max(cube, 0.05));
  let width = 0.25;
  while (excess(guess - width) > 0 || excess(guess + width) < 0) width *= WIDER;
  return Math.exp(rootInBracket({ f: excess, low: guess - width, high: guess + width, tolerance: 2 ** -52 }));
}
