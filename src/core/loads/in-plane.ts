import type { ScrewPosition } from './pattern.ts';

/** A screw with the area that carries its share; equal screws all have 1. */
export interface WeightedScrew extends ScrewPosition {
  readonly area: number;
}

/** A load in the plane of the joint: force [N] and moment about the group's own centroid [N·mm], counter-clockwise. */
export interface InPlaneLoad {
  readonly x: number;
  readonly y: number;
  readonly moment: number;
}

/** Centroid of the areas of a group, mm. */
export function areaCentroid(screws: readonly WeightedScrew[]): ScrewPosition {
  const total = screws.reduce((sum, { area }) => sum + area, 0);
  return {
    x: screws.reduce((sum, { x, area }) => sum + x * area, 0) / total,
    y: screws.reduce((sum, { y, area }) => sum + y * area, 0) / total,
  };
}

/** Second moment of a group about its centroid, Σ A·r², mm⁴ (mm² for equal screws of area 1). */
export function polarMoment(screws: readonly WeightedScrew[]): number {
  const centre = areaCentroid(screws);
  return screws.reduce((sum, { x, y, area }) => sum + area * ((x - centre.x) ** 2 + (y - centre.y) ** 2), 0);
}

/**
 * Shear on each screw of a group, elastic method.
 *
 *     F'  = V · A/ΣA                  along the load
 *     F'' = M · A · r/Σ(A·r²)         across the radius from the centroid
 *
 * Rigid parts on screws of equal stiffness per area; friction between the faces is not in it. The door refuses a
 * moment on screws that all lie in one point.
 *
 * @param screws - positions [mm] and areas [mm², or 1 for all], at least one
 * @param load - force V [N] and moment M about the centroid [N·mm]
 * @returns force on each screw, x and y [N], in the order given
 * @source shigley ch. 8, shear of bolt groups, Example 8-7
 * @source nasa-rp-1228 the same method
 * @example 16 kN and 6800 N·m on (±75, ±60) mm give 21.0 kN on the near screws
 */
export function inPlaneForces(
  screws: readonly WeightedScrew[],
  load: InPlaneLoad,
): readonly { readonly x: number; readonly y: number }[] {
  const total = screws.reduce((sum, { area }) => sum + area, 0);
  const centre = areaCentroid(screws);
  const moment = polarMoment(screws);
  const turn = moment === 0 ? 0 : load.moment / moment;
  return screws.map(({ x, y, area }) => ({
    x: area * (load.x / total - turn * (y - centre.y)),
    y: area * (load.y / total + turn * (x - centre.x)),
  }));
}
