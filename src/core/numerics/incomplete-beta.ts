import { logBeta } from './log-gamma.ts';

/** Convergence of a continued fraction, and the least that a denominator may be. */
const CONVERGED = 2 ** -50;
const TINY = 1e-300;

/** An argument of the incomplete beta function with its complement, each kept to full accuracy. */
export interface BetaArgument {
  readonly a: number;
  readonly b: number;
  readonly x: number;
  /** 1 − x. */
  readonly complement: number;
}

/** The continued fraction 1/(1 + c1/(1 + c2/(1 + …))), by the modified method of Lentz. */
function continuedFraction(coefficient: (n: number) => number): number {
  const awayFromZero = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
  let c = 1 / TINY;
  let d = 1;
  let value = 1;
  for (let n = 1, change = 0; Math.abs(change - 1) > CONVERGED; n += 1) {
    const next = coefficient(n);
    d = 1 / awayFromZero(1 + next * d);
    c = awayFromZero(1 + next / c);
    change = c * d;
    value *= change;
  }
  return value;
}

/** Coefficients of the usual fraction, that of 2F1(a + b, 1; a + 1; x). */
const usualCoefficient =
  ({ a, b, x }: BetaArgument) =>
  (n: number): number => {
    const m = Math.floor(n / 2);
    return n % 2 === 0
      ? (m * (b - m) * x) / ((a + n - 1) * (a + n))
      : (-(a + m) * (a + b + m) * x) / ((a + n - 1) * (a + n));
  };

/**
 * Coefficients of the fraction of 2F1(1 − b, 1; a + 1; −x/(1 − x)), for b ≤ 1.
 * All are positive, so nothing cancels where a is large and x close to 1: Student's t with many degrees of freedom.
 */
const positiveCoefficient =
  ({ a, b, x, complement }: BetaArgument) =>
  (n: number): number => {
    const m = Math.floor(n / 2);
    const product = n % 2 === 0 ? m * (a + b + m - 1) : (m + 1 - b) * (a + m);
    return ((product / (a + n - 1) / (a + n)) * x) / complement;
  };

/** The function where its continued fraction converges fast, x ≤ (a + 1)/(a + b + 2). */
function byFraction(argument: BetaArgument): number {
  const { a, b, x, complement } = argument;
  const logX = x < 0.5 ? Math.log(x) : Math.log1p(-complement);
  const logComplement = complement < 0.5 ? Math.log(complement) : Math.log1p(-x);
  const front = Math.exp(a * logX + b * logComplement - logBeta(a, b)) / a;
  return b > 1
    ? front * continuedFraction(usualCoefficient(argument))
    : (front / complement) * continuedFraction(positiveCoefficient(argument));
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
