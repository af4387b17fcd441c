import { centroidOf, type ScrewPosition } from './pattern.ts';

/** What tilts or lifts the clamped part: pull along the screws [N] and moments about the centroid's axes [N·mm]. */
export interface OutOfPlaneLoad {
  readonly pull: number;
  /** Positive lifts the side of positive y. */
  readonly aboutX: number;
  /** Positive lifts the side of negative x. */
  readonly aboutY: number;
}

/** Where the clamped part turns when a moment lifts it: about the edge that stays down, or about the screws' centroid. */
export type Pivot =
  | { readonly kind: 'centroid' }
  /** Distances from the centroid to the edges of the clamped part, mm, beyond every screw. */
  | { readonly kind: 'edge'; readonly x: number; readonly y: number };

/**
 * Tension on one screw of a row when a part turns about its compressed edge.
 *
 *     Wi = M · Li/Σ L²
 *
 * @param moment - M [N·mm], ≥ 0
 * @param arms - distances Li of every screw from the edge [mm], ≥ 0, not all 0
 * @returns tension on each screw [N]
 * @source nasa-rp-1228 rotation about the compression edge
 * @example 4800 N·m on two screws each at 50 and 375 mm give 6.29 kN on an outer one
 */
export function edgeTensions(moment: number, arms: readonly number[]): readonly number[] {
  const squares = arms.reduce((sum, arm) => sum + arm ** 2, 0);
  return arms.map((arm) => (moment * arm) / squares);
}

/**
 * Pull on each screw of a group from a force along the screws and moments that tilt the part.
 *
 *     ti = P/n + Mx · yi/Σy² − My · xi/Σx²                      about the centroid
 *     ti = P/n + |Mx| · Liy/ΣLy² + |My| · Lix/ΣLx²              about the edge that stays down
 *
 * Rigid part; the axes of x and y are taken as principal, exact for symmetric patterns. About the centroid some screws
 * come out negative: there the part presses. About the edge the arms are longer and the pulls smaller, which needs an
 * edge that really stays down.
 *
 * @param positions - screws [mm], at least one
 * @param load - pull P [N], moments Mx and My [N·mm]
 * @param pivot - centroid, or distances to the edges [mm]
 * @returns pull on each screw [N], in the order given; a moment that no screw has an arm for adds nothing
 * @source nasa-rp-1228 rotation about the compression edge
 * @source shigley ch. 8, eccentric loading
 */
export function outOfPlanePulls(
  positions: readonly ScrewPosition[],
  load: OutOfPlaneLoad,
  pivot: Pivot,
): readonly number[] {
  const centre = centroidOf(positions);
  const xs = positions.map(({ x }) => x - centre.x);
  const ys = positions.map(({ y }) => y - centre.y);
  const fromX = tilted(ys, load.aboutX, pivot.kind === 'edge' ? pivot.y : undefined);
  const fromY = tilted(xs, -load.aboutY, pivot.kind === 'edge' ? pivot.x : undefined);
  return positions.map(
    (_, index) => load.pull / positions.length + (fromX[index] ?? 0) + (fromY[index] ?? 0),
  );
}

/** Pulls from one moment; positive lifts the side of positive places. */
function tilted(places: readonly number[], moment: number, edge: number | undefined): readonly number[] {
  if (moment === 0) return places.map(() => 0);
  if (edge !== undefined) {
    const side = Math.sign(moment);
    return edgeTensions(
      Math.abs(moment),
      places.map((place) => Math.max(0, edge + side * place)),
    );
  }
  const squares = places.reduce((sum, place) => sum + place ** 2, 0);
  return places.map((place) => (squares === 0 ? 0 : (moment * place) / squares));
}
