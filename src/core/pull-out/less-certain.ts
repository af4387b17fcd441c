import { type LittleKnownRow, strengthAt, strengthSpread } from '../host/little-known.ts';
import type { Strength } from '../host/strengths.ts';
import { normalQuantileWay } from '../numerics/quantile-ways.ts';
import { type Derived, type Entry, entryAs, entryFrom, entryLater } from '../sources/derived.ts';
import { deviationOfRange, type LogScatter, RANGE_SHARE } from './bond.ts';

/**
 * Scatter of a capacity whose strengths are little known: their ranges come on top of it.
 *
 *     s = √(s0² + r²)        r = ln(high/low)/(2 · 1.645), the widest range of the strengths
 *
 * A range is taken to hold 9 of 10. Strengths of one material are doubtful together, so only the widest counts.
 *
 * @param scatter - scatter without the doubt s0 [-]
 * @param strengths - what the capacity is worked out with [MPa]; one that is known adds nothing
 * @returns the wider scatter
 * @source own-model range of a little known strength
 * @example 30 … 45 MPa turns 0.316 into 0.340
 */
export function lessCertain(scatter: LogScatter, ...strengths: readonly Strength[]): LogScatter {
  let doubt = 0;
  let widest: LittleKnownRow | undefined;
  for (const { littleKnown } of strengths) {
    if (littleKnown === undefined) continue;
    const own = doubtOf(littleKnown);
    if (own <= doubt) continue;
    doubt = own;
    widest = littleKnown;
  }
  if (widest === undefined) return scatter;
  const row = widest;
  const wider = Math.hypot(scatter.deviation.value, doubt);
  return { ...scatter, deviation: entryLater('s', wider, '-', () => widerWay(scatter.deviation, row)) };
}

const doubtOf = ({ row }: LittleKnownRow): number =>
  deviationOfRange({ low: strengthAt(row, 'low'), high: strengthAt(row, 'high') });

const OWN = { unit: '-', source: 'own-model', standing: 'estimate' } as const;

function widerWay(without: Entry, row: LittleKnownRow): Derived {
  const doubt = doubtWay(row);
  return {
    symbol: 's',
    value: Math.hypot(without.value, doubt.value),
    formula: '√(s_0² + r_σ²)',
    entries: [entryAs('s_0', without), entryFrom(doubt)],
    ...OWN,
  };
}

/** The doubt about a strength: what is left of it in the warmth cancels. */
function doubtWay(row: LittleKnownRow): Derived {
  const { formula, entries } = strengthSpread(row);
  return {
    symbol: 'r_σ',
    value: doubtOf(row),
    formula: `ln(${formula})/(2 · z_r)`,
    entries: [...entries, entryFrom(normalQuantileWay('z_r', RANGE_SHARE))],
    ...OWN,
  };
}
