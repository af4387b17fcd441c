/** Fewest sides that enclose a hole. */
const LEAST_SIDES = 3;
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
