import { type LineBelief, lineAfter } from './hole-line.ts';
import { type LinePoint, SCATTER_FREEDOM } from './hole-scatter.ts';

/** So many robust deviations from the line name a reading: the limit of Iglewicz and Hoaglin, from memory. */
export const OUTLIER_LIMIT = 3.5;
/** Median absolute deviation of a normal distribution over its standard deviation, inverted. */
const MEDIAN_TO_DEVIATION = 1.4826;
/** Residuals beyond so many deviations pull no harder (Huber's constant). */
const HUBER = 1.345;
/** Rounds of weighting; the naming does not change any more after fewer. */
const ROUNDS = 20;

function medianOf(values: Float64Array): number {
  const sorted = values.toSorted();
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2;
}

/** Distance of each reading from the median residual, over its robust deviation. */
function robustScores(residuals: Float64Array, points: readonly LinePoint[], priorScatter: number) {
  const centre = medianOf(residuals);
  const spread = MEDIAN_TO_DEVIATION * medianOf(residuals.map((residual) => Math.abs(residual - centre)));
  const count = points.length;
  return Float64Array.from(points, ({ standardUncertainty }, index) => {
    const before = SCATTER_FREEDOM * (priorScatter ** 2 + standardUncertainty ** 2);
    const deviation = Math.sqrt((before + count * spread ** 2) / (SCATTER_FREEDOM + count));
    return ((residuals[index] ?? 0) - centre) / deviation;
  });
}

/**
 * Which readings lie far from the line that the others make: named, never dropped.
 *
 *     |r − median r|/s > 3.5        s² = [4·(s0² + u²) + n·(1.4826·MAD)²]/(4 + n)
 *
 * The line for it is drawn with Huber's weights, so that a reading far off hardly bends it. The spread is the median
 * absolute deviation, with the repeatability before any reading as four more: few or equal readings name nothing by
 * their own agreement. One or two readings never name one another.
 *
 * @param prior - line before the points
 * @param priorScatter - repeatability before them s0 [mm], > 0
 * @param points - in any number
 * @returns for each point whether it is named
 * @source own-model rule
 */
export function outliersOf(
  prior: LineBelief,
  priorScatter: number,
  points: readonly LinePoint[],
): readonly boolean[] {
  const residualsOf = ({ offset, slope }: LineBelief) =>
    Float64Array.from(points, ({ x, y }) => y - offset - slope * x);
  let scores = robustScores(residualsOf(prior), points, priorScatter);
  for (let round = 0; round < ROUNDS; round += 1) {
    const weighted = points.map(({ x, y, standardUncertainty }, index) => ({
      x,
      y,
      weight:
        Math.min(1, HUBER / Math.abs(scores[index] ?? 0)) / (priorScatter ** 2 + standardUncertainty ** 2),
    }));
    scores = robustScores(residualsOf(lineAfter(prior, weighted).belief), points, priorScatter);
  }
  return Array.from(scores, (score) => Math.abs(score) > OUTLIER_LIMIT);
}
