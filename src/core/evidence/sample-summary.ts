import { chiSquaredQuantileWay, shareBelowLowerEnd, shareBelowUpperEnd } from '../numerics/quantile-ways.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import {
  countEntry,
  deviationOfSample,
  freedomOf,
  logarithmsOf,
  logDeviationOf,
  logMeanOf,
  meanOfSample,
  momentsOf,
  type Sample,
  sampleEntries,
} from './sample.ts';
import { variationEnds } from './variation.ts';

/** A coefficient of variation with its confidence interval. */
export interface Variation {
  readonly value: Derived;
  /** Absent where all values are equal: then they tell of the scale's steps, not of scatter. */
  readonly low?: Derived;
  /** Absent also where so few values do not bound it. */
  readonly high?: Derived;
}

/** What a sample says by itself. */
export interface SampleSummary {
  readonly count: number;
  readonly mean: Derived;
  /** Absent for one value. */
  readonly deviation?: Derived;
  /** Absent for one value, and where a value is zero or less. */
  readonly variation?: Variation;
  readonly median: Derived;
  readonly least: Derived;
  readonly greatest: Derived;
}

/** The same of the logarithms. */
export interface LogSummary {
  readonly count: number;
  readonly geometricMean: Derived;
  readonly logMean: Derived;
  /** Absent for one value. */
  readonly logDeviation?: Derived;
}

/** Middle one, or the mean of the middle two. */
export function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  const upper = sorted[sorted.length >> 1] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[(sorted.length >> 1) - 1] ?? 0) + upper) / 2;
}

function placed(sample: Sample, symbol: 'x_med' | 'x_min' | 'x_max', value: number): Derived {
  const formula = {
    x_med: 'middle of the values',
    x_min: 'least of the values',
    x_max: 'greatest of the values',
  };
  return {
    symbol,
    value,
    unit: sample.unit,
    formula: formula[symbol],
    entries: sampleEntries(sample),
    source: 'your-tests',
    standing: 'measured',
  };
}

/**
 * What a sample says by itself: place, scatter and ends.
 *
 *     m = Σx/n        s = √(Σ(x − m)²/(n − 1))        V = s/m with its interval
 *
 * One value has no s and no V. The interval of V takes the values as normal.
 *
 * @param sample - values in one unit, at least one
 * @param confidence - of the interval of V, two-sided [-], 0 < confidence < 1
 * @returns each number with its derivation
 * @source jcgm-100 4.2
 * @source vangel-1996 interval of V
 */
export function sampleSummary(sample: Sample, confidence: number): SampleSummary {
  const { values } = sample;
  const { count, deviation: s } = momentsOf(values);
  const mean = meanOfSample(sample);
  const least = Math.min(...values);
  const summary = {
    count,
    mean,
    median: placed(sample, 'x_med', medianOf(values)),
    least: placed(sample, 'x_min', least),
    greatest: placed(sample, 'x_max', Math.max(...values)),
  };
  if (s === undefined) return summary;
  const deviation = deviationOfSample(sample, s);
  if (least <= 0) return { ...summary, deviation };
  return { ...summary, deviation, variation: variationOf({ mean, deviation, count, confidence }) };
}

function variationOf(of: {
  readonly mean: Derived;
  readonly deviation: Derived;
  readonly count: number;
  readonly confidence: number;
}): Variation {
  const { mean, deviation, count, confidence } = of;
  const value: Derived = {
    symbol: 'V_x',
    value: deviation.value / mean.value,
    unit: '-',
    formula: 's_x/m_x',
    entries: [entryFrom(deviation), entryFrom(mean)],
    source: 'your-tests',
    standing: 'measured',
  };
  if (deviation.value === 0) return { value };
  const ends = variationEnds(value.value, { count, confidence });
  const freedom = entryFrom(freedomOf(count));
  // The greater quantile belongs to the lower end.
  const shares = { V_low: shareBelowUpperEnd(confidence), V_high: shareBelowLowerEnd(confidence) };
  const end = (symbol: keyof typeof shares, at: number): Derived => ({
    symbol,
    value: at,
    unit: '-',
    formula: 'V_x/√(((u_χ + 2)/n_t − 1) · V_x² + u_χ/(n_t − 1))',
    entries: [
      entryFrom(value),
      entryFrom(chiSquaredQuantileWay('u_χ', { share: entryFrom(shares[symbol]), freedom })),
      countEntry(count),
    ],
    source: 'vangel-1996',
    standing: 'measured',
  });
  return {
    value,
    low: end('V_low', ends.low),
    ...(ends.high === undefined ? {} : { high: end('V_high', ends.high) }),
  };
}

/**
 * What the logarithms of a sample say: the lognormal counterpart of mean and scatter.
 *
 *     m_y = Σln x/n        s_y = √(Σ(ln x − m_y)²/(n − 1))        geometric mean exp(m_y)
 *
 * @param sample - values in one unit, all > 0, at least one
 * @returns each number with its derivation; one value has no s_y
 * @source jcgm-100 4.2, on logarithms
 */
export function logSummary(sample: Sample): LogSummary {
  const { count, deviation } = momentsOf(logarithmsOf(sample.values));
  const logMean = logMeanOf(sample);
  const geometricMean: Derived = {
    symbol: 'm_g',
    value: Math.exp(logMean.value),
    unit: sample.unit,
    formula: 'exp(m_y)',
    entries: [entryFrom(logMean)],
    source: 'your-tests',
    standing: 'measured',
  };
  const summary = { count, geometricMean, logMean };
  return deviation === undefined ? summary : { ...summary, logDeviation: logDeviationOf(sample, deviation) };
}
