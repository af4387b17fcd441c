import { WITHIN_SETUP } from '../evidence/bond-prior.ts';
import { compareGroups, type GroupComparison } from '../evidence/compare-groups.ts';
import { countEntry, logarithmsOf, logDeviationOf, momentsOf, type Sample } from '../evidence/sample.ts';
import { type TestsNeeded, testsNeeded } from '../evidence/sample-size.ts';
import { type Derived, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { type Difference, differencesOf, type Respect } from './made-alike.ts';
import { CONFIDENCE, FALSE_ALARM } from './sample-report.ts';
import type { ComparedBy, Way } from './ways.ts';

/** Ratios of two ways that may be worth seeing, and the chance with which they shall be seen, [-] (estimate). */
export const RATIOS_TO_SEE = [1.1, 1.2] as const;
export const POWER = 0.8;

/** Scatter of a way where no coupon tells it: that of any set-up. */
export const ASSUMED_SCATTER: Derived = {
  symbol: 's_y',
  value: WITHIN_SETUP,
  unit: '-',
  formula: 's_0',
  entries: [entry('s_0', WITHIN_SETUP, '-')],
  source: 'own-model',
  standing: 'estimate',
};

/** One way over another. */
export interface WayComparison {
  readonly way: Way;
  /** The one below the line of the ratio. */
  readonly against: Way;
  readonly comparison: GroupComparison;
  /** Tests that each way needs, to see each ratio of RATIOS_TO_SEE. */
  readonly needed: readonly TestsNeeded[];
  /** Deviation of the logarithms that they are worked out with: of these coupons, or the one assumed of any set-up. */
  readonly scatter: 'of-both' | 'assumed';
  /** What else differs. */
  readonly differences: readonly Difference[];
}

/**
 * Ways of one set-up, each over one of them.
 *
 * The tests needed are worked out with the scatter that both ways share, as if it were known; with 0.10 where two coupons
 * of neither tell it.
 *
 * @param ways - at least one
 * @param against - place of the way below the line of the ratios
 * @param by - what is compared
 * @returns a comparison for each of the other ways
 * @source welch-1947
 */
export function compareWays(ways: readonly Way[], against: number, by: ComparedBy): readonly WayComparison[] {
  const second = ways[against];
  if (second === undefined) return [];
  return ways
    .filter((way) => way !== second)
    .map((way) => {
      const shared = sharedDeviation(way.sample, second.sample);
      const deviationFrom = shared ?? ASSUMED_SCATTER;
      const deviation = deviationFrom.value;
      return {
        way,
        against: second,
        comparison: compareGroups({ first: way.sample, second: second.sample, confidence: CONFIDENCE }),
        needed: RATIOS_TO_SEE.map((ratio) =>
          testsNeeded({ ratio, deviation, deviationFrom, falseAlarm: FALSE_ALARM }, POWER),
        ),
        scatter: shared === undefined ? 'assumed' : 'of-both',
        differences: differencesOf(way.tests, second.tests, NOT_ELSE[by]),
      };
    });
}

/** What is no other difference: what is compared; an iron and its time belong to one way of setting alone. */
const NOT_ELSE: Readonly<Record<ComparedBy, readonly Respect[]>> = {
  batch: ['batch'],
  setting: ['setting', 'iron-temperature', 'setting-time'],
  bore: ['bore'],
  'iron-temperature': ['iron-temperature'],
  'setting-time': ['setting-time'],
};

/**
 * Deviation of the logarithms within two groups; undefined where neither group scatters.
 *
 *     s = √(((n1 − 1)·s1² + (n2 − 1)·s2²)/(n1 − 1 + n2 − 1))        a group of one value has no part in it
 */
function sharedDeviation(first: Sample, second: Sample): Derived | undefined {
  const moments = [first, second].map(({ values }) => momentsOf(logarithmsOf(values)));
  const squares = moments.reduce((sum, { count, deviation = 0 }) => sum + (count - 1) * deviation ** 2, 0);
  if (squares === 0) return undefined;
  const told = [first, second].flatMap((sample, place) => {
    const { count, deviation } = moments[place] ?? { count: 0 };
    return deviation === undefined
      ? []
      : [
          {
            n: entryAs(`n_t${place + 1}`, countEntry(count)),
            s: entryAs(`s_y${place + 1}`, entryFrom(logDeviationOf(sample, deviation))),
          },
        ];
  });
  const above = told.map(({ n, s }) => `(${n.symbol} − 1) · ${s.symbol}²`).join(' + ');
  const below = told.map(({ n }) => `${n.symbol} − 1`).join(' + ');
  return {
    symbol: 's_y',
    value: Math.sqrt(squares / moments.reduce((sum, { count }) => sum + count - 1, 0)),
    unit: '-',
    formula: `√((${above})/(${below}))`,
    entries: told.flatMap(({ n, s }) => [n, s]),
    source: 'your-tests',
    standing: 'measured',
  };
}
