import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';

/** Fewest sides that enclose a hole. */
export const LEAST_SIDES = 3;
/** Guards a whole number of sides against binary dust. */
const DUST = 1e-9;

/**
 * How much smaller than drawn a hole is that is exported as a polygon with its corners on the circle.
 *
 *     ΔD = D · (1 − cos(π/N))
 *
 * The largest pin that enters touches the middles of the sides. Beads that cut corners or shrink are not in it.
 *
 * @param hole - drawn diameter D [mm], > 0; number of sides N [-], a whole number ≥ 3
 * @returns ΔD [mm]
 * @source polygon-hole-articles inscribed circle
 * @example a hole of 5 mm with 16 sides loses 0.096 mm
 */
export const facetLossOf = (hole: { readonly diameter: number; readonly sides: number }): number =>
  // 1 − cos x as 2 · sin²(x/2): nothing cancels for many sides.
  hole.diameter * 2 * Math.sin(Math.PI / (2 * hole.sides)) ** 2;

/**
 * Fewest sides with which a polygon on the circle stays within a tolerance of it.
 *
 *     N = ⌈π/acos((r − t)/r)⌉, at least 3
 *
 * @param circle - radius r [mm], > 0; tolerance on the radius t [mm], 0 < t < r
 * @returns N [-], a whole number ≥ 3
 * @source polygon-hole-articles sides for a tolerance
 * @example r 2.5 mm within 0.005 mm needs 50 sides
 */
export const sidesForTolerance = (circle: {
  readonly radius: number;
  readonly tolerance: number;
}): number => {
  const half = Math.acos((circle.radius - circle.tolerance) / circle.radius);
  return Math.max(LEAST_SIDES, Math.ceil(Math.PI / half - DUST));
};

/** A hole as drawn; with facets a polygon of so many corners on its circle is what the slicer sees. */
export interface DrawnHole {
  readonly diameter: number;
  readonly facets?: number;
}

/**
 * Diameter that the slicer sees of a drawn hole: across the flats where a polygon is exported.
 *
 *     D_e = D · cos(π/N), or D for a true circle
 *
 * A polygon drawn round its circle (flats on it) is its own diameter: give no facets.
 *
 * @param hole - drawn diameter D [mm], > 0; corners N [-], a whole number ≥ 3, or none
 * @returns D_e [mm]
 * @source polygon-hole-articles inscribed circle
 * @example 4.50 mm with 12 corners is seen as 4.347 mm
 */
export const effectiveDrawnOf = ({ diameter, facets }: DrawnHole): number =>
  facets === undefined ? diameter : diameter - facetLossOf({ diameter, sides: facets });

/**
 * Diameter that the slicer sees of a hole that is exported as a polygon, with its derivation; see effectiveDrawnOf.
 *
 *     D_e = D_cf · cos(π/N)
 *
 * @param drawn - diameter of the circle through the corners [mm], > 0, as it is put in
 * @param facets - corners N [-], a whole number ≥ 3
 * @returns D_e [mm]
 * @source polygon-hole-articles inscribed circle
 */
export const acrossFlatsOf = (drawn: Entry, facets: number): Derived => ({
  symbol: 'D_e',
  value: effectiveDrawnOf({ diameter: drawn.value, facets }),
  unit: 'mm',
  formula: `${drawn.symbol} · cos(π/N)`,
  entries: [drawn, entry('N', facets, '-')],
  source: 'polygon-hole-articles',
  standing: 'published',
});

/**
 * Circle to draw so that its exported polygon has the wanted width across the flats.
 *
 *     D_N = D_CAD/cos(π/N), or D_CAD for a true circle
 *
 * For the joint's own export, after the printer's error. A curve of readings whose facets were given is free of them, so
 * nothing is counted twice; the curve of an unknown printer holds those of a usual fine export, some 0.01 mm.
 *
 * @param drawn - diameter to draw as a true circle D_CAD [mm], > 0
 * @param facets - corners N [-], a whole number ≥ 3; undefined for a true circle
 * @returns D_N [mm], unrounded; the drawn diameter itself for a true circle
 * @source polygon-hole-articles inscribed circle
 * @example 4.347 mm with 12 corners is drawn 4.50 mm
 */
export function drawnForFacets(drawn: Derived, facets: number | undefined): Derived {
  if (facets === undefined) return drawn;
  return {
    symbol: 'D_N',
    value: drawn.value / Math.cos(Math.PI / facets),
    unit: 'mm',
    formula: 'D_CAD/cos(π/N)',
    entries: [entryFrom(drawn), entry('N', facets, '-')],
    source: 'polygon-hole-articles',
    standing: drawn.standing,
  };
}
