import { lineSpacingOf } from '../host/wall-thickness.ts';
import { type Derived, entry } from '../sources/derived.ts';

/**
 * Distance from one wall line to the next where beads overlap, with its derivation; see lineSpacingOf.
 *
 *     s = w − h · (1 − π/4)
 *
 * @param lineWidth - w [mm]
 * @param layerHeight - h [mm], 0 < h ≤ w
 * @returns s [mm]
 * @source slicer-flow-note bead section
 */
export const lineSpacing = (lineWidth: number, layerHeight: number): Derived => ({
  symbol: 's',
  value: lineSpacingOf({ lineWidth, layerHeight }),
  unit: 'mm',
  formula: 'w − h · (1 − π/4)',
  entries: [entry('w', lineWidth, 'mm'), entry('h', layerHeight, 'mm')],
  source: 'slicer-flow-note',
  standing: 'published',
});
