import { edgeVector, LEANING_SINE, normalAt } from './axis-candidates.ts';
import { type FacetModel, TURN } from './facet-model.ts';
import { type Corner, type Cylinder, fitCylinder } from './fit-cylinder.ts';
import { NONE, nextEdge } from './neighbours.ts';
import { LEAST_TURNS } from './regions.ts';
import { sampleOf } from './sample.ts';
import { dot, type Point, vertexAt } from './surface.ts';

/** Corners lie on the circle within this share of its radius, and rounding of the file. */
const ROUND_SHARE = 0.0015;
const ROUNDING = 2e-6;
/** The middle of a hexagon's side lies at 0.866 of its corner circle. */
const LEAST_FLAT = 0.86;
/** More corners than this say no more about the five unknowns of a cylinder. */
const ENOUGH_CORNERS = 240;

/** How far a corner may lie off the circle of a wall, mm. */
export const roundRoom = ({ extent }: FacetModel, { radius }: Cylinder): number =>
  ROUND_SHARE * radius + ROUNDING * extent;

/** The triangles of a cylindrical wall that looks at its own axis. */
export interface Wall {
  readonly cylinder: Cylinder;
  readonly faces: readonly number[];
  /** Edges inside the wall at which it turns, each once. */
  readonly edges: readonly number[];
  /** Edges round the wall: no triangle of it lies beyond them. */
  readonly border: readonly number[];
}

/** The edges at which triangles of one set turn inward smoothly, each once. */
export function turningEdges({ marks, neighbours, turns }: FacetModel, faces: ArrayLike<number>): number[] {
  const edges: number[] = [];
  for (let place = 0; place < faces.length; place += 1) {
    const face = faces[place] ?? 0;
    for (let edge = 3 * face; edge < 3 * face + 3; edge += 1) {
      const other = neighbours[edge] ?? NONE;
      if (other > edge && turns[edge] === TURN.smooth && marks[face] === marks[Math.floor(other / 3)])
        edges.push(edge);
    }
  }
  return edges;
}

/** The edges of triangles of one set beyond which there is none of it. */
function borderEdges({ marks, neighbours }: FacetModel, faces: readonly number[]): number[] {
  const edges: number[] = [];
  for (const face of faces) {
    for (let edge = 3 * face; edge < 3 * face + 3; edge += 1) {
      const other = neighbours[edge] ?? NONE;
      if (other === NONE || marks[Math.floor(other / 3)] !== marks[face]) edges.push(edge);
    }
  }
  return edges;
}

/** The vertices at which a wall turns, each once, and corners to fit a cylinder to. */
interface Turning {
  readonly vertices: readonly number[];
  readonly corners: readonly Corner[];
}

/** Ends of edges; those of long edges along the axis weigh most, so a fillet's weigh little. */
function turningOf(model: FacetModel, edges: readonly number[], axis: Point): Turning {
  const { surface, weights } = model;
  const vertices: number[] = [];
  const add = (vertex: number, weight: number) => {
    const before = weights[vertex] ?? 0;
    if (before === 0) vertices.push(vertex);
    weights[vertex] = before + weight;
  };
  for (const edge of edges) {
    const vector = edgeVector(model, edge);
    const weight = Math.abs(dot(vector, axis)) + 1e-3 * Math.sqrt(dot(vector, vector));
    add(surface.triangles[edge] ?? 0, weight);
    add(surface.triangles[nextEdge(edge)] ?? 0, weight);
  }
  const corners = sampleOf(vertices, ENOUGH_CORNERS).map((vertex) => ({
    weight: weights[vertex] ?? 0,
    place: vertexAt(surface, vertex),
  }));
  for (const vertex of vertices) weights[vertex] = 0;
  return { vertices, corners };
}

/**
 * Whether a triangle lies on the cylinder with all its corners and looks at the axis. Corners at which the wall does not
 * turn may lie on a flat, where a cross hole has cut it.
 */
