import type { Surface } from '../../src/core/hole-finding/surface.ts';
import { type Cell, drilledPlate, PITCH, THICKNESS } from './drilled-plate.ts';

const FACETS = 120;
const RINGS = 7;

/** A through hole whose wall is divided along its depth. */
const dividedHole = (diameter: number): Cell => ({
  facets: FACETS,
  rings: Array.from({ length: RINGS }, (_, ring) => ({
    radius: diameter / 2,
    height: THICKNESS * (1 - ring / (RINGS - 1)),
  })),
});

/** Hills and hollows over a square of so many steps, closed below by one point far down. */
function hills(steps: number, away: number): Surface {
  const side = steps + 1;
  const height = (i: number, j: number) =>
    3 * Math.sin(i * 0.11) * Math.cos(j * 0.07) +
    0.4 * Math.sin(i * 0.9 + j) +
    0.05 * Math.sin(7.3 * i) * Math.cos(5.1 * j);
  const positions: number[] = [];
  for (let i = 0; i < side; i += 1)
    for (let j = 0; j < side; j += 1) positions.push(away + 0.2 * i, 0.2 * j, height(i, j));
  const foot = positions.length / 3;
  positions.push(away + 0.1 * steps, 0.1 * steps, -80);
  const triangles: number[] = [];
  for (let i = 0; i < steps; i += 1) {
    for (let j = 0; j < steps; j += 1) {
      const [a, b] = [i * side + j, (i + 1) * side + j];
      triangles.push(a, b, b + 1, a, b + 1, a + 1);
    }
    const [low, high] = [i * side, (i + 1) * side];
    triangles.push(high, low, foot, low + steps, high + steps, foot, i + 1, i, foot);
    triangles.push(steps * side + i, steps * side + i + 1, foot);
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** A drilled plate beside hills: half of the triangles each, about as many as asked for. */
export function largePart(triangles: number): { readonly surface: Surface; readonly holes: number } {
  const perCell = FACETS * (2 * RINGS) + 12;
  const holes = Math.round(triangles / 2 / perCell);
  const plate = drilledPlate(Array.from({ length: holes }, (_, place) => dividedHole(3 + (place % 40) / 10)));
  const rest = hills(Math.floor(Math.sqrt(triangles / 4)), holes * PITCH + 20);
  const shift = plate.positions.length / 3;
  const positions = new Float64Array(plate.positions.length + rest.positions.length);
  positions.set(plate.positions);
  positions.set(rest.positions, plate.positions.length);
  const all = new Uint32Array(plate.triangles.length + rest.triangles.length);
  all.set(plate.triangles);
  all.set(
    rest.triangles.map((vertex) => vertex + shift),
    plate.triangles.length,
  );
  return { surface: { positions, triangles: all }, holes };
}
