import { type Derived, entry } from '../sources/derived.ts';

const FACING = { unit: 'mm', source: 'vdi-2230', standing: 'published' } as const;

/**
 * Outer diameter that bears of a head or washer on a spacer.
 *
 *     dw = min(db, Dtube)
 *
 * @param head - bearing diameter of head or washer db [mm]
 * @param spacer - outside diameter Dtube [mm]
 * @returns dw [mm]
 * @source vdi-2230 bearing area
 */
export const faceOnSpacer = (head: number, spacer: number): Derived => ({
  symbol: 'd_w',
  value: Math.min(head, spacer),
  formula: 'min(d_b, D_tube)',
  entries: [entry('d_b', head, 'mm'), entry('D_tube', spacer, 'mm')],
  ...FACING,
});

/**
 * Hole that faces the head: that of the washer, or of the part below where it is wider.
 *
 *     dh = max(dc, do)
 *
 * @param part - clearance hole dc [mm]
 * @param washer - its hole do [mm]
 * @returns dh [mm]
 * @source vdi-2230 dh is the hole that faces the head
 */
export const holeUnderWasher = (part: number, washer: number): Derived => ({
  symbol: 'd_h',
  value: Math.max(part, washer),
  formula: 'max(d_c, d_o)',
  entries: [entry('d_c', part, 'mm'), entry('d_o', washer, 'mm')],
  ...FACING,
});
