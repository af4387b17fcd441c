import type { Mesh } from './mesh.ts';

/** A box with sides along the axes, mm. */
export interface Box {
  readonly least: readonly [number, number, number];
  readonly greatest: readonly [number, number, number];
}

/** What a mesh is worth as a solid. */
export interface MeshFindings {
  /** Edges that are not gone along once each way: 0 in a closed surface without branches. */
  readonly openEdges: number;
  /** Triangles whose height over their longest side is nothing. */
  readonly flatTriangles: number;
  /** mm³; positive where the triangles look outward. */
  readonly volume: number;
  readonly box: Box;
}

/** A triangle lower than this over its longest side has no area for a slicer, mm. */
const FLAT = 1e-6;

type Place = readonly [number, number, number];

const placeOf = ({ positions }: Mesh, vertex: number): Place => [
  positions[3 * vertex] ?? 0,
  positions[3 * vertex + 1] ?? 0,
  positions[3 * vertex + 2] ?? 0,
];

/** The three corners of every triangle. */
export const cornersOf = (mesh: Mesh): readonly (readonly [Place, Place, Place])[] =>
  Array.from({ length: mesh.triangles.length / 3 }, (_, place) => [
    placeOf(mesh, mesh.triangles[3 * place] ?? 0),
    placeOf(mesh, mesh.triangles[3 * place + 1] ?? 0),
    placeOf(mesh, mesh.triangles[3 * place + 2] ?? 0),
  ]);

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Upright to a triangle, twice as long as its area. */
export const uprightOf = ([a, b, c]: readonly [Place, Place, Place]): Place =>
  cross(minus(b, a), minus(c, a));

/** Edges that another triangle does not go along the other way, or that two go along the same way. */
function openEdges({ triangles, positions }: Mesh): number {
  const vertices = positions.length / 3;
  const gone = new Map<number, number>();
  for (let at = 0; at < triangles.length; at += 1) {
    const from = triangles[at] ?? 0;
    const to = triangles[at % 3 === 2 ? at - 2 : at + 1] ?? 0;
    const edge = from * vertices + to;
    gone.set(edge, (gone.get(edge) ?? 0) + 1);
  }
  let open = 0;
  for (const [edge, times] of gone) {
    const back = (edge % vertices) * vertices + Math.floor(edge / vertices);
    if (times !== 1 || gone.get(back) !== 1) open += 1;
  }
  return open;
}

function isFlat(triangle: readonly [Place, Place, Place]): boolean {
  const [a, b, c] = triangle;
  const longest = Math.max(...[minus(b, a), minus(c, b), minus(a, c)].map((side) => Math.hypot(...side)));
  return Math.hypot(...uprightOf(triangle)) <= FLAT * longest;
}

/** Box round a mesh. */
export function boxOf({ positions }: Mesh): Box {
  const least: [number, number, number] = [Infinity, Infinity, Infinity];
  const greatest: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  positions.forEach((value, at) => {
    const axis = (at % 3) as 0 | 1 | 2;
    least[axis] = Math.min(least[axis], value);
    greatest[axis] = Math.max(greatest[axis], value);
  });
  return { least, greatest };
}

/** Volume inside a closed mesh by the sum of its tetrahedra, mm³; negative where it is turned inside out. */
export const volumeOf = (mesh: Mesh): number =>
  cornersOf(mesh).reduce((sum, [a, b, c]) => sum + dot(a, cross(b, c)) / 6, 0);

/** Looks a mesh over; whether it cuts through itself is not in it. */
export const meshFindings = (mesh: Mesh): MeshFindings => ({
  openEdges: openEdges(mesh),
  flatTriangles: cornersOf(mesh).filter(isFlat).length,
  volume: volumeOf(mesh),
  box: boxOf(mesh),
});
