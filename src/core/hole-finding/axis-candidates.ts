import type { FacetModel } from './facet-model.ts';
import { nextEdge } from './neighbours.ts';
import { sampleOf } from './sample.ts';
import { along, areaOf, directionOf, dot, type Point, vertexAt } from './surface.ts';

/** How far a facet may lean against an axis and still be of its wall: triangles of a curved wall lean a little. */
export const LEANING_SINE = Math.sin((12 * Math.PI) / 180);

/** Edges that agree with a direction are parallel to it within this. */
const PARALLEL_COSINE = Math.cos((1.5 * Math.PI) / 180);
const CANDIDATES = 12;
/** A sample of this many edges decides between the candidates. */
const JURY = 512;

const ORIGIN: Point = { x: 0, y: 0, z: 0 };

/** From the start of an edge to its end. */
export function edgeVector({ surface }: FacetModel, edge: number): Point {
  const from = vertexAt(surface, surface.triangles[edge] ?? 0);
  return along(vertexAt(surface, surface.triangles[nextEdge(edge)] ?? 0), -1, from);
}

export function normalAt({ normals }: FacetModel, face: number): Point {
  const at = 3 * face;
  return { x: normals[at] ?? 0, y: normals[at + 1] ?? 0, z: normals[at + 2] ?? 0 };
}

/** x, y and z of each edge's vector, in one list: an object for each would be most of the work. */
function vectorsOf({ surface }: FacetModel, edges: readonly number[]): Float64Array {
  const { positions, triangles } = surface;
  const vectors = new Float64Array(3 * edges.length);
  for (let place = 0; place < edges.length; place += 1) {
    const edge = edges[place] ?? 0;
    const from = 3 * (triangles[edge] ?? 0);
    const to = 3 * (triangles[nextEdge(edge)] ?? 0);
    for (let side = 0; side < 3; side += 1)
      vectors[3 * place + side] = (positions[to + side] ?? 0) - (positions[from + side] ?? 0);
  }
  return vectors;
}

/** The longest of the vectors. */
function longestOf(vectors: Float64Array): Point {
  let [longest, most] = [ORIGIN, 0];
  for (let at = 0; at < vectors.length; at += 3) {
    const x = vectors[at] ?? 0;
    const y = vectors[at + 1] ?? 0;
    const z = vectors[at + 2] ?? 0;
    const squared = x * x + y * y + z * z;
    if (squared <= most) continue;
    longest = { x, y, z };
    most = squared;
  }
  return longest;
}

/** Sum of the vectors that are parallel to a direction, all turned its way. */
function sumAlong(vectors: Float64Array, direction: Point): Point {
  const { x, y, z } = direction;
  let sumX = 0;
  let sumY = 0;
  let sumZ = 0;
  for (let at = 0; at < vectors.length; at += 3) {
    const vectorX = vectors[at] ?? 0;
    const vectorY = vectors[at + 1] ?? 0;
    const vectorZ = vectors[at + 2] ?? 0;
    const share = x * vectorX + y * vectorY + z * vectorZ;
    const squared = vectorX * vectorX + vectorY * vectorY + vectorZ * vectorZ;
    if (share * share < PARALLEL_COSINE * PARALLEL_COSINE * squared) continue;
    const sign = share < 0 ? -1 : 1;
    sumX += sign * vectorX;
    sumY += sign * vectorY;
    sumZ += sign * vectorZ;
  }
  return { x: sumX, y: sumY, z: sumZ };
}

/**
 * The direction that most of the turning edges share, by their length: two neighbouring facets of a drawn hole meet
 * in a line along its axis.
 */
function directionOfEdges(model: FacetModel, edges: readonly number[]): Point | undefined {
  const vectors = vectorsOf(model, edges);
  const jury = vectorsOf(model, sampleOf(edges, JURY));
  const candidates = sampleOf(edges, CANDIDATES).map((edge) => edgeVector(model, edge));
  let best: Point | undefined;
  let bestLength = 0;
  for (const vector of [longestOf(vectors), ...candidates]) {
    const direction = directionOf(vector);
    if (direction === undefined) continue;
    const sum = sumAlong(jury, direction);
    const length = Math.hypot(sum.x, sum.y, sum.z);
    if (length > bestLength * (1 + 1e-9)) {
      best = directionOf(sum);
      bestLength = length;
    }
  }
  return best === undefined ? undefined : directionOf(sumAlong(vectors, best));
}

/** Direction that a symmetric matrix stretches least, by inverse iteration from the longest row of its adjugate. */
function leastStretched([xx, xy, xz, yy, yz, zz]: readonly [number, number, number, number, number, number]) {
  // A little on the diagonal keeps an exactly flat matrix invertible and moves no direction.
  const dust = 1e-9 * (xx + yy + zz);
  const [a, d, f] = [xx + dust, yy + dust, zz + dust];
  const rows = [
    { x: d * f - yz * yz, y: xz * yz - xy * f, z: xy * yz - xz * d },
    { x: xz * yz - xy * f, y: a * f - xz * xz, z: xy * xz - a * yz },
    { x: xy * yz - xz * d, y: xy * xz - a * yz, z: a * d - xy * xy },
  ] as const;
  const times = (vector: Point): Point => ({
    x: dot(rows[0], vector),
    y: dot(rows[1], vector),
    z: dot(rows[2], vector),
  });
  const longest = rows.reduce<Point>((best, row) => (dot(row, row) > dot(best, best) ? row : best), rows[0]);
  let direction = directionOf(longest);
  for (let turn = 0; turn < 4 && direction !== undefined; turn += 1)
    direction = directionOf(times(direction));
  return direction;
}

/** The direction that all normals are nearest to perpendicular to, by area. */
function directionAcrossNormals(
  model: FacetModel,
  faces: ArrayLike<number>,
  near?: Point,
): Point | undefined {
  let [xx, xy, xz, yy, yz, zz] = [0, 0, 0, 0, 0, 0];
  for (let place = 0; place < faces.length; place += 1) {
    const face = faces[place] ?? 0;
    const normal = normalAt(model, face);
    if (near !== undefined && Math.abs(dot(normal, near)) > 2 * LEANING_SINE) continue;
    const area = areaOf(model.surface, face);
    xx += area * normal.x * normal.x;
    xy += area * normal.x * normal.y;
    xz += area * normal.x * normal.z;
    yy += area * normal.y * normal.y;
    yz += area * normal.y * normal.z;
    zz += area * normal.z * normal.z;
  }
  return leastStretched([xx, xy, xz, yy, yz, zz]);
}

/** Directions that a hole among these triangles may have, the likelier one first, each worked out when it is asked for. */
export function* axisCandidates(
  model: FacetModel,
  faces: ArrayLike<number>,
  edges: readonly number[],
): Generator<Point> {
  const ofEdges = directionOfEdges(model, edges);
  if (ofEdges !== undefined) yield ofEdges;
  // Each look leaves out what the last one showed to be no wall.
  let ofNormals = directionAcrossNormals(model, faces);
  for (let look = 0; look < 2 && ofNormals !== undefined; look += 1)
    ofNormals = directionAcrossNormals(model, faces, ofNormals);
  if (ofNormals !== undefined) yield ofNormals;
}
