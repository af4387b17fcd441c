import { type HoleBehaviour, REFERENCE_DIAMETER } from './print-error.ts';

/** What is known of a straight line y = a + b·x: normal, both coefficients together; mm and mm². */
export interface LineBelief {
  readonly offset: number;
  readonly slope: number;
  readonly offsetVariance: number;
  readonly slopeVariance: number;
  readonly covariance: number;
}

/** A point of the line: x = ln(D/4 mm), y the error, mm, w its weight 1/variance, 1/mm². */
export interface WeightedPoint {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** The line after its points, and how well they suit what was known before. */
export interface LinePosterior {
  readonly belief: LineBelief;
  /** −2·ln of the density of all points before any was seen, without what their weights alone make. */
  readonly misfit: number;
}

/** Where a drawn diameter stands on the line. */
export const abscissaOf = (drawn: number): number => Math.log(drawn / REFERENCE_DIAMETER);

export const lineOf = ({ offset, slope, covariance = 0 }: HoleBehaviour): LineBelief => ({
  offset: offset.value,
  slope: slope.value,
  offsetVariance: offset.standardUncertainty ** 2,
  slopeVariance: slope.standardUncertainty ** 2,
  covariance,
});

/**
 * Bayesian regression of a line on points of known weight.
 *
 *     S = Σw·(1, x)ᵀ(1, x)        g = Σw·(y − a0 − b0·x)·(1, x)
 *     V = (V0⁻¹ + S)⁻¹ = (V0 + det V0 · adj S)/det(1 + V0·S)        (a, b) = (a0, b0) + V·g
 *     misfit = Σw·r0·r + ln det(1 + V0·S)        r0, r residuals of the line before and after
 *
 * Written without the inverse of V0, so that a coefficient may be known exactly.
 *
 * @param prior - line before the points
 * @param points - at any places, in any number
 * @returns line after them
 */
export function lineAfter(prior: LineBelief, points: readonly WeightedPoint[]): LinePosterior {
  const { offset, slope, offsetVariance: A, slopeVariance: B, covariance: C } = prior;
  let s0 = 0;
  let s1 = 0;
  let g0 = 0;
  let g1 = 0;
  for (const { x, y, weight } of points) {
    const pull = weight * (y - offset - slope * x);
    s0 += weight;
    s1 += weight * x;
    g0 += pull;
    g1 += pull * x;
  }
  const centre = s0 === 0 ? 0 : s1 / s0;
  let squares = 0;
  for (const { x, weight } of points) squares += weight * (x - centre) ** 2;
  const s2 = squares + s0 * centre ** 2;
  const priorDeterminant = A * B - C * C;
  const determinant = 1 + A * s0 + 2 * C * s1 + B * s2 + priorDeterminant * s0 * squares;
  const offsetVariance = (A + priorDeterminant * s2) / determinant;
  const slopeVariance = (B + priorDeterminant * s0) / determinant;
  const covariance = (C - priorDeterminant * s1) / determinant;
  const belief = {
    offset: offset + offsetVariance * g0 + covariance * g1,
    slope: slope + covariance * g0 + slopeVariance * g1,
    offsetVariance,
    slopeVariance,
    covariance,
  };
  let square = 0;
  for (const { x, y, weight } of points) {
    square += weight * (y - offset - slope * x) * (y - belief.offset - belief.slope * x);
  }
  return { belief, misfit: square + Math.log(determinant) };
}
