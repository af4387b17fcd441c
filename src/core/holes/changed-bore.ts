import { type Derived, type Entry, entry, entryAs } from '../sources/derived.ts';

/**
 * Bore that comes out otherwise than expected.
 *
 *     D = D0 + Δ
 *
 * @param expected - bore to be expected D0 [mm], as it is put in
 * @param change - how much wider it comes out Δ [mm]
 * @returns D [mm]
 * @source own-model difference
 */
export const changedBore = (expected: Entry, change: number): Derived => ({
  symbol: 'D',
  value: expected.value + change,
  unit: 'mm',
  formula: 'D_0 + Δ_D',
  entries: [entryAs('D_0', expected), entry('Δ_D', change, 'mm')],
  source: 'own-model',
  standing: 'estimate',
});
