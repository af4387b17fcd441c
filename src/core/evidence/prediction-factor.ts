import { normalQuantile } from '../numerics/normal-distribution.ts';
import { normalQuantileWay, studentQuantileWay } from '../numerics/quantile-ways.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { countEntry, freedomOf } from './sample.ts';

/**
 * Prediction factor, V_X unknown: the next value is above m − k·s with this chance.
 *
 *     k = t_(p, n − 1)·√(1 + 1/n)
 *
 * It has no confidence level: where the sample itself may mislead, the tolerance factor is the one to take.
 *
 * @param count - number of values n [-], ≥ 2; EN 1990 prints it from 3 on
 * @param share - chance p of the next value [-], 0.5 < p < 1
 * @returns k_n [-]
 * @source en-1990 Annex D, V_X unknown
 * @example 3 values, 0.95 give 3.37
 */
export const predictionFactor = (count: number, share: number): number =>
  studentQuantile(share, count - 1) * Math.sqrt(1 + 1 / count);

/**
 * Prediction factor, V_X known.
 *
 *     k = z_p·√(1 + 1/n)
 *
 * @param count - number of values n [-], ≥ 1
 * @param share - chance p of the next value [-], 0.5 < p < 1
 * @returns k_n [-]
 * @source en-1990 Annex D, V_X known
 * @example 3 values, 0.95 give 1.90
 */
export const predictionFactorKnown = (count: number, share: number): number =>
  normalQuantile(share) * Math.sqrt(1 + 1 / count);

/**
 * A prediction factor with its derivation.
 *
 *     k_n = t·√(1 + 1/n)        known deviation: z·√(1 + 1/n)
 *
 * @param count - number of values n [-], ≥ 2, or ≥ 1 with a known deviation
 * @param share - chance p of the next value [-], 0.5 < p < 1
 * @param deviation - whether the standard deviation comes from the sample or is known
 * @returns k_n [-]
 * @source en-1990 Annex D, Tables D1 and D2
 */
export function derivedPredictionFactor(
  count: number,
  share: number,
  deviation: 'from-sample' | 'known',
): Derived {
  const common = { symbol: 'k_n', unit: '-', source: 'en-1990', standing: 'published' } as const;
  const below = entry('p_s', share, '-');
  return deviation === 'known'
    ? {
        ...common,
        value: predictionFactorKnown(count, share),
        formula: 'z_p · √(1 + 1/n_t)',
        entries: [entryFrom(normalQuantileWay('z_p', below)), countEntry(count)],
      }
    : {
        ...common,
        value: predictionFactor(count, share),
        formula: 't_n · √(1 + 1/n_t)',
        entries: [
          entryFrom(studentQuantileWay('t_n', { share: below, freedom: entryFrom(freedomOf(count)) })),
          countEntry(count),
        ],
      };
}
