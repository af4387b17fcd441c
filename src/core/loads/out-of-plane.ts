import { centroidOf, type ScrewPosition } from './pattern.ts';
import { momentAlong, principalAxes } from './spread.ts';

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
 *     ti = P/n + Mu · ui/Σu² + Mv · vi/Σv²                      about the centroid; u, v principal axes
 *     ti = P/n + |Mx| · Liy/ΣLy² + |My| · Lix/ΣLx²              about the edges that stay down, along x and y
 *
 * Rigid part. About the centroid force and moments balance exactly, and some screws come out negative: there the part
 * presses. About the edges the arms are longer and the pulls smaller, which needs edges that really stay down.
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
  const moments = { x: load.aboutX, y: load.aboutY };
  const tilts =
    pivot.kind === 'edge' ? aboutEdges(positions, moments, pivot) : aboutCentroid(positions, moments);
  return positions.map((_, index) =>
    tilts.reduce((pull, tilt) => pull + (tilt[index] ?? 0), load.pull / positions.length),
  );
}

interface Moments {
  readonly x: number;
  readonly y: number;
}

const aboutCentroid = (
  positions: readonly ScrewPosition[],
  moments: Moments,
): readonly (readonly number[])[] =>
  principalAxes(positions)
    .filter(({ spread }) => spread > 0)
    .map((axis) => {
      const perPlace = momentAlong(axis, moments) / axis.spread;
      return axis.places.map((place) => perPlace * place);
    });

function aboutEdges(
  positions: readonly ScrewPosition[],
  moments: Moments,
  edge: Extract<Pivot, { kind: 'edge' }>,
): readonly (readonly number[])[] {
  const centre = centroidOf(positions);
  const xs = positions.map(({ x }) => x - centre.x);
  const ys = positions.map(({ y }) => y - centre.y);
  return [tiltedAbout(edge.y, ys, moments.x), tiltedAbout(edge.x, xs, -moments.y)];
}

/** Pulls from one moment about the edge on the far side; a positive one lifts the side of positive places. */
function tiltedAbout(edge: number, places: readonly number[], moment: number): readonly number[] {
  const side = Math.sign(moment);
  return edgeTensions(
    Math.abs(moment),
    places.map((place) => edge + side * place),
  );
}
