import { NONE, neighboursOf, nextEdge } from './neighbours.ts';
import { extentOf, type Surface } from './surface.ts';

/** How the surface turns at an edge, seen from outside. */
export const TURN = { open: 0, flat: 1, smooth: 2, inward: 3, outward: 4 } as const;

/** Below this turn two triangles count as one facet: a circle of 400 facets turns by 0.9° at each. */
const FLAT_SINE = Math.sin((0.2 * Math.PI) / 180);
/** A hexagon turns by 60°; rounding of the corners asks for a little more. */
const SMOOTH_COSINE = Math.cos((61.5 * Math.PI) / 180);

/** A surface with what the search asks of it again and again. */
export interface FacetModel {
  readonly surface: Surface;
  readonly neighbours: Int32Array;
  /**
   * x, y and z of the outward normal of each triangle, length 1; 0 for a triangle without area. In single precision:
   * they tell angles apart, no measure is taken from them.
   */
  readonly normals: Float32Array;
  /** A code of TURN for each edge. "smooth" turns inward by no more than a hexagon does. */
  readonly turns: Uint8Array;
  /** Largest side of the box round the surface, mm. */
  readonly extent: number;
  /** Whether the triangles were wound the wrong way round: the normals here are outward all the same. */
  readonly isInsideOut: boolean;
  /** Of the search: the set that a triangle belongs to at the moment, 0 for none. */
  readonly marks: Int32Array;
  /** Of the search: the same of a vertex. */
  readonly vertexMarks: Int32Array;
  /** Of the search: 1 for the triangles of a hole that was found. */
  readonly taken: Uint8Array;
  /** Of the search: a weight of each vertex, all 0 between two uses. */
  readonly weights: Float64Array;
}

/** Normals of the triangles as wound, and six times the volume inside. */
function facets({ positions, triangles }: Surface) {
  const normals = new Float32Array(triangles.length);
  let volume = 0;
  for (let at = 0; at < triangles.length; at += 3) {
    const a = 3 * (triangles[at] ?? 0);
    const b = 3 * (triangles[at + 1] ?? 0);
    const c = 3 * (triangles[at + 2] ?? 0);
    const ax = positions[a] ?? 0;
    const ay = positions[a + 1] ?? 0;
    const az = positions[a + 2] ?? 0;
    const ux = (positions[b] ?? 0) - ax;
    const uy = (positions[b + 1] ?? 0) - ay;
    const uz = (positions[b + 2] ?? 0) - az;
    const vx = (positions[c] ?? 0) - ax;
    const vy = (positions[c + 1] ?? 0) - ay;
    const vz = (positions[c + 2] ?? 0) - az;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    volume += ax * nx + ay * ny + az * nz;
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (!(length > 0)) continue;
    normals[at] = nx / length;
    normals[at + 1] = ny / length;
    normals[at + 2] = nz / length;
  }
  return { normals, volume };
}

/** The code of the edge between two triangles, with the height of the second one's far corner over the first. */
function turnAt(normals: Float32Array, face: number, other: number, height: number): number {
  const nx = normals[3 * face] ?? 0;
  const ny = normals[3 * face + 1] ?? 0;
  const nz = normals[3 * face + 2] ?? 0;
  const mx = normals[3 * other] ?? 0;
  const my = normals[3 * other + 1] ?? 0;
  const mz = normals[3 * other + 2] ?? 0;
  const cosine = nx * mx + ny * my + nz * mz;
  if (cosine > 0) {
    const sx = ny * mz - nz * my;
    const sy = nz * mx - nx * mz;
    const sz = nx * my - ny * mx;
    if (sx * sx + sy * sy + sz * sz <= FLAT_SINE * FLAT_SINE) return TURN.flat;
  }
  if (height <= 0) return TURN.outward;
  return cosine >= SMOOTH_COSINE ? TURN.smooth : TURN.inward;
}

function turnsOf({ positions, triangles }: Surface, neighbours: Int32Array, normals: Float32Array) {
  const turns = new Uint8Array(triangles.length);
  for (let edge = 0; edge < turns.length; edge += 1) {
    const other = neighbours[edge] ?? NONE;
    if (other < edge) continue;
    const face = Math.floor(edge / 3);
    const from = 3 * (triangles[edge] ?? 0);
    const far = 3 * (triangles[nextEdge(nextEdge(other))] ?? 0);
    const height =
      ((positions[far] ?? 0) - (positions[from] ?? 0)) * (normals[3 * face] ?? 0) +
      ((positions[far + 1] ?? 0) - (positions[from + 1] ?? 0)) * (normals[3 * face + 1] ?? 0) +
      ((positions[far + 2] ?? 0) - (positions[from + 2] ?? 0)) * (normals[3 * face + 2] ?? 0);
    const turn = turnAt(normals, face, Math.floor(other / 3), height);
    turns[edge] = turn;
    turns[other] = turn;
  }
  return turns;
}

/** Normals, neighbours and turns of a surface. */
export function facetModel(surface: Surface): FacetModel {
  const { normals, volume } = facets(surface);
  const faces = surface.triangles.length / 3;
  const vertices = surface.positions.length / 3;
  const isInsideOut = volume < 0;
  if (isInsideOut) for (let at = 0; at < normals.length; at += 1) normals[at] = -(normals[at] ?? 0);
  const neighbours = neighboursOf(surface);
  const turns = turnsOf(surface, neighbours, normals);
  return {
    surface,
    neighbours,
    normals,
    turns,
    extent: extentOf(surface),
    isInsideOut,
    marks: new Int32Array(faces),
    vertexMarks: new Int32Array(vertices),
    taken: new Uint8Array(faces),
    weights: new Float64Array(vertices),
  };
}
