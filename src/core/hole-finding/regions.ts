import { type FacetModel, TURN } from './facet-model.ts';
import { NONE } from './neighbours.ts';

/** A ring of facets has at least as many edges that turn. */
export const LEAST_TURNS = 6;

/** Head of the set that a triangle belongs to, with the way to it shortened. */
function headOf(parents: Int32Array, face: number): number {
  let at = face;
  for (let parent = parents[at] ?? at; parent !== at; parent = parents[at] ?? at) {
    const above = parents[parent] ?? parent;
    parents[at] = above;
    at = above;
  }
  return at;
}

/**
 * The parts of a surface that hang together without an edge that turns outward or sharply inward, and that turn inward
 * at six edges or more: every wall of a hole lies in one of them, because its mouth is an edge that turns outward.
 * Each is a list of triangles.
 */
export function regionsOf({ surface, neighbours, turns }: FacetModel): readonly Int32Array[] {
  const faces = surface.triangles.length / 3;
  const parents = new Int32Array(faces);
  for (let face = 0; face < faces; face += 1) parents[face] = face;
  for (let edge = 0; edge < turns.length; edge += 1) {
    const other = neighbours[edge] ?? NONE;
    const turn = turns[edge];
    if (other < edge || (turn !== TURN.flat && turn !== TURN.smooth)) continue;
    const one = headOf(parents, Math.floor(edge / 3));
    const two = headOf(parents, Math.floor(other / 3));
    // The lower number leads, so that the order of the regions follows that of the triangles.
    if (one < two) parents[two] = one;
    else parents[one] = two;
  }
  const smooth = new Int32Array(faces);
  const sizes = new Int32Array(faces);
  for (let face = 0; face < faces; face += 1) {
    const head = headOf(parents, face);
    parents[face] = head;
    sizes[head] = (sizes[head] ?? 0) + 1;
    for (let edge = 3 * face; edge < 3 * face + 3; edge += 1) {
      if (turns[edge] === TURN.smooth && (neighbours[edge] ?? NONE) > edge)
        smooth[head] = (smooth[head] ?? 0) + 1;
    }
  }
  const regions = new Map<number, { readonly faces: Int32Array; filled: number }>();
  for (let head = 0; head < faces; head += 1) {
    if ((smooth[head] ?? 0) >= LEAST_TURNS)
      regions.set(head, { faces: new Int32Array(sizes[head] ?? 0), filled: 0 });
  }
  for (let face = 0; face < faces; face += 1) {
    const head = parents[face] ?? face;
    if ((smooth[head] ?? 0) < LEAST_TURNS) continue;
    const region = regions.get(head);
    if (region === undefined) continue;
    region.faces[region.filled] = face;
    region.filled += 1;
  }
  return [...regions.values()].map(({ faces }) => faces);
}
