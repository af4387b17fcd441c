import { axisCandidates, LEANING_SINE, normalAt } from './axis-candidates.ts';
import { withNeighbours } from './coaxial.ts';
import { type FacetModel, facetModel } from './facet-model.ts';
import type { FoundHole } from './hole.ts';
import { holeOf } from './measure-wall.ts';
import { LEAST_TURNS, regionsOf } from './regions.ts';
import { dot, type Point, type Surface } from './surface.ts';
import { type NextMark, together, turningEdges, wallAmong } from './wall.ts';

/** More holes than this are counted, not listed. */
export const MOST_HOLES = 200;
/** Bores of so many directions are looked for in one region. */
const ROUNDS = 4;
/** Regions searched between two reports. */
const REGIONS_EACH = 64;

export interface HolesFound {
  /** By corner diameter, then the higher, then the deeper; at most MOST_HOLES. */
  readonly holes: readonly FoundHole[];
  /** All that were found, ≥ the number listed. */
  readonly total: number;
  /** Whether the triangles were wound the wrong way round; the holes are found all the same. */
  readonly isInsideOut: boolean;
}

/** Holes along one axis among triangles; those of their walls are taken. */
function alongAxis(
  model: FacetModel,
  faces: readonly number[],
  axis: Point,
  nextMark: NextMark,
): readonly FoundHole[] {
  const parallel = faces.filter((face) => Math.abs(dot(normalAt(model, face), axis)) <= LEANING_SINE);
  const holes: FoundHole[] = [];
  for (const part of together(model, parallel, nextMark)) {
    if (part.length < LEAST_TURNS) continue;
    const wall = wallAmong(model, part, axis, nextMark);
    const hole = wall === undefined ? undefined : holeOf(model, wall);
    if (wall === undefined || hole === undefined) continue;
    holes.push(hole);
    for (const face of wall.faces) model.taken[face] = 1;
  }
  return holes;
}

/** Holes along the first direction that has any. */
function firstHit(model: FacetModel, faces: readonly number[], nextMark: NextMark): readonly FoundHole[] {
  const mark = nextMark();
  for (const face of faces) model.marks[face] = mark;
  const edges = turningEdges(model, faces);
  if (edges.length < LEAST_TURNS) return [];
  for (const axis of axisCandidates(model, faces, edges)) {
    const holes = alongAxis(model, faces, axis, nextMark);
    if (holes.length > 0) return holes;
  }
  return [];
}

/** The triangles of a region that no hole has taken: a wall that grew beyond its own may have taken some. */
function leftOf({ taken }: FacetModel, region: Int32Array): readonly number[] {
  const left: number[] = [];
  for (let place = 0; place < region.length; place += 1) {
    const face = region[place] ?? 0;
    if (taken[face] === 0) left.push(face);
  }
  return left;
}

function holesInRegion(model: FacetModel, region: Int32Array, nextMark: NextMark): readonly FoundHole[] {
  const found: FoundHole[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const holes = firstHit(model, leftOf(model, region), nextMark);
    if (holes.length === 0) break;
    found.push(...holes);
  }
  return found;
}

/** Diameters and heights are compared in steps: rounding must not shuffle a row of equal holes. */
const STEPS_PER_MILLIMETRE = 1000;
const stepOf = (length: number) => Math.round(length * STEPS_PER_MILLIMETRE);

function inOrder(one: FoundHole, other: FoundHole): number {
  const differences = [
    stepOf(one.cornerDiameter) - stepOf(other.cornerDiameter),
    stepOf(other.mouth.z) - stepOf(one.mouth.z),
    stepOf(other.depth) - stepOf(one.depth),
    stepOf(one.mouth.y) - stepOf(other.mouth.y),
    stepOf(one.mouth.x) - stepOf(other.mouth.x),
  ];
  return differences.find((difference) => difference !== 0) ?? 0;
}

/**
 * The search in steps, for a worker that wants to listen between them: yields the share done, 0 to 1.
 * Its result is that of `findHoles`.
 */
export function* holeSearch(surface: Surface): Generator<number, HolesFound, undefined> {
  const model = facetModel(surface);
  yield 0.5;
  const regions = regionsOf(model);
  yield 0.7;
  let mark = 0;
  const nextMark = () => {
    mark += 1;
    return mark;
  };
  const found: FoundHole[] = [];
  for (let next = 0; next < regions.length; next += 1) {
    found.push(...holesInRegion(model, regions[next] ?? new Int32Array(), nextMark));
    if (next % REGIONS_EACH === REGIONS_EACH - 1) yield 0.7 + (0.3 * next) / regions.length;
  }
  found.sort(inOrder);
  const holes = found.slice(0, MOST_HOLES).map((hole) => withNeighbours(hole, found));
  return { holes, total: found.length, isInsideOut: model.isInsideOut };
}

/**
 * Cylindrical holes of a part: walls of facets that turn about one axis, look at it and go round by 300° or more.
 *
 * Neighbouring triangles that turn inward by up to 61.5° make a region; its axis is the direction its edges share, or
 * the one its normals are across; the cylinder is the least-squares one through the corners, within 0.15 % of the radius.
 * Cones, countersinks, balls, slots, half-open grooves and what is closed all round are not counted.
 *
 * @param surface - triangles with welded corners, all coordinates finite
 * @returns the holes in order, and how many there are
 */
export function findHoles(surface: Surface): HolesFound {
  const search = holeSearch(surface);
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}
