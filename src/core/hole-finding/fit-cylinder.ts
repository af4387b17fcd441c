import { normalEquations } from './least-squares.ts';
import { across, along, directionOf, type Point, type Surface } from './surface.ts';

/** A corner of a wall with its weight. */
export interface Corner {
  readonly place: Point;
  readonly weight: number;
}

export interface Cylinder {
  /** A place on the axis. */
  readonly centre: Point;
  readonly axis: Point;
  /** mm, > 0. */
  readonly radius: number;
}

/** Corners farther than this share of the radius from the circle are left out of the next fit. */
const TRIMS = [0.04, 0.01, 0.003, 0.0015] as const;
const STEPS_EACH = 2;
/** Less than this share of the weight near one circle is no wall. */
const LEAST_SHARE = 0.3;

/** A place against the axis of a cylinder: across it in u and v, along it in w. */
export function against({ centre, axis }: Pick<Cylinder, 'centre' | 'axis'>) {
  const { u, v } = across(axis);
  return (place: Point) => {
    const x = place.x - centre.x;
    const y = place.y - centre.y;
    const z = place.z - centre.z;
    return {
      u: x * u.x + y * u.y + z * u.z,
      v: x * v.x + y * v.y + z * v.z,
      w: x * axis.x + y * axis.y + z * axis.z,
    };
  };
}

/** The same for the three corners of a triangle: u, v and w of each, in one list that is filled anew each time. */
export function cornersAgainst({ positions, triangles }: Surface, { centre, axis }: Cylinder) {
  const { u, v } = across(axis);
  const seen = new Float64Array(9);
  return (face: number): Float64Array => {
    for (let corner = 0; corner < 3; corner += 1) {
      const vertex = 3 * (triangles[3 * face + corner] ?? 0);
      const x = (positions[vertex] ?? 0) - centre.x;
      const y = (positions[vertex + 1] ?? 0) - centre.y;
      const z = (positions[vertex + 2] ?? 0) - centre.z;
      seen[3 * corner] = x * u.x + y * u.y + z * u.z;
      seen[3 * corner + 1] = x * v.x + y * v.y + z * v.z;
      seen[3 * corner + 2] = x * axis.x + y * axis.y + z * axis.z;
    }
    return seen;
  };
}

/**
 * The circle through corners seen along the axis, with the squares of the radii as errors.
 *
 *     u² + v² = 2 · u · a + 2 · v · b + c        r = √(c + a² + b²)
 */
function circleAlong(corners: readonly Corner[], centre: Point, axis: Point): Cylinder | undefined {
  const view = against({ centre, axis });
  const equations = normalEquations(3);
  for (const { place, weight } of corners) {
    const { u, v } = view(place);
    equations.add([2 * u, 2 * v, 1], u * u + v * v, weight);
  }
  const [a, b, c] = equations.solve() ?? [];
  if (a === undefined || b === undefined || c === undefined) return undefined;
  const squared = c + a * a + b * b;
  if (!(squared > 0)) return undefined;
  const { u, v } = across(axis);
  return { centre: along(along(centre, a, u), b, v), axis, radius: Math.sqrt(squared) };
}

/** One step of Gauss and Newton towards the cylinder with the least squares of the distances. */
function nearer(corners: readonly Corner[], cylinder: Cylinder, middle: number): Cylinder | undefined {
  const view = against(cylinder);
  const { u: towardsU, v: towardsV } = across(cylinder.axis);
  const equations = normalEquations(5);
  // One for all corners: a list for each would be most of the work.
  const row = new Float64Array(5);
  for (const { place, weight } of corners) {
    const { u, v, w } = view(place);
    const distance = Math.sqrt(u * u + v * v);
    if (distance === 0) continue;
    row[0] = u / distance;
    row[1] = v / distance;
    row[2] = 1;
    row[3] = (w - middle) * row[0];
    row[4] = (w - middle) * row[1];
    equations.add(row, distance - cylinder.radius, weight);
  }
  const [shiftU, shiftV, growth, tiltU, tiltV] = equations.solve() ?? [];
  if (shiftU === undefined || shiftV === undefined || growth === undefined) return undefined;
  if (tiltU === undefined || tiltV === undefined) return undefined;
  const axis = directionOf(along(along(cylinder.axis, tiltU, towardsU), tiltV, towardsV));
  const radius = cylinder.radius + growth;
  if (axis === undefined || !(radius > 0)) return undefined;
  const pivot = along(cylinder.centre, middle, cylinder.axis);
  return { centre: along(along(pivot, shiftU, towardsU), shiftV, towardsV), axis, radius };
}

const weightOf = (corners: readonly Corner[]) => corners.reduce((sum, { weight }) => sum + weight, 0);

/** The value that half of the corners' weight lies below; a value for each corner. */
function weightedMedian(values: readonly number[], corners: readonly Corner[]): number {
  const valueAt = (place: number) => values[place] ?? 0;
  const weightAt = (place: number) => corners[place]?.weight ?? 0;
  const sorted = corners.map((_, place) => place).sort((one, other) => valueAt(one) - valueAt(other));
  const half = sorted.reduce((sum, place) => sum + weightAt(place), 0) / 2;
  let sum = 0;
  for (const place of sorted) {
    sum += weightAt(place);
    if (sum >= half) return valueAt(place);
  }
  return 0;
}

const distanceFrom = (cylinder: Cylinder) => {
  const view = against(cylinder);
  return ({ place }: Corner) => {
    const { u, v } = view(place);
    return Math.sqrt(u * u + v * v);
  };
};

/**
 * The cylinder through the corners of a wall. Corners that do not lie on it, of a fillet or a cross hole, are
 * left out step by step.
 *
 * @param corners - at least three, weights above 0
 * @param axis - near the cylinder's own, within some degrees
 * @returns the cylinder; undefined where the corners make none
 */
export function fitCylinder(corners: readonly Corner[], axis: Point): Cylinder | undefined {
  const [first] = corners;
  if (first === undefined) return undefined;
  let cylinder = circleAlong(corners, first.place, axis);
  for (const share of TRIMS) {
    if (cylinder === undefined) return undefined;
    const distances = corners.map(distanceFrom(cylinder));
    const radius = weightedMedian(distances, corners);
    const kept = corners.filter((_, place) => Math.abs((distances[place] ?? 0) - radius) <= share * radius);
    if (weightOf(kept) < LEAST_SHARE * weightOf(corners)) return undefined;
    for (let step = 0; step < STEPS_EACH && cylinder !== undefined; step += 1) {
      const { w } = middleOf(kept, cylinder);
      cylinder = nearer(kept, step === 0 ? { ...cylinder, radius } : cylinder, w);
    }
  }
  return cylinder;
}

/** Where the corners lie along the axis, on average. */
function middleOf(corners: readonly Corner[], cylinder: Cylinder): { readonly w: number } {
  const view = against(cylinder);
  const total = weightOf(corners);
  return { w: corners.reduce((sum, { place, weight }) => sum + weight * view(place).w, 0) / total };
}
