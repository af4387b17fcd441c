import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { derivedPredictionFactor } from './prediction-factor.ts';
import {
  deviationOfSample,
  logarithmsOf,
  logDeviationOf,
  logMeanOf,
  meanOfSample,
  momentsOf,
  type Sample,
} from './sample.ts';
import { derivedToleranceFactor, type TolerancePromise } from './tolerance-factor.ts';

/** What a characteristic value is to promise, and how the values are taken to scatter. */
export interface CharacteristicQuestion {
  /** Lognormal asks for values above zero; a known deviation is then that of the logarithm. */
  readonly distribution: 'normal' | 'lognormal';
  readonly promise: TolerancePromise | { readonly kind: 'next-value'; readonly share: number };
  /** Standard deviation known beforehand: in the unit of the sample, or of the logarithm [-]; > 0. */
  readonly knownDeviation?: number;
}

export type CharacteristicValue =
  | { readonly kind: 'value'; readonly value: Derived; readonly factor: Derived }
  /** Fewer than two values have no standard deviation. */
  | { readonly kind: 'refused'; readonly code: 'too-few-values'; readonly count: number; readonly least: 2 }
  /** Equal values tell of the scale's steps, not of scatter. */
  | { readonly kind: 'refused'; readonly code: 'no-scatter'; readonly count: number }
  /** So wide a scatter of so few values that normal theory promises nothing above zero. */
  | {
      readonly kind: 'refused';
      readonly code: 'nothing-above-zero';
      readonly value: number;
      readonly factor: Derived;
    };

/**
 * Value that a share of all like parts holds, from tests of a few.
 *
 *     normal: x_k = m − k·s        lognormal: x_k = exp(m_y − k·s_y)
 *
 * k is the tolerance factor for a promise with confidence, the prediction factor for the next value alone. Holds for
 * parts made, set and tested like those of the sample.
 *
 * @param sample - values in one unit, at least one; all > 0 for lognormal
 * @param question - distribution, promise and a known deviation if there is one
 * @returns x_k in the unit of the sample with its factor, or a refusal: too-few-values for one value without a known
 *   deviation, no-scatter where all are equal, nothing-above-zero where the normal x_k is zero or less
 * @source iso-16269-6 tolerance factor
 * @source en-1990 prediction factor
 */
export function characteristicValue(sample: Sample, question: CharacteristicQuestion): CharacteristicValue {
  const { distribution, knownDeviation } = question;
  const isLog = distribution === 'lognormal';
  const own = momentsOf(isLog ? logarithmsOf(sample.values) : sample.values);
  const { count } = own;
  const s = knownDeviation ?? own.deviation;
  if (s === undefined) return { kind: 'refused', code: 'too-few-values', count, least: 2 };
  if (knownDeviation === undefined && s === 0) return { kind: 'refused', code: 'no-scatter', count };
  const factor = factorOf(count, question);
  const below = own.mean - factor.value * s;
  if (!isLog && below <= 0) return { kind: 'refused', code: 'nothing-above-zero', value: below, factor };
  const deviation = isLog
    ? knownDeviation === undefined
      ? entryFrom(logDeviationOf(sample, s))
      : entry('s_y', s, '-')
    : knownDeviation === undefined
      ? entryFrom(deviationOfSample(sample, s))
      : entry('s_x', s, sample.unit);
  const k = factor.symbol;
  const value: Derived = {
    symbol: 'x_k',
    value: isLog ? Math.exp(below) : below,
    unit: sample.unit,
    formula: isLog ? `exp(m_y − ${k} · s_y)` : `m_x − ${k} · s_x`,
    entries: [entryFrom(isLog ? logMeanOf(sample) : meanOfSample(sample)), entryFrom(factor), deviation],
    source: factor.source,
    standing: 'measured',
  };
  return { kind: 'value', value, factor };
}

function factorOf(count: number, { promise, knownDeviation }: CharacteristicQuestion): Derived {
  const deviation = knownDeviation === undefined ? 'from-sample' : 'known';
  return 'kind' in promise
    ? derivedPredictionFactor(count, promise.share, deviation)
    : derivedToleranceFactor(count, promise, deviation);
}
