import type { Mesh } from '../../src/solids/mesh.ts';
import { cornersOf } from '../../src/solids/mesh-checks.ts';

type Place = readonly [number, number, number];
type Triangle = readonly [Place, Place, Place];

/** What counts as no more than touching, mm. */
const TOUCH = 1e-9;

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

const sidesOf = ([a, b, c]: Triangle): readonly Place[] => [minus(b, a), minus(c, b), minus(a, c)];
const uprightOf = ([a, b, c]: Triangle): Place => cross(minus(b, a), minus(c, a));

/** How deep two triangles stand in each other along an axis, mm; an axis without direction says nothing. */
function depthAlong(axis: Place, one: Triangle, other: Triangle): number {
  const size = Math.hypot(...axis);
  if (size < 1e-12) return Number.POSITIVE_INFINITY;
  const [a, b] = [one.map((corner) => dot(corner, axis)), other.map((corner) => dot(corner, axis))];
  // How far one must be moved to come free, and not the length in common: a triangle seen edge-on has none.
  return Math.min(Math.max(...a) - Math.min(...b), Math.max(...b) - Math.min(...a)) / size;
}

function inOnePlane(one: Triangle, other: Triangle): boolean {
  const upright = uprightOf(one);
  const size = Math.hypot(...upright);
  return other.every((corner) => Math.abs(dot(minus(corner, one[0]), upright)) / size <= TOUCH);
}

/**
 * True where two triangles have more in common than corners, edges or a touch: separating axes of two convex bodies;
 * in one plane those across their sides.
 */
export function cutsInto(one: Triangle, other: Triangle): boolean {
  const [sides, others] = [sidesOf(one), sidesOf(other)];
  const upright = uprightOf(one);
  const axes = inOnePlane(one, other)
    ? [...sides, ...others].map((side) => cross(upright, side))
    : [upright, uprightOf(other), ...sides.flatMap((side) => others.map((second) => cross(side, second)))];
  return axes.every((axis) => depthAlong(axis, one, other) > TOUCH);
}

interface Boxed {
  readonly triangle: Triangle;
  readonly least: Place;
  readonly most: Place;
}

function boxed(triangle: Triangle): Boxed {
  const along = (axis: 0 | 1 | 2) => triangle.map((corner) => corner[axis]);
  const axes = [along(0), along(1), along(2)] as const;
  return {
    triangle,
    least: [Math.min(...axes[0]), Math.min(...axes[1]), Math.min(...axes[2])],
    most: [Math.max(...axes[0]), Math.max(...axes[1]), Math.max(...axes[2])],
  };
}

/** How many pairs of triangles of a mesh cut into each other: every pair whose boxes meet is tried. */
export function crossingsIn(mesh: Mesh): number {
  const boxes = cornersOf(mesh)
    .map(boxed)
    .sort((a, b) => a.least[0] - b.least[0]);
  let crossings = 0;
  boxes.forEach((one, place) => {
    for (let next = place + 1; next < boxes.length; next += 1) {
      const other = boxes[next];
      if (!other || other.least[0] > one.most[0]) break;
      const apart =
        other.least[1] > one.most[1] ||
        one.least[1] > other.most[1] ||
        other.least[2] > one.most[2] ||
        one.least[2] > other.most[2];
      if (!apart && cutsInto(one.triangle, other.triangle)) crossings += 1;
    }
  });
  return crossings;
}
