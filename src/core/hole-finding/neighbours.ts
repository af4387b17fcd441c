import type { Surface } from './surface.ts';

/** Stands where an edge has no neighbour. */
export const NONE = -1;

/** The edge that follows in the same triangle. */
export const nextEdge = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1);

/** Edges by their lower vertex: those of vertex v stand in `edges` from `starts[v]` to `starts[v + 1]`. */
function edgesByLowerVertex({ positions, triangles }: Surface) {
  const starts = new Uint32Array(positions.length / 3 + 1);
  const edges = new Uint32Array(triangles.length);
  const lowerOf = (edge: number) => Math.min(triangles[edge] ?? 0, triangles[nextEdge(edge)] ?? 0);
  for (let edge = 0; edge < edges.length; edge += 1) {
    const next = lowerOf(edge) + 1;
    starts[next] = (starts[next] ?? 0) + 1;
  }
  for (let v = 1; v < starts.length; v += 1) starts[v] = (starts[v] ?? 0) + (starts[v - 1] ?? 0);
  const free = starts.slice();
  for (let edge = 0; edge < edges.length; edge += 1) {
    const lower = lowerOf(edge);
    const place = free[lower] ?? 0;
    edges[place] = edge;
    free[lower] = place + 1;
  }
  return { starts, edges };
}

/**
 * The edge on the other side of each edge. Edge 3 · t + k of triangle t runs from its corner k to the next.
 * An edge has a neighbour where exactly two triangles meet and turn the same way round; the others have `NONE`.
 * Time grows with the number of triangles, however many meet in one vertex.
 */
export function neighboursOf(surface: Surface): Int32Array {
  const { positions, triangles } = surface;
  const neighbours = new Int32Array(triangles.length).fill(NONE);
  const { starts, edges } = edgesByLowerVertex(surface);
  // For each upper vertex: the lower vertex it was last seen with, one past its number, the edge, and how often.
  const seenWith = new Uint32Array(positions.length / 3);
  const seenEdge = new Uint32Array(seenWith.length);
  const seenTimes = new Uint32Array(seenWith.length);
  for (let lower = 0; lower + 1 < starts.length; lower += 1) {
    const end = starts[lower + 1] ?? 0;
    for (let place = starts[lower] ?? 0; place < end; place += 1) {
      const edge = edges[place] ?? 0;
      const from = triangles[edge] ?? 0;
      const upper = from === lower ? (triangles[nextEdge(edge)] ?? 0) : from;
      if (upper === lower) continue;
      if (seenWith[upper] !== lower + 1) {
        seenWith[upper] = lower + 1;
        seenEdge[upper] = edge;
        seenTimes[upper] = 1;
        continue;
      }
      const other = seenEdge[upper] ?? 0;
      const times = (seenTimes[upper] ?? 0) + 1;
      seenTimes[upper] = times;
      if (times > 2) {
        // A third triangle: the edge divides more than two, so no two of them are neighbours.
        const partner = neighbours[other] ?? NONE;
        if (partner !== NONE) neighbours[partner] = NONE;
        neighbours[other] = NONE;
      } else if (triangles[other] !== from) {
        neighbours[edge] = other;
        neighbours[other] = edge;
      }
    }
  }
  return neighbours;
}
