import { shareBelowUpperEnd, studentQuantileWay } from '../numerics/quantile-ways.ts';
import { type CoreUnit, type Derived, type Entry, entryAs, entryFrom } from '../sources/derived.ts';
import {
  countEntry,
  deviationOfSample,
  logarithmsOf,
  logDeviationOf,
  logMeanOf,
  meanOfSample,
  momentsOf,
  type Sample,
} from './sample.ts';
import { type FiellerInterval, halfInterval, type WelchComparison } from './welch.ts';

/** What a group puts into a comparison. */
export interface ComparedGroup {
  readonly mean: Entry;
  readonly deviation: Entry;
  readonly count: Entry;
}

const MEASURED = { source: 'welch-1947', standing: 'measured' } as const;

/** What is called how in the formulas, of the first group and of the second. */
const SYMBOLS = {
  1: { mean: 'm_1', deviation: 's_x1', logMean: 'm_y1', logDeviation: 's_y1', count: 'n_t1' },
  2: { mean: 'm_2', deviation: 's_x2', logMean: 'm_y2', logDeviation: 's_y2', count: 'n_t2' },
} as const;

/** A group by its values, put in as the first or the second. */
export const groupOf = (sample: Sample, place: 1 | 2): ComparedGroup => ({
  mean: entryAs(SYMBOLS[place].mean, entryFrom(meanOfSample(sample))),
  deviation: entryAs(
    SYMBOLS[place].deviation,
    entryFrom(deviationOfSample(sample, momentsOf(sample.values).deviation ?? 0)),
  ),
  count: entryAs(SYMBOLS[place].count, countEntry(sample.values.length)),
});

/** A group by the logarithms of its values. */
export const logGroupOf = (sample: Sample, place: 1 | 2): ComparedGroup => ({
  mean: entryAs(SYMBOLS[place].logMean, entryFrom(logMeanOf(sample))),
  deviation: entryAs(
    SYMBOLS[place].logDeviation,
    entryFrom(logDeviationOf(sample, momentsOf(logarithmsOf(sample.values)).deviation ?? 0)),
  ),
  count: entryAs(SYMBOLS[place].count, countEntry(sample.values.length)),
});

const varianceText = ({ deviation, count }: ComparedGroup): string => `${deviation.symbol}²/${count.symbol}`;
const spreadEntries = (groups: readonly ComparedGroup[]): readonly Entry[] =>
  groups.flatMap(({ deviation, count }) => [deviation, count]);

/** Satterthwaite's degrees of freedom of a sum of two variances of means, as a formula. */
const degreesText = (one: string, other: string): string =>
  `(${one} + ${other})²/((${one})²/(n_t1 − 1) + (${other})²/(n_t2 − 1))`;

/**
 * Difference of two means, its standard deviation and its degrees of freedom; see welchComparison.
 *
 *     d = m1 − m2        u = √(s1²/n1 + s2²/n2)
 *     ν = (s1²/n1 + s2²/n2)²/((s1²/n1)²/(n1 − 1) + (s2²/n2)²/(n2 − 1))
 *
 * @param welch - the comparison
 * @param groups - mean m, standard deviation s, number n of both
 * @param unit - of the means
 * @returns d and u in the unit of the means, ν [-]
 * @source welch-1947 with Satterthwaite
 */
export function welchWays(
  welch: WelchComparison,
  groups: readonly [ComparedGroup, ComparedGroup],
  unit: CoreUnit,
): { readonly difference: Derived; readonly deviation: Derived; readonly degrees: Derived } {
  const [first, second] = groups;
  const [one, other] = [varianceText(first), varianceText(second)];
  return {
    difference: {
      ...MEASURED,
      symbol: 'd_W',
      value: welch.difference,
      unit,
      formula: `${first.mean.symbol} − ${second.mean.symbol}`,
      entries: [first.mean, second.mean],
    },
    deviation: {
      ...MEASURED,
      symbol: 'u_W',
      value: welch.deviation,
      unit,
      formula: `√(${one} + ${other})`,
      entries: spreadEntries(groups),
    },
    degrees: {
      ...MEASURED,
      symbol: 'ν_W',
      value: welch.degrees,
      unit: '-',
      formula: degreesText(one, other),
      entries: spreadEntries(groups),
    },
  };
}

/**
 * Half the confidence interval of a difference; see halfInterval.
 *
 *     h = t · u        t = t((1 + γ)/2, ν)
 *
 * @param symbol - what the half is called
 * @param welch - the comparison
 * @param asked - its ways, confidence γ [-]
 * @returns h in the unit of the difference [N, N·mm or -]
 * @source welch-1947
 */
export function halfWay(
  symbol: 'h_Δ' | 'h_y',
  welch: WelchComparison,
  asked: { readonly deviation: Derived; readonly degrees: Derived; readonly confidence: number },
): Derived {
  const { deviation, degrees, confidence } = asked;
  const share = entryFrom(shareBelowUpperEnd(confidence));
  const t = studentQuantileWay('t_q', { share, freedom: entryFrom(degrees) });
  return {
    ...MEASURED,
    symbol,
    value: halfInterval(welch, confidence),
    unit: deviation.unit,
    formula: 't_q · u_W',
    entries: [entryFrom(t), entryFrom(deviation)],
  };
}

/**
 * What Fieller's interval of a ratio of means is made of; see fiellerEnds.
 *
 *     g = t²·s2²/(n2·m2²)        h = t/m2·√((1 − g)·s1²/n1 + R²·s2²/n2)        t at the degrees of freedom of both
 *
 * @param interval - of the plain computation
 * @param groups - mean m, standard deviation s, number n of both
 * @param asked - ratio R [-], confidence γ [-]
 * @returns g and h [-]
 * @source fieller-1954
 */
export function fiellerWays(
  interval: FiellerInterval,
  groups: readonly [ComparedGroup, ComparedGroup],
  asked: { readonly ratio: Derived; readonly confidence: number },
): { readonly blur: Derived; readonly half: Derived } {
  const [first, second] = groups;
  const common = { unit: '-', source: 'fieller-1954', standing: 'measured' } as const;
  const ratio = entryFrom(asked.ratio);
  const scaled = `${ratio.symbol}² · ${varianceText(second)}`;
  const degrees: Derived = {
    ...common,
    symbol: 'ν_R',
    value: interval.degrees,
    formula: degreesText(varianceText(first), scaled),
    entries: [...spreadEntries(groups), ratio],
  };
  const share = entryFrom(shareBelowUpperEnd(asked.confidence));
  const t = entryFrom(studentQuantileWay('t_q', { share, freedom: entryFrom(degrees) }));
  const blur: Derived = {
    ...common,
    symbol: 'g_R',
    value: interval.blur,
    formula: 't_q² · s_x2²/(n_t2 · m_2²)',
    entries: [t, second.deviation, second.count, second.mean],
  };
  return {
    blur,
    half: {
      ...common,
      symbol: 'h_R',
      value: interval.half,
      formula: `t_q/m_2 · √((1 − g_R) · ${varianceText(first)} + ${scaled})`,
      entries: [t, second.mean, entryFrom(blur), ...spreadEntries(groups), ratio],
    },
  };
}
