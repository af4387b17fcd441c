import { normalQuantileWay } from '../numerics/quantile-ways.ts';
import {
  type Derived,
  type Entry,
  entry,
  entryAs,
  entryFrom,
  withWayChanged,
  withWays,
} from '../sources/derived.ts';
import { type Chance, chanceInterval } from './chance-result.ts';
import type { DrawnFrom } from './drawn-from.ts';
import { TOOL_SHARE } from './scatter.ts';

/** How the joints that were counted came about. */
export interface Draw {
  /** That the joints are drawn from; the same seed gives the same counts. */
  readonly seed: number;
  /** Setting of the tool [N·mm], with the way to it where it was not only tried. */
  readonly torque: Entry;
  readonly from: DrawnFrom;
}

const PER = 1000;
const OWN = { source: 'own-model', standing: 'estimate' } as const;

/** What joints were drawn from. */
function drawEntries(samples: number, { seed, torque, from }: Draw): readonly Entry[] {
  const ranges = [from.threadFriction, from.headFriction, from.slipFriction, from.preloadLeft];
  return [
    entry('n_j', samples, '-'),
    entry('s_j', seed, '-'),
    entryAs('T_j', torque),
    ...ranges.flatMap((range) => (range ? [entryFrom(range.low), entryFrom(range.high)] : [])),
    entryFrom(from.toolDeviation),
    entryFrom(from.expectedBore),
    entryFrom(from.boreDeviation),
    entryFrom(from.knurlDiameter),
    entryFrom(from.knurlDeviation),
  ];
}

/** The joints that something was true of, with what they were drawn from. */
const countedJoints = ({ count, samples }: Chance, draw: Draw): Derived => ({
  symbol: 'k_j',
  value: count,
  unit: '-',
  formula: 'counted among the joints drawn from the seed',
  entries: drawEntries(samples, draw),
  ...OWN,
});

/** How each number of a quantile of forces was counted. */
const COUNTED_FORCES: Readonly<Record<string, string>> = {
  i_q: 'steps of force, counted up to the one in which the share p_q is passed',
  k_q: 'joints drawn from the seed, counted below that step',
  h_q: 'joints drawn from the seed, counted in that step',
  F_top: 'force beyond all but the rarest of the joints drawn',
};

/**
 * A quantile of forces with what its joints were drawn from; see forceQuantile.
 *
 * @param quantile - of the forces of a sampling [N]
 * @param samples - joints drawn [-]
 * @param draw - seed, setting, ranges drawn from
 * @returns the same quantile [N], its counts leading to the draw
 * @source own-model counts of forces
 */
export function drawnQuantile(quantile: Derived, samples: number, draw: Draw): Derived {
  const drawn = drawEntries(samples, draw);
  const counted = (derived: Derived): Derived =>
    withWays(
      derived,
      Object.fromEntries(
        derived.entries.flatMap(({ symbol, value, unit }): [string, Derived][] => {
          const formula = COUNTED_FORCES[symbol];
          return formula === undefined
            ? []
            : [[symbol, { symbol, value, unit, formula, entries: drawn, ...OWN }]];
        }),
      ),
    );
  const { entries, ...rest } = counted(quantile);
  return {
    ...rest,
    entries: entries.map((one) => (one.symbol === 'w_q' ? withWayChanged(one, counted) : one)),
  };
}

const jointsOf = (chance: Chance, draw: Draw) => [
  entryFrom(countedJoints(chance, draw)),
  entry('n_j', chance.samples, '-'),
];

/**
 * How many of a thousand joints something is true of.
 *
 *     m = 1,000 · k/n
 *
 * @param chance - k of n
 * @param draw - seed, setting, ranges drawn from
 * @returns m [-], 0 … 1,000
 * @source own-model binomial counts
 */
export const countInThousand = (chance: Chance, draw: Draw): Derived => ({
  symbol: 'm_j',
  value: PER * chance.probability,
  unit: '-',
  formula: '1,000 · k_j/n_j',
  entries: jointsOf(chance, draw),
  ...OWN,
});

/**
 * Between which counts of a thousand the true one lies in 95 of 100 samplings: both ends of chanceInterval.
 *
 *     1,000 · (p + z²/(2n) ± z · √(p · (1 − p)/n + z²/(4n²)))/(1 + z²/n)
 *
 * @param chance - k of n
 * @param draw - seed, setting, ranges drawn from
 * @returns both ends [-], 0 … 1,000
 * @source own-model binomial counts
 */
export function endsInThousand(
  chance: Chance,
  draw: Draw,
): { readonly low: Derived; readonly high: Derived } {
  const share: Derived = {
    symbol: 'p_j',
    value: chance.probability,
    unit: '-',
    formula: 'k_j/n_j',
    entries: jointsOf(chance, draw),
    ...OWN,
  };
  const end = (symbol: string, value: number, sign: '−' | '+'): Derived => ({
    symbol,
    value: PER * value,
    unit: '-',
    formula: `1,000 · (p_j + z_j²/(2 · n_j) ${sign} z_j · √(p_j · (1 − p_j)/n_j + z_j²/(4 · n_j²)))/(1 + z_j²/n_j)`,
    entries: [
      entryFrom(share),
      entry('n_j', chance.samples, '-'),
      entryFrom(normalQuantileWay('z_j', TOOL_SHARE)),
    ],
    ...OWN,
  });
  const { low, high } = chanceInterval(chance);
  return { low: end('m_low', low, '−'), high: end('m_high', high, '+') };
}

/**
 * Among how many joints there is one that something is true of, or one that it is not true of.
 *
 *     N = n/k        N = n/(n − k)
 *
 * @param chance - k of n, 0 < k < n
 * @param draw - seed, setting, ranges drawn from
 * @param counts - that it happens, or that it does not
 * @returns N [-], ≥ 1
 * @source own-model binomial counts
 */
export const oneAmong = (chance: Chance, draw: Draw, counts: 'happens' | 'does-not'): Derived => ({
  symbol: 'N_j',
  value: chance.samples / (counts === 'happens' ? chance.count : chance.samples - chance.count),
  unit: '-',
  formula: counts === 'happens' ? 'n_j/k_j' : 'n_j/(n_j − k_j)',
  entries: jointsOf(chance, draw),
  ...OWN,
});
