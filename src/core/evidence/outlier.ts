import { studentQuantileWay } from '../numerics/quantile-ways.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import {
  countEntry,
  deviationOfSample,
  meanOfSample,
  momentsOf,
  readingEntry,
  type Sample,
} from './sample.ts';

export type ExtremeValue =
  | {
      readonly kind: 'named';
      /** Place in the sample of the value that is farthest from the mean. */
      readonly place: number;
      readonly statistic: Derived;
      readonly critical: Derived;
      /** Whether it is farther than scatter alone brings in one sample of many. It stays in the sample all the same. */
      readonly isExtreme: boolean;
    }
  | { readonly kind: 'refused'; readonly code: 'too-few-values'; readonly count: number; readonly least: 3 }
  | { readonly kind: 'refused'; readonly code: 'no-scatter'; readonly count: number };

/**
 * Critical value of Grubbs' two-sided test.
 *
 *     G = (n − 1)/√n · √(t²/(n − 2 + t²)),   t = t_(1 − α/(2n), n − 2)
 *
 * @param count - number of values n [-], ≥ 3
 * @param falseAlarm - chance of naming a value of a sound sample α [-], 0 < α < 1
 * @returns G [-], below (n − 1)/√n
 * @source grubbs-1969
 * @example 5 values, 0.05 give 1.715
 */
export function grubbsCritical(count: number, falseAlarm: number): number {
  const square = studentQuantile(1 - falseAlarm / (2 * count), count - 2) ** 2;
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt(square / (count - 2 + square));
}

/**
 * The value that is farthest from the mean, and whether it is too far for one sample: named, never dropped.
 *
 *     G = max|x − m|/s
 *
 * For values that scatter normally; give it logarithms for a lognormal sample. A second outlier can hide the first.
 * What becomes of a named value is for whoever looked at the broken part.
 *
 * @param sample - values in one unit
 * @param falseAlarm - chance of naming a value of a sound sample α [-], 0 < α < 1
 * @returns the value's place with G and its critical value; or a refusal: too-few-values below three, no-scatter
 *   where all are equal
 * @source grubbs-1969
 */
export function extremeValue(sample: Sample, falseAlarm: number): ExtremeValue {
  const { values } = sample;
  const { count, mean, deviation } = momentsOf(values);
  if (deviation === undefined || count < 3)
    return { kind: 'refused', code: 'too-few-values', count, least: 3 };
  if (deviation === 0) return { kind: 'refused', code: 'no-scatter', count };
  const distances = values.map((value) => Math.abs(value - mean));
  const place = distances.indexOf(Math.max(...distances));
  const common = { unit: '-', source: 'grubbs-1969' } as const;
  const statistic: Derived = {
    ...common,
    symbol: 'G_x',
    value: (distances[place] ?? 0) / deviation,
    formula: '|x_o − m_x|/s_x',
    entries: [
      readingEntry(sample, place, 'x_o'),
      entryFrom(meanOfSample(sample)),
      entryFrom(deviationOfSample(sample, deviation)),
    ],
    standing: 'measured',
  };
  const critical: Derived = {
    ...common,
    symbol: 'G_c',
    value: grubbsCritical(count, falseAlarm),
    formula: '(n_t − 1)/√(n_t) · √(t_c²/(n_t − 2 + t_c²))',
    entries: [countEntry(count), entryFrom(criticalStudent(count, falseAlarm))],
    standing: 'published',
  };
  return { kind: 'named', place, statistic, critical, isExtreme: statistic.value > critical.value };
}

/** Each of n values may lie too far on either side: the false alarm is shared among 2n. */
function criticalStudent(count: number, falseAlarm: number): Derived {
  const common = { unit: '-', source: 'grubbs-1969', standing: 'published' } as const;
  const n = countEntry(count);
  const share: Derived = {
    ...common,
    symbol: 'p_f',
    value: 1 - falseAlarm / (2 * count),
    formula: '1 − α_f/(2 · n_t)',
    entries: [entry('α_f', falseAlarm, '-'), n],
  };
  const freedom: Derived = { ...common, symbol: 'ν_c', value: count - 2, formula: 'n_t − 2', entries: [n] };
  return studentQuantileWay('t_c', { share: entryFrom(share), freedom: entryFrom(freedom) });
}
