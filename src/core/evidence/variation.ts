import { chiSquaredQuantile } from '../numerics/chi-squared.ts';

/** Ends of a coefficient of variation; the upper one is absent where so few values do not bound it. */
export interface VariationEnds {
  readonly low: number;
  readonly high?: number;
}

/**
 * Confidence interval of a coefficient of variation, two-sided.
 *
 *     V/√[((u + 2)/n − 1)·V² + u/(n − 1)],   u = χ² quantiles of (1 ± confidence)/2, n − 1 degrees of freedom
 *
 * Vangel's modification of McKay's chi-squared approximation, for normal values. From four values on and up to V = 0.2
 * within 1.2 % of the exact ends; the upper end then grows too large, on the careful side, until it is open. Two values
 * leave it open always: there the approximation ends too low.
 *
 * @param variation - V = s/m [-], > 0
 * @param sample - number of values n [-], ≥ 2; confidence [-], 0 < confidence < 1
 * @returns ends of V [-]
 * @source vangel-1996 modified McKay interval
 * @example V 0.07 of 5 values has the ends 0.042 and 0.20 at 95 %
 */
export function variationEnds(
  variation: number,
  { count, confidence }: { readonly count: number; readonly confidence: number },
): VariationEnds {
  const squareOver = (quantile: number): number =>
    ((quantile + 2) / count - 1) * variation ** 2 + quantile / (count - 1);
  // The greater quantile belongs to the lower end.
  const low = variation / Math.sqrt(squareOver(chiSquaredQuantile((1 + confidence) / 2, count - 1)));
  const below = squareOver(chiSquaredQuantile((1 - confidence) / 2, count - 1));
  return below > 0 && count > 2 ? { low, high: variation / Math.sqrt(below) } : { low };
}
