import { type LittleKnownRow, strengthAt } from '../host/little-known.ts';
import type { Strength } from '../host/strengths.ts';
import { entryBy } from '../sources/derived.ts';
import { deviationOfRange, type LogScatter } from './bond.ts';

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
  return {
    ...scatter,
    deviation: entryBy('s', wider, '-', (steps) => steps.widerDeviation(scatter.deviation, row)),
  };
}

/**
 * Doubt about a little known strength: what is left of it in the warmth cancels.
 *
 *     r = ln(high/low)/(2 · 1.645)
 *
 * @param strength - its row [MPa]
 * @returns deviation of the logarithm r [-]
 * @source own-model range that holds 9 of 10
 */
export const doubtOf = ({ row }: LittleKnownRow): number =>
  deviationOfRange({ low: strengthAt(row, 'low'), high: strengthAt(row, 'high') });
