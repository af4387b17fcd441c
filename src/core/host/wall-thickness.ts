import { type Derived, entry } from '../sources/derived.ts';
import type { Host } from './host.ts';

/** Area that two touching round bead ends leave empty, over h², [-]. */
const VOID_BETWEEN_BEADS = 1 - Math.PI / 4;

/**
 * Distance from one wall line to the next where beads overlap.
 *
 *     s = w − h · (1 − π/4)
 *
 * @param bead - line width w [mm] and layer height h [mm], 0 < h ≤ w
 * @returns s [mm]
 * @source slicer-flow-note bead section: a rectangle with half-round ends
 * @example w 0.4, h 0.2 mm gives 0.357 mm
 */
export const lineSpacingOf = (bead: { readonly lineWidth: number; readonly layerHeight: number }): number =>
  bead.lineWidth - bead.layerHeight * VOID_BETWEEN_BEADS;

/**
 * Wall that the printed lines round a hole make, edge to edge.
 *
 *     t = w + (n − 1) · (w − h · (1 − π/4))      rounded beads
 *     t = n · w                                  plain beads
 *
 * Or the thickness as measured. Gaps between lines and over-extrusion are not in it.
 *
 * @param host - wall lines n, line width w [mm], layer height h [mm], 0 < h ≤ w; or a measured thickness [mm]
 * @returns t [mm]
 * @source slicer-flow-note bead section; other slicers lay plain beads
 * @example 3 lines of 0.42 mm in layers of 0.2 mm give 1.17 mm
 */
export function wallThickness(host: Pick<Host, 'wall' | 'layerHeight'>): Derived {
  const { wall, layerHeight: h } = host;
  if (wall.kind === 'measured') {
    return {
      symbol: 't',
      value: wall.thickness,
      unit: 'mm',
      formula: 't',
      entries: [entry('t', wall.thickness, 'mm')],
      source: 'your-measurement',
      standing: 'measured',
    };
  }
  const { count: n, lineWidth: w } = wall;
  const rounded = wall.convention === 'rounded-beads';
  return {
    symbol: 't',
    value: rounded ? w + (n - 1) * lineSpacingOf({ lineWidth: w, layerHeight: h }) : n * w,
    unit: 'mm',
    formula: rounded ? 'w + (n − 1) · (w − h · (1 − π/4))' : 'n · w',
    entries: [entry('w', w, 'mm'), entry('n', n, '-'), ...(rounded ? [entry('h', h, 'mm')] : [])],
    source: 'slicer-flow-note',
    standing: 'published',
  };
}
