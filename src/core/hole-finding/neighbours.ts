import type { Surface } from './surface.ts';

/** Stands where an edge has no neighbour. */
export const NONE = -1;

/** The edge that follows in the same triangle. */
export const nextEdge = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1);

/**
 * Edges in chains by their lower vertex, which both triangles of an edge share: `first[v]` begins the chain of vertex v,
 * `next[edge]` goes on, `NONE` ends it.
 */
function chainsByLowerVertex({ positions, triangles }: Surface) {
  const first = new Int32Array(positions.length / 3).fill(NONE);
  const next = new Int32Array(triangles.length);
  for (let edge = next.length - 1; edge >= 0; edge -= 1) {
    const lower = Math.min(triangles[edge] ?? 0, triangles[nextEdge(edge)] ?? 0);
    next[edge] = first[lower] ?? NONE;
    first[lower] = edge;
  }
  return { first, next };
}

/**
 * The edge on the other side of each edge. Edge 3 · t + k of triangle t runs from its corner k to the next.
 * An edge has a neighbour where exactly two triangles meet and turn the same way round; the others have `NONE`.
 * Time grows with the number of triangles, however many meet in one vertex.
 */
export function neighboursOf(surface: Surface): Int32Array {
  const { triangles } = surface;
  const { first, next } = chainsByLowerVertex(surface);
  // An edge that has been looked at needs its place in the chain no more: its neighbour takes it.
  const neighbours = next;
  // For each upper vertex: the lower vertex it was last seen with, one past its number, the edge, and how often.
  const seenWith = new Uint32Array(first.length);
  const seenEdge = new Uint32Array(first.length);
  const seenTimes = new Uint32Array(first.length);
  for (let lower = 0; lower < first.length; lower += 1) {
    for (let edge = first[lower] ?? NONE; edge !== NONE; ) {
      const here = edge;
      edge = next[here] ?? NONE;
      neighbours[here] = NONE;
      const from = triangles[here] ?? 0;
      const upper = from === lower ? (triangles[nextEdge(here)] ?? 0) : from;
      if (upper === lower) continue;
      if (seenWith[upper] !== lower + 1) {
        seenWith[upper] = lower + 1;
        seenEdge[upper] = here;
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
        neighbours[here] = other;
        neighbours[other] = here;
      }
    }
  }
  return neighbours;
}
