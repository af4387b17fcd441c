import { BETWEEN_SETUPS, WITHIN_SETUP } from '../evidence/bond-prior.ts';
import type { LittleKnownRow } from '../host/little-known.ts';
import { normalQuantileWay, studentQuantileWay } from '../numerics/quantile-ways.ts';
import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { CHARACTERISTIC_SHARE, PRIOR_DEVIATION, RANGE_SHARE } from './bond.ts';
import { doubtOf } from './less-certain.ts';

const OWN = { unit: '-', source: 'own-model', standing: 'estimate' } as const;

/**
 * Quantile that the characteristic value is taken at.
 *
 * @param freedom - degrees of freedom ν [-], ≥ 1
 * @returns t [-]
 * @source nist-handbook critical values of Student's t
 */
export const characteristicQuantile = (freedom: Entry): Derived =>
  studentQuantileWay('t', { share: CHARACTERISTIC_SHARE, freedom });

/**
 * Scatter of the next joint of a set-up that nobody has tested.
 *
 *     s = √(sb² + sw²)        between set-ups and within one
 *
 * @returns s [-]
 * @source own-model prior scatter
 */
export const priorDeviation = (): Derived => ({
  symbol: 's',
  value: PRIOR_DEVIATION,
  formula: '√(s_b² + s_w²)',
  entries: [entry('s_b', BETWEEN_SETUPS, '-'), entry('s_w', WITHIN_SETUP, '-')],
  ...OWN,
});

/**
 * Scatter with the doubt about a strength on top of it; see lessCertain.
 *
 *     s = √(s0² + r²)        r = ln(high/low)/(2 · 1.645)
 *
 * @param without - scatter without the doubt s0 [-]
 * @param row - the little known strength [MPa]
 * @returns s [-]
 * @source own-model range of a little known strength
 */
export function widerDeviation(without: Entry, row: LittleKnownRow): Derived {
  const doubt = doubtOf(row);
  const spread = strengthSpread(row);
  const way: Derived = {
    symbol: 'r_σ',
    value: doubt,
    formula: `ln(${spread.formula})/(2 · z_r)`,
    entries: [...spread.entries, entryFrom(normalQuantileWay('z_r', RANGE_SHARE))],
    ...OWN,
  };
  return {
    symbol: 's',
    value: Math.hypot(without.value, doubt),
    formula: '√(s_0² + r_σ²)',
    entries: [entryAs('s_0', without), entryFrom(way)],
    ...OWN,
  };
}

/** High over low end of a little known strength, as a formula with what is put in; see strengthAt. */
function strengthSpread({ row, symbols }: LittleKnownRow): {
  readonly formula: string;
  readonly entries: readonly Entry[];
} {
  const { low, high } = row;
  if (low === undefined && high === undefined) return { formula: '1.3/0.7', entries: [] };
  const middle = entry(symbols.value, row.value, 'MPa');
  const least = low === undefined ? middle : entry(symbols.low, low, 'MPa');
  const most = high === undefined ? middle : entry(symbols.high, high, 'MPa');
  const from = low === undefined ? `(0.7 · ${symbols.value})` : symbols.low;
  const to = high === undefined ? `1.3 · ${symbols.value}` : symbols.high;
  return { formula: `${to}/${from}`, entries: [most, least] };
}
