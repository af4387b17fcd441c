import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { Situation } from './situation.ts';

/**
 * Ring of the insert's end face round the hole before it.
 *
 *     A = π/4 · (Dk² − dh²)
 *
 * @param symbol - what the ring is called where it is used
 * @param situation - knurl Dk and clearance hole dh [mm]
 * @returns A [mm²], 0 when the hole is as wide as the insert
 * @source own-model annulus
 * @example knurl 6.86, hole 5.5 mm gives 13.2 mm²
 */
export function insertRing(
  symbol: string,
  { insert, clamped }: Pick<Situation, 'insert' | 'clamped'>,
): Derived {
  const knurl = insert.knurlDiameter.estimate;
  const hole = clamped.clearanceHole;
  return {
    symbol,
    value: Math.max(0, (Math.PI / 4) * (knurl.value ** 2 - hole ** 2)),
    unit: 'mm²',
    formula: 'max(0, π/4 · (D_k² − d_h²))',
    entries: [entryFrom(knurl), entry('d_h', hole, 'mm')],
    source: 'your-measurement',
    standing: 'measured',
  };
}
