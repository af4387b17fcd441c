import type { Surface } from '../../src/core/hole-finding/surface.ts';

/** Radius and height of a ring, mm. */
export interface Ring {
  readonly radius: number;
  readonly height: number;
}

/**
 * One square piece of a plate, with a surface of revolution let into its top: rings from the top face onward. Where the
 * last radius is above 0 the last ring lies on the bottom face and goes through it.
 */
export interface Cell {
  readonly facets: number;
  readonly rings: readonly Ring[];
}

export const PITCH = 20;
/** Heights are over the bottom face; the top face is at 10 mm. */
export const THICKNESS = 10;

export const through = (diameter: number, facets: number): Cell => ({
  facets,
  rings: [
    { radius: diameter / 2, height: THICKNESS },
    { radius: diameter / 2, height: 0 },
  ],
});

export const blind = (diameter: number, depth: number, facets: number): Cell => ({
  facets,
  rings: [
    { radius: diameter / 2, height: THICKNESS },
    { radius: diameter / 2, height: THICKNESS - depth },
    { radius: 0, height: THICKNESS - depth },
  ],
});

interface Builder {
  readonly positions: number[];
  readonly triangles: number[];
}

function vertex({ positions }: Builder, x: number, y: number, z: number): number {
  positions.push(x, y, z);
  return positions.length / 3 - 1;
}

/** The corner of the square that a direction points at: 0 is that between 0° and 90°, and so on. */
const quarterOf = (angle: number) => Math.floor(angle / (Math.PI / 2) + 1e-9) % 4;

/** Between a square and the ring inside it, seen from above. */
function annulus(into: Builder, corners: readonly number[], ring: readonly number[], upward: 1 | -1): void {
  const at = (list: readonly number[], place: number) => list[place % list.length] ?? 0;
  const add = (a: number, b: number, c: number) =>
    upward === 1 ? into.triangles.push(a, b, c) : into.triangles.push(a, c, b);
  for (let k = 0; k < ring.length; k += 1) {
    const middle = (2 * Math.PI * (k + 0.5)) / ring.length;
    const next = (2 * Math.PI * (k + 1.5)) / ring.length;
    const corner = quarterOf(middle);
    add(at(ring, k + 1), at(ring, k), at(corners, corner));
    const following = k + 1 === ring.length ? quarterOf(Math.PI / ring.length) + 4 : quarterOf(next);
    for (let step = corner; step < following; step += 1)
      add(at(ring, k + 1), at(corners, step), at(corners, step + 1));
  }
}

function ringOf(into: Builder, middle: number, facets: number, { radius, height }: Ring): readonly number[] {
  return Array.from({ length: facets }, (_, k) => {
    const angle = (2 * Math.PI * k) / facets;
    return vertex(into, middle + radius * Math.cos(angle), radius * Math.sin(angle), height);
  });
}

function addCell(into: Builder, middle: number, { facets, rings }: Cell, outline: Outline): void {
  const [first, ...rest] = rings;
  if (first === undefined) throw new Error('a cell has rings');
  let above = ringOf(into, middle, facets, first);
  annulus(into, outline.top, above, 1);
  for (const ring of rest) {
    const at = (list: readonly number[], k: number) => list[k % list.length] ?? 0;
    if (ring.radius === 0) {
      const centre = vertex(into, middle, 0, ring.height);
      for (let k = 0; k < facets; k += 1) into.triangles.push(at(above, k), at(above, k + 1), centre);
      const [a = 0, b = 0, c = 0, d = 0] = outline.bottom;
      into.triangles.push(a, c, b, a, d, c);
      return;
    }
    const below = ringOf(into, middle, facets, ring);
    for (let k = 0; k < facets; k += 1)
      for (const corners of [
        [at(above, k), at(above, k + 1), at(below, k + 1)],
        [at(above, k), at(below, k + 1), at(below, k)],
      ])
        into.triangles.push(...corners);
    above = below;
  }
  annulus(into, outline.bottom, above, -1);
}

interface Outline {
  /** Corners at (+, +), (−, +), (−, −), (+, −) of the cell's middle. */
  readonly top: readonly number[];
  readonly bottom: readonly number[];
}

/** A row of cells along x, PITCH wide each, the first one's middle at the origin: a closed surface. */
export function drilledPlate(cells: readonly Cell[]): Surface {
  const into: Builder = { positions: [], triangles: [] };
  const half = PITCH / 2;
  const posts = Array.from({ length: cells.length + 1 }, (_, place) => {
    const x = (place - 0.5) * PITCH;
    return {
      backTop: vertex(into, x, half, THICKNESS),
      backBottom: vertex(into, x, half, 0),
      frontTop: vertex(into, x, -half, THICKNESS),
      frontBottom: vertex(into, x, -half, 0),
    };
  });
  const quad = (a: number, b: number, c: number, d: number) => into.triangles.push(a, b, c, a, c, d);
  cells.forEach((cell, place) => {
    const [left, right] = [posts[place], posts[place + 1]];
    if (left === undefined || right === undefined) return;
    addCell(into, place * PITCH, cell, {
      top: [right.backTop, left.backTop, left.frontTop, right.frontTop],
      bottom: [right.backBottom, left.backBottom, left.frontBottom, right.frontBottom],
    });
    quad(left.frontBottom, right.frontBottom, right.frontTop, left.frontTop);
    quad(right.backBottom, left.backBottom, left.backTop, right.backTop);
  });
  const [first, last] = [posts.at(0), posts.at(-1)];
  if (first !== undefined && last !== undefined) {
    quad(first.backBottom, first.frontBottom, first.frontTop, first.backTop);
    quad(last.frontBottom, last.backBottom, last.backTop, last.frontTop);
  }
  return { positions: Float64Array.from(into.positions), triangles: Uint32Array.from(into.triangles) };
}

/** A turn about an axis through the origin, any length, by an angle, then a scale and a shift. */
export interface Move {
  readonly axis: readonly [number, number, number];
  readonly angle: number;
  readonly scale: number;
  readonly shift: readonly [number, number, number];
}

/** Where a move takes a place. */
export function moved([x, y, z]: readonly [number, number, number], move: Move): [number, number, number] {
  const { axis, angle, scale, shift } = move;
  const length = Math.hypot(...axis);
  const [a, b, c] = axis.map((side) => side / length) as [number, number, number];
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const share = (a * x + b * y + c * z) * (1 - cosine);
  return [
    scale * (x * cosine + (b * z - c * y) * sine + a * share) + shift[0],
    scale * (y * cosine + (c * x - a * z) * sine + b * share) + shift[1],
    scale * (z * cosine + (a * y - b * x) * sine + c * share) + shift[2],
  ];
}

export function movedSurface({ positions, triangles }: Surface, move: Move): Surface {
  const places = Array.from({ length: positions.length / 3 }, (_, v) =>
    moved([positions[3 * v] ?? 0, positions[3 * v + 1] ?? 0, positions[3 * v + 2] ?? 0], move),
  );
  return { positions: Float64Array.from(places.flat()), triangles };
}
