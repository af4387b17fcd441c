import { centroidOf, type ScrewPosition } from './pattern.ts';

/** One principal axis of a pattern: a direction in the plane and how far the screws spread along it. */
export interface PrincipalAxis {
  /** Unit vector. */
  readonly direction: ScrewPosition;
  /** Places of the screws along it from their centroid, mm, in the order given. */
  readonly places: readonly number[];
  /** Σ s², mm²; 0 where the screws have no spread along it. */
  readonly spread: number;
}

/** Σ s² below which screws have no spread along an axis: binary dust, mm². */
const SPREAD_DUST = 1e-6;

/**
 * The two directions in which the screws of a pattern bear moments without disturbing each other.
 *
 *     tan 2φ = 2 · Σxy/(Σx² − Σy²)
 *
 * @param positions - screws [mm], at least one
 * @returns both axes, the one nearer to x first where the pattern is symmetric to x
 * @source elasticity principal axes
 * @example screws at (±3, ±3) mm on one diagonal have all their spread along it
 */
export function principalAxes(positions: readonly ScrewPosition[]): readonly PrincipalAxis[] {
  const centre = centroidOf(positions);
  const arms = positions.map(({ x, y }) => ({ x: x - centre.x, y: y - centre.y }));
  const sum = (of: (arm: ScrewPosition) => number) => arms.reduce((total, arm) => total + of(arm), 0);
  const product = sum(({ x, y }) => x * y);
  const difference = sum(({ x, y }) => x ** 2 - y ** 2);
  // A symmetric pattern keeps its own axes, whatever dust its products are.
  const angle = Math.abs(product) < SPREAD_DUST ? 0 : Math.atan2(2 * product, difference) / 2;
  const along = { x: Math.cos(angle), y: Math.sin(angle) };
  return [along, { x: -along.y, y: along.x }].map((direction) => {
    const places = arms.map(({ x, y }) => x * direction.x + y * direction.y);
    const spread = places.reduce((total, place) => total + place ** 2, 0);
    return { direction, places, spread: spread < SPREAD_DUST ? 0 : spread };
  });
}

/**
 * Moment that lifts the positive side of an axis.
 *
 *     Σ t·s = Mx · ey − My · ex
 *
 * @param axis - direction e
 * @param moments - Mx, My [N·mm]
 * @returns the part of the moments that this axis bears [N·mm]
 * @source elasticity statics
 */
export const momentAlong = (
  { direction }: Pick<PrincipalAxis, 'direction'>,
  moments: { readonly x: number; readonly y: number },
): number => moments.x * direction.y - moments.y * direction.x;