function onCylinder(
  model: FacetModel,
  cylinder: Cylinder,
  isTurning: (vertex: number) => boolean,
): (face: number) => boolean {
  const { centre, axis, radius } = cylinder;
  const { positions, triangles } = model.surface;
  const room = roundRoom(model, cylinder);
  return (face: number) => {
    const normal = normalAt(model, face);
    if (Math.abs(dot(normal, axis)) > LEANING_SINE) return false;
    for (let edge = 3 * face; edge < 3 * face + 3; edge += 1) {
      const vertex = triangles[edge] ?? 0;
      const x = (positions[3 * vertex] ?? 0) - centre.x;
      const y = (positions[3 * vertex + 1] ?? 0) - centre.y;
      const z = (positions[3 * vertex + 2] ?? 0) - centre.z;
      const along = x * axis.x + y * axis.y + z * axis.z;
      const distance = Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along));
      const least = isTurning(vertex) ? radius - room : LEAST_FLAT * radius;
      if (distance < least || distance > radius + room) return false;
      if (x * normal.x + y * normal.y + z * normal.z >= 0) return false;
    }
    return true;
  };
}

/** Moves a set of triangles to a mark of its own and gives them: all that hang together with the first. */
function takeTogether(model: FacetModel, first: number, of: number, mark: number): number[] {
  const { marks, neighbours, turns } = model;
  const together = [first];
  marks[first] = mark;
  for (const face of together) {
    for (let edge = 3 * face; edge < 3 * face + 3; edge += 1) {
      const other = Math.floor((neighbours[edge] ?? NONE) / 3);
      const turn = turns[edge];
      if (other < 0 || marks[other] !== of || (turn !== TURN.flat && turn !== TURN.smooth)) continue;
      marks[other] = mark;
      together.push(other);
    }
  }
  return together;
}

/** Gives numbers for sets of triangles that no other set has had. */
export type NextMark = () => number;

/** Splits triangles into those that hang together. */
export function together(
  model: FacetModel,
  faces: readonly number[],
  nextMark: NextMark,
): readonly number[][] {
  const all = nextMark();
  for (const face of faces) model.marks[face] = all;
  const sets: number[][] = [];
  for (const face of faces) {
    if (model.marks[face] === all) sets.push(takeTogether(model, face, all, nextMark()));
  }
  return sets;
}

/** The wall among triangles that hang together and are about parallel to an axis; undefined where there is none. */
export function wallAmong(
  model: FacetModel,
  faces: readonly number[],
  axis: Point,
  nextMark: NextMark,
): Wall | undefined {
  const edges = turningEdges(model, faces);
  if (edges.length < LEAST_TURNS) return undefined;
  const { vertices, corners } = turningOf(model, edges, axis);
  const cylinder = fitCylinder(corners, axis);
  if (cylinder === undefined || Math.abs(dot(cylinder.axis, axis)) < Math.cos(2 * Math.asin(LEANING_SINE)))
    return undefined;
  const turning = nextMark();
  for (const vertex of vertices) model.vertexMarks[vertex] = turning;
  const isOn = onCylinder(model, cylinder, (vertex) => model.vertexMarks[vertex] === turning);
  const parts = together(model, faces.filter(isOn), nextMark);
  const wall = parts.reduce<number[]>((best, part) => (part.length > best.length ? part : best), []);
  // Neighbours that were left out bear another mark: their edges are the wall's border.
  const inner = turningEdges(model, wall);
  if (inner.length < LEAST_TURNS) return undefined;
  const isGrown = grow(
    model,
    wall,
    onCylinder(model, cylinder, () => true),
  );
  const within = isGrown ? turningEdges(model, wall) : inner;
  const better = isGrown ? fitCylinder(turningOf(model, within, axis).corners, axis) : cylinder;
  return {
    cylinder: better ?? cylinder,
    faces: wall,
    edges: within,
    border: borderEdges(model, wall),
  };
}

/**
 * Adds to a wall what lies on its cylinder beyond an edge that does not turn inward: where the triangles of a round wall
 * are staggered, their rows meet in slight ridges. Whether there was anything.
 */
function grow({ marks, neighbours }: FacetModel, wall: number[], isOn: (face: number) => boolean): boolean {
  const before = wall.length;
  const [first = 0] = wall;
  const mark = marks[first] ?? 0;
  for (const face of wall) {
    for (let edge = 3 * face; edge < 3 * face + 3; edge += 1) {
      const other = Math.floor((neighbours[edge] ?? NONE) / 3);
      if (other < 0 || marks[other] === mark || !isOn(other)) continue;
      marks[other] = mark;
      wall.push(other);
    }
  }
  return wall.length > before;
}
