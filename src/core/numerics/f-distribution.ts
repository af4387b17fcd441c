import { incompleteBetaParts } from './incomplete-beta.ts';

/** Degrees of freedom of the two variances whose ratio is looked at. */
export interface VarianceRatioDegrees {
  readonly numerator: number;
  readonly denominator: number;
}

/**
 * Chance that a ratio of two variances with one expectation exceeds f: the tail of the F distribution.
 *
 *     1 − F(f) = I(ν2/(ν2 + ν1·f); ν2/2, ν1/2)
 *
 * @param f - ratio of the variances [-], ≥ 0
 * @param degrees - of freedom, ν1 above and ν2 below [-], real, > 0
 * @returns chance above f [-], 0 … 1
 * @example f 1 with 4 and 4 degrees of freedom gives 0.5
 */
export function varianceRatioTail(f: number, { numerator, denominator }: VarianceRatioDegrees): number {
  const above = numerator * f;
  const { lower } = incompleteBetaParts({
    a: denominator / 2,
    b: numerator / 2,
    x: denominator / (denominator + above),
    complement: above / (denominator + above),
  });
  return lower;
}
