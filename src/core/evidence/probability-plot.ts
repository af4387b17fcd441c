import { normalQuantile } from '../numerics/normal-distribution.ts';
import { carefulMean } from '../numerics/orthogonal-fit.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { countEntry, type Sample, sampleEntries } from './sample.ts';

/** One value on a probability plot. */
export interface PlotPoint {
  readonly value: number;
  /** Share of like parts expected at or below it, [-]. */
  readonly position: number;
  /** The same in standard deviations from the median, [-]. */
  readonly score: number;
}

export type ProbabilityPlot =
  | {
      readonly kind: 'plotted';
      /** From the least value up. */
      readonly points: readonly PlotPoint[];
      /** How straight the points lie, 0 … 1, on the values. */
      readonly normal: Derived;
      /** The same on their logarithms; absent where a value is zero or less. */
      readonly lognormal?: Derived;
    }
  | { readonly kind: 'refused'; readonly code: 'too-few-values'; readonly count: number; readonly least: 3 }
  | { readonly kind: 'refused'; readonly code: 'no-scatter'; readonly count: number };

/**
 * Plotting position of Blom: where the i-th value of n stands among all like parts.
 *
 *     (i − 3/8)/(n + 1/4)
 *
 * @param rank - i from the least up [-], 1 … n
 * @param count - number of values n [-], ≥ 1
 * @returns position [-], 0 … 1
 * @source blom-1958
 * @example the 1st of 5 stands at 0.119
 */
export const plottingPosition = (rank: number, count: number): number => (rank - 3 / 8) / (count + 1 / 4);

/**
 * Where the i-th value of n stands, as it is computed.
 *
 *     p_i = (i − 3/8)/(n + 1/4)        z_i normal quantile of p_i
 *
 * @param rank - i from the least up [-], 1 … n
 * @param count - number of values n [-], ≥ 1
 * @returns position and score [-]
 * @source blom-1958
 */
export function plottedAt(rank: number, count: number): Readonly<Record<'position' | 'score', Derived>> {
  const common = { source: 'blom-1958', standing: 'published' } as const;
  const position: Derived = {
    ...common,
    symbol: 'p_i',
    value: plottingPosition(rank, count),
    unit: '-',
    formula: '(i_r − 3/8)/(n_t + 1/4)',
    entries: [entry('i_r', rank, '-'), countEntry(count)],
  };
  const score: Derived = {
    ...common,
    symbol: 'z_i',
    value: normalQuantile(position.value),
    unit: '-',
    formula: 'z(p_i)',
    entries: [entryFrom(position)],
  };
  return { position, score };
}

/** Correlation coefficient of two lists of one length that both have spread. */
function correlationOf(one: readonly number[], other: readonly number[]): number {
  const centredOf = (values: readonly number[]): readonly number[] => {
    const mean = carefulMean(values);
    return values.map((value) => value - mean);
  };
  const x = centredOf(one);
  const y = centredOf(other);
  const product = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, place) => sum + value * (b[place] ?? 0), 0);
  return product(x, y) / Math.sqrt(product(x, x) * product(y, y));
}

/**
 * Points of a probability plot, and how straight they lie for a normal and a lognormal scatter.
 *
 *     points (x_(i), z(p_i)) and (ln x_(i), z(p_i))        p_i = (i − 3/8)/(n + 1/4)        r their correlation
 *
 * The larger r fits better; that is all it says. With less than some twenty values both are usually high.
 *
 * @param sample - values in one unit
 * @returns points with positions and both coefficients; or a refusal: too-few-values below three, no-scatter where all
 *   are equal
 * @source nist-handbook normal probability plot
 * @source blom-1958 positions
 */
export function probabilityPlot(sample: Sample): ProbabilityPlot {
  const count = sample.values.length;
  if (count < 3) return { kind: 'refused', code: 'too-few-values', count, least: 3 };
  const sorted = sample.values.toSorted((one, other) => one - other);
  const least = sorted[0] ?? 0;
  const isFlat = (values: readonly number[]): boolean => values[0] === values[count - 1];
  if (isFlat(sorted)) return { kind: 'refused', code: 'no-scatter', count };
  const points = sorted.map((value, place) => {
    const position = plottingPosition(place + 1, count);
    return { value, position, score: normalQuantile(position) };
  });
  const scores = points.map(({ score }) => score);
  const straightness = (symbol: 'r_N' | 'r_L', values: readonly number[]): Derived => ({
    symbol,
    value: correlationOf(values, scores),
    unit: '-',
    formula: symbol === 'r_N' ? 'correlation of values and scores' : 'correlation of logarithms and scores',
    entries: sampleEntries(sample),
    source: 'nist-handbook',
    standing: 'measured',
  });
  const plotted = { kind: 'plotted', points, normal: straightness('r_N', sorted) } as const;
  if (least <= 0) return plotted;
  const logarithms = sorted.map((value) => Math.log(value));
  return isFlat(logarithms) ? plotted : { ...plotted, lognormal: straightness('r_L', logarithms) };
}
