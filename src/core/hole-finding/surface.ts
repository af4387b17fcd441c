/** A surface of triangles, counter-clockwise seen from outside. */
export interface Surface {
  /** x, y and z of each vertex, mm, finite. */
  readonly positions: Float64Array;
  /** Three vertices a triangle. */
  readonly triangles: Uint32Array;
}

/** A place, mm, or a direction of length 1. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y + a.z * b.z;

export const cross = (a: Point, b: Point): Point => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/** a + t · b. */
export const along = (a: Point, t: number, b: Point): Point => ({
  x: a.x + t * b.x,
  y: a.y + t * b.y,
  z: a.z + t * b.z,
});

/** The direction of a vector; undefined where it has none. */
export function directionOf(vector: Point): Point | undefined {
  const length = Math.hypot(vector.x, vector.y, vector.z);
  return length > 0 ? along({ x: 0, y: 0, z: 0 }, 1 / length, vector) : undefined;
}

/** Two directions across an axis: right-handed with it. */
export function across(axis: Point): { readonly u: Point; readonly v: Point } {
  const { x, y, z } = axis;
  // The base direction that is farthest from the axis.
  const least = Math.min(Math.abs(x), Math.abs(y), Math.abs(z));
  const base =
    Math.abs(x) === least
      ? { x: 1, y: 0, z: 0 }
      : Math.abs(y) === least
        ? { x: 0, y: 1, z: 0 }
        : { x: 0, y: 0, z: 1 };
  const u = directionOf(cross(axis, base)) ?? base;
  return { u, v: cross(axis, u) };
}

export function vertexAt({ positions }: Surface, vertex: number): Point {
  const at = 3 * vertex;
  return { x: positions[at] ?? 0, y: positions[at + 1] ?? 0, z: positions[at + 2] ?? 0 };
}

/** Area of a triangle, mm². */
export function areaOf(surface: Surface, face: number): number {
  const { triangles } = surface;
  const a = vertexAt(surface, triangles[3 * face] ?? 0);
  const b = vertexAt(surface, triangles[3 * face + 1] ?? 0);
  const c = vertexAt(surface, triangles[3 * face + 2] ?? 0);
  const normal = cross(along(b, -1, a), along(c, -1, a));
  return Math.hypot(normal.x, normal.y, normal.z) / 2;
}

/** Largest side of the box round a surface, mm; 0 for none. */
export function extentOf({ positions }: Surface): number {
  let largest = 0;
  for (let side = 0; side < 3; side += 1) {
    let least = Infinity;
    let most = -Infinity;
    for (let at = side; at < positions.length; at += 3) {
      const value = positions[at] ?? 0;
      if (value < least) least = value;
      if (value > most) most = value;
    }
    if (most - least > largest) largest = most - least;
  }
  return largest;
}
