import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { type Chance, chanceInterval, SAMPLING_END } from './chance-result.ts';
import type { DrawnFrom } from './drawn-from.ts';

/** How the joints that were counted came about. */
export interface Draw {
  /** That the joints are drawn from; the same seed gives the same counts. */
  readonly seed: number;
  /** Setting of the tool, N·mm. */
  readonly torque: number;
  readonly from: DrawnFrom;
}

const PER = 1000;
const OWN = { source: 'own-model', standing: 'estimate' } as const;

/** The joints that something was true of, with what they were drawn from. */
function countedJoints({ count, samples }: Chance, { seed, torque, from }: Draw): Derived {
  const ranges = [from.threadFriction, from.headFriction, from.slipFriction, from.preloadLeft];
  return {
    symbol: 'k_j',
    value: count,
    unit: '-',
    formula: 'counted among the joints drawn from the seed',
    entries: [
      entry('n_j', samples, '-'),
      entry('s_j', seed, '-'),
      entry('T_j', torque, 'N·mm'),
      ...ranges.flatMap((range) => (range ? [entryFrom(range.low), entryFrom(range.high)] : [])),
      entryFrom(from.toolDeviation),
      entryFrom(from.expectedBore),
      entryFrom(from.boreDeviation),
      entryFrom(from.knurlDiameter),
      entryFrom(from.knurlDeviation),
    ],
    ...OWN,
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
    entries: [entryFrom(share), entry('n_j', chance.samples, '-'), entry('z_j', SAMPLING_END, '-')],
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
