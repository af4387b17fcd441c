import { logBeta } from './log-gamma.ts';

/** Convergence of the continued fraction, and the least that a denominator may be. */
const EPSILON = 2 ** -52;
const TINY = 1e-300;

/** An argument of the incomplete beta function with its complement, each kept to full accuracy. */
export interface BetaArgument {
  readonly a: number;
  readonly b: number;
  readonly x: number;
  /** 1 − x. */
  readonly complement: number;
}

/** Continued fraction of the incomplete beta function, by the modified method of Lentz. */
function continuedFraction({ a, b, x }: BetaArgument): number {
  const awayFromZero = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1, change = 0; Math.abs(change - 1) > EPSILON; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / awayFromZero(1 + even * d);
    c = awayFromZero(1 + even / c);
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / awayFromZero(1 + odd * d);
    c = awayFromZero(1 + odd / c);
    change = c * d;
    value *= change;
  }
  return value;
}

/** The function where its continued fraction converges fast, x ≤ (a + 1)/(a + b + 2). */
function byFraction(argument: BetaArgument): number {
  const { a, b, x, complement } = argument;
  const logX = x < 0.5 ? Math.log(x) : Math.log1p(-complement);
  const logComplement = complement < 0.5 ? Math.log(complement) : Math.log1p(-x);
  return (Math.exp(a * logX + b * logComplement - logBeta(a, b)) / a) * continuedFraction(argument);
}

/**
 * Regularised incomplete beta function and its complement; the smaller of the two keeps its relative accuracy.
 *
 *     I(x; a, b) = ∫ from 0 to x of t^(a−1)·(1 − t)^(b−1) dt/B(a, b)
 *
 * @param argument - a, b [-], > 0; x and its complement [-], 0 … 1
 * @returns lower I [-] and upper 1 − I [-]
 */
export function incompleteBetaParts(argument: BetaArgument): {
  readonly lower: number;
  readonly upper: number;
} {
  const { a, b, x, complement } = argument;
  if (x === 0) return { lower: 0, upper: 1 };
  if (complement === 0) return { lower: 1, upper: 0 };
  if (x <= (a + 1) / (a + b + 2)) {
    const lower = byFraction(argument);
    return { lower, upper: 1 - lower };
  }
  const upper = byFraction({ a: b, b: a, x: complement, complement: x });
  return { lower: 1 - upper, upper };
}

/**
 * Regularised incomplete beta function.
 *
 *     I(x; a, b) = ∫ from 0 to x of t^(a−1)·(1 − t)^(b−1) dt/B(a, b)
 *
 * @param argument - x [-], 0 … 1; a, b [-], > 0
 * @returns I [-], 0 … 1
 * @example I(0.3; 2, 3) is 0.3483
 */
export const regularisedIncompleteBeta = (argument: {
  readonly x: number;
  readonly a: number;
  readonly b: number;
}): number => incompleteBetaParts({ ...argument, complement: 1 - argument.x }).lower;
