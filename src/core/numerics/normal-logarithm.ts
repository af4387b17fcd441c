import { normalProbability } from './normal-distribution.ts';
import { polynomial } from './polynomial.ts';

/** ½·ln(2π). */
const HALF_LOG_TWO_PI = 0.9189385332046728;

/** Below this the series in 1/x² has reached double accuracy, and the probability itself will soon be too small. */
const SERIES_BELOW = -25;

/** 1 − 1/x² + 3/x⁴ − 15/x⁶ + 105/x⁸; highest power first. */
const SERIES = [105, -15, 3, -1, 1];

/**
 * Natural logarithm of the chance that a standard normal variable is at most x.
 *
 *     ln Φ(x);   −x²/2 − ln(−x·√(2π)) + ln(1 − 1/x² + 3/x⁴ − …) far below
 *
 * @param x - standard deviations from the mean [-], any
 * @returns ln Φ [-], ≤ 0
 * @example x −40 gives −804.6084
 */
export function logNormalProbability(x: number): number {
  if (x >= 0) return Math.log1p(-normalProbability(-x));
  if (x >= SERIES_BELOW) return Math.log(normalProbability(x));
  return (-x * x) / 2 - HALF_LOG_TWO_PI - Math.log(-x) + Math.log(polynomial(SERIES, 1 / (x * x)));
}

/**
 * How steeply the logarithm of the normal probability rises.
 *
 *     φ(x)/Φ(x)
 *
 * @param x - standard deviations from the mean [-], any
 * @returns slope of ln Φ [-], ≥ 0
 */
export const logNormalSlope = (x: number): number =>
  Math.exp((-x * x) / 2 - HALF_LOG_TWO_PI - logNormalProbability(x));
