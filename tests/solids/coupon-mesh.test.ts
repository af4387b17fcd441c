import { describe, expect, test } from 'vitest';
import { couponMesh } from '../../src/solids/coupon-mesh.ts';
import type { Mesh } from '../../src/solids/mesh.ts';
import { cornersOf, meshFindings } from '../../src/solids/mesh-checks.ts';
import { CIRCLE_CORNERS } from '../../src/solids/outline.ts';
import { couponSet } from '../support/coupon-set.ts';
import { expectRelative } from '../support/published.ts';
import { crossingsIn } from '../support/self-intersection.ts';

const set = Object.entries(couponSet()).map(([name, coupon]) => ({ name, coupon, mesh: couponMesh(coupon) }));

/** Area of a polygon drawn round a circle over that of the circle, N · tan(π/N)/π. */
const ROUND_TO_POLYGON = (CIRCLE_CORNERS * Math.tan(Math.PI / CIRCLE_CORNERS)) / Math.PI;

describe.each(set)('the mesh of $name', ({ coupon, mesh }) => {
  const findings = meshFindings(mesh);
  test('is closed: each edge is gone along once each way', () => {
    expect(findings.openEdges).toBe(0);
  });
  test('has no triangle without area', () => {
    expect(findings.flatTriangles).toBe(0);
  });
  test('does not cut through itself', () => {
    expect(crossingsIn(mesh)).toBe(0);
  });
  test('looks outward and holds the volume of the formula, its circles as polygons', () => {
    const part = (symbol: string) =>
      coupon.volume.entries.find((entry) => entry.symbol === symbol)?.value ?? 0;
    const straight = part('block') + part('flange') + part('numbers');
    const round = part('boss') + part('rim') - part('bores');
    expectRelative(findings.volume, straight + ROUND_TO_POLYGON * round, 1e-9);
  });
  test('holds the volume of round bores and bosses but for the 0.04 % that 96 sides add to a circle', () => {
    expect(ROUND_TO_POLYGON - 1).toBeLessThan(4e-4);
    const round = coupon.volume.entries
      .filter(({ symbol }) => ['bores', 'boss', 'rim'].includes(symbol))
      .reduce((sum, { value }) => sum + value, 0);
    expect(Math.abs(findings.volume - coupon.volume.value)).toBeLessThan(4e-4 * round);
  });
  test('lies on the bed with its corner at the origin, and is as large as said', () => {
    expect(findings.box.least).toEqual([0, 0, 0]);
    const { x, y, z } = coupon.onBed;
    [x, y, z].forEach((size, axis) => {
      expectRelative(findings.box.greatest[axis] ?? 0, size);
    });
  });
  test('uses every vertex, each once', () => {
    const { positions, triangles } = mesh;
    expect(new Set(triangles).size).toBe(positions.length / 3);
    const places = Array.from({ length: positions.length / 3 }, (_, at) =>
      positions.slice(3 * at, 3 * at + 3).join(),
    );
    expect(new Set(places).size).toBe(places.length);
  });
});

type Across = readonly [number, number];

/** Distance from a point to a side, all seen along the bore. */
function distanceTo([px, py]: Across, [ax, ay]: Across, [bx, by]: Across): number {
  const [dx, dy] = [bx - ax, by - ay];
  const share = Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / (dx ** 2 + dy ** 2 || 1)));
  return Math.hypot(ax + share * dx - px, ay + share * dy - py);
}

/** Radius of the largest pin that goes in about a point: the nearest side of all walls, the faces left out. */
function pinIn(mesh: Mesh, axis: Across, [first, second, along]: readonly [0, 1 | 2, 1 | 2]): number {
  const walls = cornersOf(mesh).filter(([a, b, c]) => a[along] !== b[along] || b[along] !== c[along]);
  const sides = walls.flatMap(([a, b, c]) => [[a, b] as const, [b, c] as const, [c, a] as const]);
  return sides.reduce(
    (least, [a, b]) => Math.min(least, distanceTo(axis, [a[first], a[second]], [b[first], b[second]])),
    Number.POSITIVE_INFINITY,
  );
}

describe('a bore of the mesh', () => {
  test.each([
    ['hole-gauge-part-upright', [0, 1, 2]],
    ['hole-gauge-part-lying', [0, 2, 1]],
  ] as const)('of %s lets in a pin of exactly its drawn diameter', (name, axes) => {
    const { coupon, mesh } = set.find((entry) => entry.name === name) ?? {};
    if (!mesh || coupon?.kind !== 'hole-gauge') throw new Error(`no ${name}`);
    expect(coupon.bores.map(({ drawn }) => drawn)).toEqual([4.25, 4.35, 4.45, 4.55, 4.65, 4.75, 4.85]);
    for (const { at, drawn } of coupon.bores) expectRelative(2 * pinIn(mesh, at, axes), drawn);
  });
});

describe('the self-intersection test', () => {
  test('finds a mesh whose bore is moved into its neighbour', () => {
    const { mesh } = set.find(({ name }) => name === 'hole-gauge-part-upright') ?? {};
    if (!mesh) throw new Error('no gauge');
    const positions = mesh.positions.map((value, at) =>
      at % 3 === 0 && value > 20 && value < 30 ? value + 9 : value,
    );
    expect(crossingsIn({ ...mesh, positions })).toBeGreaterThan(0);
  });
});
