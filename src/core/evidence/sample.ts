import { carefulMean } from '../numerics/orthogonal-fit.ts';
import { type CoreUnit, type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';

/** Results of like tests of one quantity. */
export interface Sample {
  /** At least one. */
  readonly values: readonly number[];
  readonly unit: CoreUnit;
  /** The way to each value, in their order; absent, for all or for one: it was read as it stands. */
  readonly from?: readonly (Derived | undefined)[];
}

/** Number, mean and standard deviation as plain numbers. */
export interface Moments {
  readonly count: number;
  readonly mean: number;
  /** Absent for one value: it says nothing about scatter. */
  readonly deviation?: number;
}

/**
 * Mean and standard deviation, with the rounding of a large mean taken out.
 *
 *     m = Σx/n        s = √(Σ(x − m)²/(n − 1)),   n ≥ 2
 *
 * @param values - x, at least one
 * @returns n, m and s in the unit of x
 * @source jcgm-100 4.2
 */
export function momentsOf(values: readonly number[]): Moments {
  const count = values.length;
  const mean = carefulMean(values);
  if (count < 2) return { count, mean };
  // Equal values scatter by nothing, not by what rounding leaves.
  const [first] = values;
  if (first !== undefined && values.every((value) => value === first))
    return { count, mean: first, deviation: 0 };
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { count, mean, deviation: Math.sqrt(squares / (count - 1)) };
}

/** Natural logarithms of values that are all above zero. */
export const logarithmsOf = (values: readonly number[]): readonly number[] =>
  values.map((value) => Math.log(value));

/** Values that a derivation lists; more are summed up in their number. */
const LISTED = 12;

/** The number of tests, as it stands in every formula of this folder. */
export const countEntry = (count: number): Entry => entry('n_t', count, '-');

/** The values of a sample one by one, if they are not too many, and their number. */
export const sampleEntries = (sample: Sample): readonly Entry[] => [
  ...(sample.values.length <= LISTED
    ? sample.values.map((_, place) => readingEntry(sample, place, `x_${place + 1}`))
    : []),
  countEntry(sample.values.length),
];

/** One value of a sample under the symbol that a formula has for it. */
export function readingEntry({ values, unit, from }: Sample, place: number, symbol: string): Entry {
  const way = from?.[place];
  return way === undefined ? entry(symbol, values[place] ?? 0, unit) : entryAs(symbol, entryFrom(way));
}

/** Degrees of freedom of the standard deviation of n values. */
export const freedomOf = (count: number): Derived => ({
  symbol: 'ν_n',
  value: count - 1,
  unit: '-',
  formula: 'n_t − 1',
  entries: [countEntry(count)],
  source: 'jcgm-100',
  standing: 'published',
});

/** A formula over listed values, or words for it where they are too many to list. */
export const overValues = ({ values }: Sample, formula: string, words: string): string =>
  values.length <= LISTED ? formula : words;

/** The mean of a sample with the way it was computed. */
export const meanOfSample = (sample: Sample): Derived => ({
  symbol: 'm_x',
  value: momentsOf(sample.values).mean,
  unit: sample.unit,
  formula: overValues(sample, 'Σx/n_t', 'mean of the values'),
  entries: sampleEntries(sample),
  source: 'your-tests',
  standing: 'measured',
});

/** The standard deviation of a sample with the way it was computed. */
export const deviationOfSample = (sample: Sample, deviation: number): Derived => ({
  symbol: 's_x',
  value: deviation,
  unit: sample.unit,
  formula: overValues(sample, '√(Σ(x − m_x)²/(n_t − 1))', 'standard deviation of the values'),
  entries: [...sampleEntries(sample), entryFrom(meanOfSample(sample))],
  source: 'your-tests',
  standing: 'measured',
});

/** The mean of the logarithms of a sample above zero. */
export const logMeanOf = (sample: Sample): Derived => ({
  symbol: 'm_y',
  value: momentsOf(logarithmsOf(sample.values)).mean,
  unit: '-',
  formula: overValues(sample, 'Σ(ln(x))/n_t', 'mean of the logarithms of the values'),
  entries: sampleEntries(sample),
  source: 'your-tests',
  standing: 'measured',
});

/** The standard deviation of the logarithms of a sample above zero. */
export const logDeviationOf = (sample: Sample, deviation: number): Derived => ({
  symbol: 's_y',
  value: deviation,
  unit: '-',
  formula: overValues(
    sample,
    '√(Σ(ln(x) − m_y)²/(n_t − 1))',
    'standard deviation of the logarithms of the values',
  ),
  entries: [...sampleEntries(sample), entryFrom(logMeanOf(sample))],
  source: 'your-tests',
  standing: 'measured',
});
