import type { Facet, Picture } from './projection.ts';

/** Where nothing of the solid is seen. */
export const NOTHING = -1;

/** How much of half a side the solid fills from its middle, [-]. */
const FILLED = 0.94;

/**
 * The light of each dot of a square picture, 0 to 1, or `NOTHING`; what is nearer to the eye hides what is behind it.
 *
 * @param seen - faces as projected
 * @param side - dots along a side
 */
export function lightMap({ facets, reach }: Picture, side: number): Float32Array {
  const light = new Float32Array(side * side).fill(NOTHING);
  const nearest = new Float32Array(side * side).fill(Number.NEGATIVE_INFINITY);
  const scale = (FILLED * side) / 2 / reach;
  for (const facet of facets) fill(facet, { light, nearest, side, scale });
  return light;
}

interface Plate {
  readonly light: Float32Array;
  readonly nearest: Float32Array;
  readonly side: number;
  readonly scale: number;
}

/** Fills the dots whose middles lie within a face, by their shares of its corners. */
function fill({ corners, light: bright }: Facet, { light, nearest, side, scale }: Plate): void {
  const [a, b, c] = corners.map(
    ([x, y, near]) => [x * scale + side / 2, y * scale + side / 2, near] as const,
  );
  if (!a || !b || !c) return;
  const twiceArea = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  if (twiceArea === 0) return;
  const from = (axis: 0 | 1) => Math.max(0, Math.floor(Math.min(a[axis], b[axis], c[axis]) - 0.5));
  const to = (axis: 0 | 1) => Math.min(side - 1, Math.ceil(Math.max(a[axis], b[axis], c[axis]) + 0.5));
  const [left, right, bottom] = [from(0), to(0), to(1)];
  for (let row = from(1); row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) {
      const [x, y] = [column + 0.5, row + 0.5];
      const ofC = ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / twiceArea;
      const ofB = ((c[1] - a[1]) * (x - a[0]) - (c[0] - a[0]) * (y - a[1])) / twiceArea;
      const ofA = 1 - ofB - ofC;
      if (ofA < 0 || ofB < 0 || ofC < 0) continue;
      const near = ofA * a[2] + ofB * b[2] + ofC * c[2];
      const dot = row * side + column;
      if (near <= (nearest[dot] ?? 0)) continue;
      nearest[dot] = near;
      light[dot] = bright;
    }
  }
}
