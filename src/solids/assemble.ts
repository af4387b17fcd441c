import type { Mesh } from './mesh.ts';
import type { ModelObject, ModelPart, Placed } from './model-gatherer.ts';
import { chained, isMirrored, readTransform, type Transform, UNMOVED } from './placement.ts';
import { READING_LIMITS, type Refused, refused } from './reading.ts';

/** Components within components, no deeper. */
const DEEPEST = 32;
/** Placed objects, no more: each may be empty and still takes its time. */
const MOST_PLACED = 100_000;

/** The parts of a file by their names; a part that an item names is read before. */
export type Parts = ReadonlyMap<string, ModelPart>;

interface Instance {
  readonly object: ModelObject;
  readonly transform: Transform;
}

interface Wanted {
  readonly placed: Placed;
  readonly part: string;
  readonly transform: Transform;
  readonly depth: number;
}

/** How a name of a part is written in the directory. */
export const partName = (path: string): string => path.replace(/^\/+/, '').toLowerCase();

/** All meshes that stand on the bed, with where they stand. */
function instancesOf(
  parts: Parts,
  root: string,
): Refused | { readonly kind: 'placed'; readonly list: Instance[] } {
  const list: Instance[] = [];
  const wanted: Wanted[] = (parts.get(root)?.items ?? [])
    .map((placed) => ({ placed, part: root, transform: UNMOVED, depth: 0 }))
    .reverse();
  let triangles = 0;
  const limit = READING_LIMITS.triangles;
  for (let steps = 1, next = wanted.pop(); next !== undefined; next = wanted.pop(), steps += 1) {
    const part = next.placed.part === undefined ? next.part : partName(next.placed.part);
    const name = next.placed.object;
    const object = parts.get(part)?.objects.get(name);
    const own = readTransform(next.placed.transform);
    if (object === undefined) return refused({ code: 'missing-object', object: name });
    if (own === undefined) return refused({ code: 'damaged-model', part });
    if (next.depth > DEEPEST || steps > MOST_PLACED)
      return refused({ code: 'circular-object', object: name });
    if (!object.isModel && next.depth === 0) continue;
    const transform = chained(own, next.transform);
    triangles += object.triangles.length / 3;
    if (triangles > limit) return refused({ code: 'too-many-triangles', triangles, limit });
    if (object.triangles.length > 0) list.push({ object, transform });
    for (const placed of [...object.components].reverse())
      wanted.push({ placed, part, transform, depth: next.depth + 1 });
  }
  return { kind: 'placed', list };
}

/** Where in a mesh the next instance begins. */
interface Start {
  vertex: number;
  triangle: number;
}

function placeVertices({ object, transform: m }: Instance, { positions }: Mesh, at: Start): void {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0, dx = 0, dy = 0, dz = 0] = m;
  let to = 3 * at.vertex;
  for (const block of object.vertices.blocks()) {
    for (let v = 0; v < block.length; v += 3, to += 3) {
      const x = block[v] ?? 0;
      const y = block[v + 1] ?? 0;
      const z = block[v + 2] ?? 0;
      positions[to] = x * a + y * d + z * g + dx;
      positions[to + 1] = x * b + y * e + z * h + dy;
      positions[to + 2] = x * c + y * f + z * i + dz;
    }
  }
}

/** Puts in the triangles of an instance; the number of the first broken one in the mesh, 0 for none. */
function placeTriangles({ object, transform }: Instance, { triangles }: Mesh, at: Start): number {
  const count = object.vertices.length / 3;
  const isVertex = (corner: number) => corner >= 0 && corner < count && Number.isInteger(corner);
  const [second, third] = isMirrored(transform) ? [2, 1] : [1, 2];
  let to = 3 * at.triangle;
  for (const block of object.triangles.blocks()) {
    for (let t = 0; t < block.length; t += 3, to += 3) {
      // A missing corner is not-a-number, which is no vertex.
      const a = block[t] ?? 0;
      const b = block[t + second] ?? 0;
      const c = block[t + third] ?? 0;
      if (!isVertex(a) || !isVertex(b) || !isVertex(c)) return to / 3 + 1;
      triangles[to] = at.vertex + a;
      triangles[to + 1] = at.vertex + b;
      triangles[to + 2] = at.vertex + c;
    }
  }
  return 0;
}

export interface Assembled {
  readonly kind: 'assembled';
  readonly mesh: Mesh;
  readonly instances: number;
}

/** One mesh of everything that stands on the bed, in the unit of the file. */
export function* assembling(parts: Parts, root: string): Generator<number, Assembled | Refused, undefined> {
  const placed = instancesOf(parts, root);
  if (placed.kind === 'refused') return placed;
  const { list } = placed;
  const sum = (of: (instance: Instance) => number) =>
    list.reduce((total, instance) => total + of(instance), 0);
  const vertices = sum(({ object }) => object.vertices.length);
  const limit = 9 * READING_LIMITS.triangles;
  if (vertices > limit)
    return refused({ code: 'too-many-triangles', triangles: vertices / 9, limit: READING_LIMITS.triangles });
  const mesh = {
    positions: new Float64Array(vertices),
    triangles: new Uint32Array(sum(({ object }) => object.triangles.length)),
  };
  const at: Start = { vertex: 0, triangle: 0 };
  for (const [number, instance] of list.entries()) {
    placeVertices(instance, mesh, at);
    const triangle = placeTriangles(instance, mesh, at);
    if (triangle > 0) return refused({ code: 'not-a-number', triangle });
    at.vertex += instance.object.vertices.length / 3;
    at.triangle += instance.object.triangles.length / 3;
    yield number / list.length;
  }
  return { kind: 'assembled', mesh, instances: list.length };
}
