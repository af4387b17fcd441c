import { logGamma } from './log-gamma.ts';

/** Convergence of series and continued fraction, and the least that a denominator may be. */
const CONVERGED = 2 ** -53;
const TINY = 1e-300;

/** Σ x^n/((a + 1)·…·(a + n)): converges fast for x < a + 1, all terms positive. */
function lowerSeries(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; term > CONVERGED * sum; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** 1/(x + 1 − a − 1·(1 − a)/(x + 3 − a − …)), by the modified method of Lentz; for x ≥ a + 1. */
function upperFraction(a: number, x: number): number {
  let denominator = x + 1 - a;
  let c = 1 / TINY;
  let d = 1 / denominator;
  let value = d;
  for (let n = 1, change = 0; Math.abs(change - 1) > CONVERGED * 4; n += 1) {
    const numerator = n * (a - n);
    denominator += 2;
    d = 1 / (denominator + numerator * d);
    c = denominator + numerator / c;
    change = c * d;
    value *= change;
  }
  return value;
}

/**
 * Regularised incomplete gamma function and its complement; the smaller of the two keeps its relative accuracy.
 *
 *     P(a, x) = ∫ from 0 to x of t^(a−1)·exp(−t) dt/Γ(a)        Q = 1 − P
 *
 * Series below x = a + 1, continued fraction above it.
 *
 * @param argument - a [-], > 0; x [-], ≥ 0
 * @returns lower P [-] and upper Q [-], 0 … 1
 * @example a 1, x 2 has the upper part exp(−2)
 */
export function incompleteGammaParts({ a, x }: { readonly a: number; readonly x: number }): {
  readonly lower: number;
  readonly upper: number;
} {
  if (x === 0) return { lower: 0, upper: 1 };
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    const lower = (front / a) * lowerSeries(a, x);
    return { lower, upper: 1 - lower };
  }
  const upper = front * upperFraction(a, x);
  return { lower: 1 - upper, upper };
}
