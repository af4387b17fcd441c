import type { Mesh } from './mesh.ts';

/** Corners nearer than this share of the part's size are one: a file that rounds its numbers parts them. */
const NEAR_SHARE = 1e-6;
const NONE = -1;

/** Least power of two that is at least twice a number. */
const tableSize = (entries: number) => 2 ** Math.ceil(Math.log2(Math.max(2 * entries, 16)));

function mix(a: number, b: number, c: number): number {
  let hash = Math.imul(a, 0x85ebca6b) ^ Math.imul(b, 0xc2b2ae35) ^ Math.imul(c, 0x27d4eb2f);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  hash = Math.imul(hash ^ (hash >>> 12), 0x297a2d39);
  return hash ^ (hash >>> 15);
}

interface Merged {
  /** The place in `positions` of each given point. */
  readonly places: Uint32Array;
  readonly positions: Float64Array;
}

/** Points with exactly the same coordinates become one. */
function mergeSame(points: Float64Array): Merged {
  const count = points.length / 3;
  const table = new Int32Array(tableSize(count / 3)).fill(NONE);
  const mask = table.length - 1;
  const next = new Int32Array(count);
  const places = new Uint32Array(count);
  const positions = new Float64Array(points.length);
  const words = new Int32Array(points.buffer, points.byteOffset, 2 * points.length);
  let kept = 0;
  for (let point = 0; point < count; point += 1) {
    // Adding 0 makes −0 the same as 0, also in its bits.
    const x = (points[3 * point] ?? 0) + 0;
    const y = (points[3 * point + 1] ?? 0) + 0;
    const z = (points[3 * point + 2] ?? 0) + 0;
    points[3 * point] = x;
    points[3 * point + 1] = y;
    points[3 * point + 2] = z;
    const w = 6 * point;
    const hash =
      mix(
        (words[w] ?? 0) ^ Math.imul(words[w + 1] ?? 0, 31),
        (words[w + 2] ?? 0) ^ Math.imul(words[w + 3] ?? 0, 31),
        (words[w + 4] ?? 0) ^ Math.imul(words[w + 5] ?? 0, 31),
      ) & mask;
    let found = table[hash] ?? NONE;
    while (
      found !== NONE &&
      (positions[3 * found] !== x || positions[3 * found + 1] !== y || positions[3 * found + 2] !== z)
    )
      found = next[found] ?? NONE;
    if (found === NONE) {
      found = kept;
      kept += 1;
      positions[3 * found] = x;
      positions[3 * found + 1] = y;
      positions[3 * found + 2] = z;
      next[found] = table[hash] ?? NONE;
      table[hash] = found;
    }
    places[point] = found;
  }
  return { places, positions: positions.slice(0, 3 * kept) };
}

/**
 * Points within a tolerance become one. They are sorted into cells twice as wide as the tolerance, so that a cell holds
 * few points that differ and a near one lies in one of eight.
 */
function mergeNear(points: Float64Array, tolerance: number): Merged {
  const count = points.length / 3;
  const table = new Int32Array(tableSize(count)).fill(NONE);
  const mask = table.length - 1;
  const next = new Int32Array(count);
  const places = new Uint32Array(count);
  const positions = new Float64Array(points.length);
  const cellOf = (value: number) => Math.floor(value / (2 * tolerance));
  let kept = 0;

  function near(x: number, y: number, z: number): number {
    const [highX, highY, highZ] = [cellOf(x + tolerance), cellOf(y + tolerance), cellOf(z + tolerance)];
    for (let i = cellOf(x - tolerance); i <= highX; i += 1) {
      for (let j = cellOf(y - tolerance); j <= highY; j += 1) {
        for (let k = cellOf(z - tolerance); k <= highZ; k += 1) {
          let found = table[mix(i, j, k) & mask] ?? NONE;
          for (; found !== NONE; found = next[found] ?? NONE) {
            const dx = (positions[3 * found] ?? 0) - x;
            const dy = (positions[3 * found + 1] ?? 0) - y;
            const dz = (positions[3 * found + 2] ?? 0) - z;
            if (dx * dx + dy * dy + dz * dz <= tolerance * tolerance) return found;
          }
        }
      }
    }
    return NONE;
  }

  for (let point = 0; point < count; point += 1) {
    const x = points[3 * point] ?? 0;
    const y = points[3 * point + 1] ?? 0;
    const z = points[3 * point + 2] ?? 0;
    let found = near(x, y, z);
    if (found === NONE) {
      found = kept;
      kept += 1;
      positions[3 * found] = x;
      positions[3 * found + 1] = y;
      positions[3 * found + 2] = z;
      const hash = mix(cellOf(x), cellOf(y), cellOf(z)) & mask;
      next[found] = table[hash] ?? NONE;
      table[hash] = found;
    }
    places[point] = found;
  }
  return { places, positions: positions.slice(0, 3 * kept) };
}

export interface Welded {
  readonly mesh: Mesh;
  /** Triangles that had two corners in one place. */
  readonly leftOut: number;
}

/**
 * Triangles with corners of their own become a mesh that shares them.
 *
 * @param corners - x, y and z of each corner, mm, finite; three corners a triangle; zeros lose their sign
 * @param extent - largest side of the box round them, mm, ≥ 0
 */
export function weld(corners: Float64Array, extent: number): Welded {
  const same = mergeSame(corners);
  const tolerance = NEAR_SHARE * extent;
  const near = tolerance > 0 ? mergeNear(same.positions, tolerance) : undefined;
  const placeOf = (corner: number) => {
    const place = same.places[corner] ?? 0;
    return near === undefined ? place : (near.places[place] ?? 0);
  };
  const triangles = new Uint32Array(same.places.length);
  let filled = 0;
  for (let corner = 0; corner < triangles.length; corner += 3) {
    const [a, b, c] = [placeOf(corner), placeOf(corner + 1), placeOf(corner + 2)];
    if (a === b || b === c || c === a) continue;
    triangles[filled] = a;
    triangles[filled + 1] = b;
    triangles[filled + 2] = c;
    filled += 3;
  }
  return {
    mesh: { positions: near?.positions ?? same.positions, triangles: triangles.slice(0, filled) },
    leftOut: (triangles.length - filled) / 3,
  };
}
