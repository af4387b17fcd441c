import { type CoreUnit, type Derived, entryFrom } from '../sources/derived.ts';
import type { SourceId } from '../sources/sources.ts';
import { logarithmsOf, momentsOf, type Sample } from './sample.ts';
import { fiellerEnds, type GroupMean, type WelchComparison, welchComparison } from './welch.ts';
import { fiellerWays, groupOf, halfWay, logGroupOf, welchWays } from './welch-ways.ts';

/** An estimate between the ends of its confidence interval. */
export interface Estimated {
  readonly value: Derived;
  readonly low: Derived;
  readonly high: Derived;
}

/** One comparison: how far apart, and whether scatter alone would do that. */
export interface Apart {
  readonly estimate: Estimated;
  readonly t: Derived;
  readonly degrees: Derived;
  /** Two-sided chance p. */
  readonly chance: Derived;
}

export type GroupComparison =
  | {
      readonly kind: 'compared';
      readonly difference: Apart;
      /** Of geometric means, on logarithms; with a p of its own. */
      readonly ratio: Apart;
      /** Of means, by Fieller; absent where the mean below is not told apart from zero. */
      readonly ratioOfMeans?: Estimated;
    }
  | {
      readonly kind: 'refused';
      readonly code: 'too-few-values';
      readonly group: 'first' | 'second';
      readonly count: number;
      readonly least: 2;
    }
  /** All values of both groups equal their mean. */
  | { readonly kind: 'refused'; readonly code: 'no-scatter' };

/** Both groups and how sure the intervals are to be. */
export interface GroupsToCompare {
  readonly first: Sample;
  /** In the unit of the first; the one below the line of the ratios. */
  readonly second: Sample;
  /** Two-sided, [-], 0 < confidence < 1. */
  readonly confidence: number;
}

const groupMean = (values: readonly number[]): GroupMean => {
  const { count, mean, deviation = 0 } = momentsOf(values);
  return { mean, variance: deviation ** 2 / count, degrees: count - 1 };
};

/**
 * Two groups of tests beside each other: is one stronger, and by how much?
 *
 *     t = (m1 − m2)/√(s1²/n1 + s2²/n2)        ν by Welch and Satterthwaite        p = 2·F(−|t|)
 *     ratio of geometric means: the same on logarithms        ratio of means: Fieller's interval
 *
 * The groups need not scatter alike. Takes the values, or their logarithms, as about normal, and each test as one of
 * its own: five readings of one coupon are one test.
 *
 * @param groups - two samples of one unit, all values > 0; confidence of the intervals [-]
 * @returns difference and ratios with their ends, or a refusal: too-few-values below two in a group, no-scatter where
 *   neither group scatters
 * @source welch-1947
 * @source fieller-1954 ratio of means
 */
export function compareGroups(groups: GroupsToCompare): GroupComparison {
  const { first, second } = groups;
  for (const [group, { values }] of [['first', first] as const, ['second', second] as const]) {
    if (values.length < 2) {
      return { kind: 'refused', code: 'too-few-values', group, count: values.length, least: 2 };
    }
  }
  const one = groupMean(first.values);
  const other = groupMean(second.values);
  const logOne = groupMean(logarithmsOf(first.values));
  const logOther = groupMean(logarithmsOf(second.values));
  // The logarithms of values that differ in their last bit may be equal.
  const scatters = one.variance + other.variance > 0 && logOne.variance + logOther.variance > 0;
  if (!scatters) return { kind: 'refused', code: 'no-scatter' };
  const ratioOfMeans = ratioOfMeansOf(groups, one, other);
  return {
    kind: 'compared',
    difference: differenceOf(groups, welchComparison(one, other)),
    ratio: ratioOf(groups, welchComparison(logOne, logOther)),
    ...(ratioOfMeans === undefined ? {} : { ratioOfMeans }),
  };
}

