import type { Mesh } from '../../../solids/mesh.ts';

/** Where a solid is looked at from: turned about its upright axis, then tilted towards the eye; rad. */
export interface View {
  readonly turn: number;
  readonly tilt: number;
}

/** A face in the picture: corners across, down and towards the eye, and how much light falls on it, 0 to 1. */
export interface Facet {
  readonly corners: readonly (readonly [x: number, y: number, near: number])[];
  readonly light: number;
}

export interface Picture {
  readonly facets: readonly Facet[];
  /** Half the side of the square that holds the solid from every side. */
  readonly reach: number;
}

/** Where the light comes from, as seen: over the left shoulder. */
const LIGHT = [-0.36, 0.48, 0.8] as const;

/** The solid as seen without perspective; what faces away is left out. */
export function picture({ positions, triangles }: Mesh, { turn, tilt }: View): Picture {
  const { middle, reach } = boxOf(positions);
  const [sinTurn, cosTurn, sinTilt, cosTilt] = [
    Math.sin(turn),
    Math.cos(turn),
    Math.sin(tilt),
    Math.cos(tilt),
  ];
  const count = positions.length / 3;
  const seen = new Float64Array(positions.length);
  for (let at = 0; at < count; at += 1) {
    const x = (positions[3 * at] ?? 0) - middle[0];
    const y = (positions[3 * at + 1] ?? 0) - middle[1];
    const z = (positions[3 * at + 2] ?? 0) - middle[2];
    const across = x * cosTurn - y * sinTurn;
    const away = x * sinTurn + y * cosTurn;
    seen[3 * at] = across;
    seen[3 * at + 1] = z * cosTilt + away * sinTilt;
    // Towards the eye.
    seen[3 * at + 2] = z * sinTilt - away * cosTilt;
  }
  const facets: Facet[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const facet = facetOf(seen, triangles, at);
    if (facet) facets.push(facet);
  }
  return { facets, reach };
}

function facetOf(seen: Float64Array, triangles: Uint32Array, at: number): Facet | undefined {
  const corner = (place: number, axis: number) => seen[3 * (triangles[at + place] ?? 0) + axis] ?? 0;
  const side = (place: number, axis: number) => corner(place, axis) - corner(0, axis);
  const normal = [
    side(1, 1) * side(2, 2) - side(1, 2) * side(2, 1),
    side(1, 2) * side(2, 0) - side(1, 0) * side(2, 2),
    side(1, 0) * side(2, 1) - side(1, 1) * side(2, 0),
  ] as const;
  if (normal[2] <= 0) return undefined;
  const length = Math.hypot(...normal);
  const along = (normal[0] * LIGHT[0] + normal[1] * LIGHT[1] + normal[2] * LIGHT[2]) / length;
  return {
    corners: [0, 1, 2].map((place) => [corner(place, 0), -corner(place, 1), corner(place, 2)] as const),
    light: Math.max(0, along),
  };
}

function boxOf(positions: Float64Array) {
  const least = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const greatest = least.map((value) => -value);
  for (const [index, value] of positions.entries()) {
    least[index % 3] = Math.min(least[index % 3] ?? value, value);
    greatest[index % 3] = Math.max(greatest[index % 3] ?? value, value);
  }
  const middleOf = (axis: number) => ((least[axis] ?? 0) + (greatest[axis] ?? 0)) / 2;
  const sizeOf = (axis: number) => (greatest[axis] ?? 0) - (least[axis] ?? 0);
  return {
    middle: [middleOf(0), middleOf(1), middleOf(2)] as const,
    reach: Math.hypot(sizeOf(0), sizeOf(1), sizeOf(2)) / 2,
  };
}
