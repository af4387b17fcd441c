import { noncentralTQuantile } from '../numerics/noncentral-t.ts';
import { normalQuantile } from '../numerics/normal-distribution.ts';
import { normalQuantileWay } from '../numerics/quantile-ways.ts';
import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import { countEntry, freedomOf } from './sample.ts';

/** What a one-sided tolerance limit promises: that this share lies on its safe side, with this confidence. */
export interface TolerancePromise {
  /** Share p, [-], 0.5 < p < 1. */
  readonly share: number;
  /** Confidence γ, [-], 0.5 ≤ γ < 1. */
  readonly confidence: number;
}

/**
 * One-sided normal tolerance factor, standard deviation from the sample itself.
 *
 *     k = t'(γ; ν = n − 1, δ = z_p·√n)/√n,   t' the quantile of the noncentral t
 *
 * @param count - number of values n [-], ≥ 2
 * @param promise - share p and confidence γ [-]
 * @returns k [-]
 * @source iso-16269-6 one-sided, unknown variance
 * @example 5 values, 0.95/0.95 give 4.203
 */
export function toleranceFactor(count: number, { share, confidence }: TolerancePromise): number {
  const noncentrality = normalQuantile(share) * Math.sqrt(count);
  return noncentralTQuantile(confidence, { degrees: count - 1, noncentrality }) / Math.sqrt(count);
}

/**
 * One-sided normal tolerance factor, standard deviation known beforehand.
 *
 *     k = z_p + z_γ/√n
 *
 * @param count - number of values n [-], ≥ 1
 * @param promise - share p and confidence γ [-]
 * @returns k [-]
 * @source iso-16269-6 one-sided, known variance
 * @example 1 value, 0.95/0.95 gives 3.290
 */
export const toleranceFactorKnown = (count: number, { share, confidence }: TolerancePromise): number =>
  normalQuantile(share) + normalQuantile(confidence) / Math.sqrt(count);

/**
 * A tolerance factor with its derivation.
 *
 *     k = t'(γ; n − 1, z_p·√n)/√n        known deviation: z_p + z_γ/√n
 *
 * @param count - number of values n [-], ≥ 2, or ≥ 1 with a known deviation
 * @param promise - share p and confidence γ [-]
 * @param deviation - whether the standard deviation comes from the sample or is known
 * @returns k_t [-]
 * @source iso-16269-6
 */
export function derivedToleranceFactor(
  count: number,
  promise: TolerancePromise,
  deviation: 'from-sample' | 'known',
): Derived {
  const { share, confidence } = promise;
  const common = { symbol: 'k_t', unit: '-', source: 'iso-16269-6', standing: 'published' } as const;
  const scoreOfShare = entryFrom(normalQuantileWay('z_p', entry('p_s', share, '-')));
  const sure = entry('γ', confidence, '-');
  if (deviation === 'known') {
    return {
      ...common,
      value: toleranceFactorKnown(count, promise),
      formula: 'z_p + z_γ/√(n_t)',
      entries: [scoreOfShare, entryFrom(normalQuantileWay('z_γ', sure)), countEntry(count)],
    };
  }
  const value = toleranceFactor(count, promise);
  return {
    ...common,
    value,
    formula: 't_k/√(n_t)',
    entries: [entryFrom(noncentralWay(count, { scoreOfShare, sure })), countEntry(count)],
  };
}

function noncentralWay(
  count: number,
  { scoreOfShare, sure }: { readonly scoreOfShare: Entry; readonly sure: Entry },
): Derived {
  const common = { unit: '-', source: 'iso-16269-6', standing: 'published' } as const;
  const noncentrality: Derived = {
    ...common,
    symbol: 'δ_n',
    value: scoreOfShare.value * Math.sqrt(count),
    formula: 'z_p · √(n_t)',
    entries: [scoreOfShare, countEntry(count)],
  };
  const freedom = freedomOf(count);
  return {
    ...common,
    symbol: 't_k',
    value: noncentralTQuantile(sure.value, { degrees: freedom.value, noncentrality: noncentrality.value }),
    formula: 't(γ, ν_n, δ_n)',
    entries: [sure, entryFrom(freedom), entryFrom(noncentrality)],
  };
}