const measured = (
  of: { readonly symbol: string; readonly value: number; readonly unit: CoreUnit; readonly formula: string },
  entries: Derived['entries'],
  source: SourceId = 'welch-1947',
): Derived => ({ ...of, entries, source, standing: 'measured' });

function testOf(welch: WelchComparison, ways: ReturnType<typeof welchWays>): Omit<Apart, 'estimate'> {
  const { difference, deviation, degrees } = ways;
  const t = measured({ symbol: 't_W', value: welch.t, unit: '-', formula: 'd_W/u_W' }, [
    entryFrom(difference),
    entryFrom(deviation),
  ]);
  const both = 'chance of so large a t_W at ν_W without a difference';
  const chance = measured({ symbol: 'p_W', value: welch.chance, unit: '-', formula: both }, [
    entryFrom(t),
    entryFrom(degrees),
  ]);
  return { t, degrees, chance };
}

function differenceOf({ first, second, confidence }: GroupsToCompare, welch: WelchComparison): Apart {
  const { unit } = first;
  const groups = [groupOf(first, 1), groupOf(second, 2)] as const;
  const ways = welchWays(welch, groups, unit);
  const half = halfWay('h_Δ', welch, { ...ways, confidence });
  const value = measured({ symbol: 'Δ_m', value: welch.difference, unit, formula: 'm_1 − m_2' }, [
    groups[0].mean,
    groups[1].mean,
  ]);
  const entries = [entryFrom(value), entryFrom(half)];
  const end = (symbol: 'Δ_low' | 'Δ_high', sign: '−' | '+') =>
    measured(
      {
        symbol,
        value: sign === '+' ? value.value + half.value : value.value - half.value,
        unit,
        formula: `Δ_m ${sign} h_Δ`,
      },
      entries,
    );
  return {
    estimate: { value, low: end('Δ_low', '−'), high: end('Δ_high', '+') },
    ...testOf(welch, ways),
  };
}

function ratioOf({ first, second, confidence }: GroupsToCompare, welch: WelchComparison): Apart {
  const groups = [logGroupOf(first, 1), logGroupOf(second, 2)] as const;
  const ways = welchWays(welch, groups, '-');
  const half = halfWay('h_y', welch, { ...ways, confidence });
  const value = measured(
    { symbol: 'r_g', value: Math.exp(welch.difference), unit: '-', formula: 'exp(m_y1 − m_y2)' },
    [groups[0].mean, groups[1].mean],
  );
  const entries = [entryFrom(value), entryFrom(half)];
  const end = (symbol: 'r_low' | 'r_high', sign: 1 | -1) =>
    measured(
      {
        symbol,
        value: value.value * Math.exp(sign * half.value),
        unit: '-',
        formula: sign === 1 ? 'r_g · exp(h_y)' : 'r_g/exp(h_y)',
      },
      entries,
    );
  return { estimate: { value, low: end('r_low', -1), high: end('r_high', 1) }, ...testOf(welch, ways) };
}

function ratioOfMeansOf(
  { first, second, confidence }: GroupsToCompare,
  one: GroupMean,
  other: GroupMean,
): Estimated | undefined {
  const interval = fiellerEnds(one, other, confidence);
  if (interval === undefined) return undefined;
  const groups = [groupOf(first, 1), groupOf(second, 2)] as const;
  const value = measured({ symbol: 'r_m', value: one.mean / other.mean, unit: '-', formula: 'm_1/m_2' }, [
    groups[0].mean,
    groups[1].mean,
  ]);
  const { blur, half } = fiellerWays(interval, groups, { ratio: value, confidence });
  const end = (symbol: 'r_mlow' | 'r_mhigh', at: number, sign: '−' | '+') =>
    measured(
      { symbol, value: at, unit: '-', formula: `(r_m ${sign} h_R)/(1 − g_R)` },
      [entryFrom(value), entryFrom(half), entryFrom(blur)],
      'fieller-1954',
    );
  return {
    value,
    low: end('r_mlow', interval.low, '−'),
    high: end('r_mhigh', interval.high, '+'),
  };
}
