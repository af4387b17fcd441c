import { describe, expect, test } from 'vitest';
import type { Mesh } from '../../src/solids/mesh.ts';
import { meshFindings } from '../../src/solids/mesh-checks.ts';
import { rectangle } from '../../src/solids/outline.ts';
import { stackMesh } from '../../src/solids/stack.ts';
import { expectRelative } from '../support/published.ts';
import { crossingsIn, cutsInto } from '../support/self-intersection.ts';

const BLOCK = stackMesh([{ from: 1, to: 5, foot: rectangle(2, 3) }]);
const withTriangles = (triangles: readonly number[]): Mesh => ({
  positions: BLOCK.positions,
  triangles: Uint32Array.from(triangles),
});

describe('meshFindings', () => {
  test('measures a block of 2 × 3 × 4', () => {
    const { volume, ...rest } = meshFindings(BLOCK);
    expectRelative(volume, 24);
    expect(rest).toEqual({ openEdges: 0, flatTriangles: 0, box: { least: [0, 0, 1], greatest: [2, 3, 5] } });
  });
  test('finds the three edges round a triangle that is missing', () => {
    expect(meshFindings(withTriangles(Array.from(BLOCK.triangles.slice(3)))).openEdges).toBe(3);
  });
  test('finds a triangle that is there twice', () => {
    expect(
      meshFindings(withTriangles([...BLOCK.triangles, ...BLOCK.triangles.slice(0, 3)])).openEdges,
    ).toBeGreaterThan(0);
  });
  test('finds one triangle turned round', () => {
    const [a = 0, b = 0, c = 0, ...rest] = BLOCK.triangles;
    expect(meshFindings(withTriangles([a, c, b, ...rest])).openEdges).toBeGreaterThan(0);
  });
  test('gives a negative volume for a mesh turned inside out', () => {
    const inside = meshFindings(withTriangles([...BLOCK.triangles].reverse()));
    expect(inside.openEdges).toBe(0);
    expectRelative(inside.volume, -24);
  });
  test('finds a triangle without area', () => {
    const positions = Float64Array.from([...BLOCK.positions, 1, 0, 1]);
    const flat = { positions, triangles: Uint32Array.from([0, 8, 1]) };
    expect(meshFindings(flat).flatTriangles).toBe(1);
  });
});

describe('the test for triangles that cut into each other', () => {
  const FLAT = [
    [0, 0, 0],
    [4, 0, 0],
    [0, 4, 0],
  ] as const;
  test.each<[string, boolean, readonly (readonly [number, number, number])[]]>([
    [
      'pierces it',
      true,
      [
        [1, 1, -1],
        [1, 1, 1],
        [2, 1, 3],
      ],
    ],
    [
      'pierces it from a shared corner',
      true,
      [
        [0, 0, 0],
        [3, 1, -1],
        [1, 3, 1.5],
      ],
    ],
    [
      'lies over it in its plane',
      true,
      [
        [1, 1, 0],
        [3, 3, 0],
        [0.5, 3, 0],
      ],
    ],
    [
      'is folded onto it over a shared side',
      true,
      [
        [0, 0, 0],
        [4, 0, 0],
        [1, 1, 0],
      ],
    ],
    [
      'shares a side',
      false,
      [
        [0, 0, 0],
        [4, 0, 0],
        [1, 1, 2],
      ],
    ],
    [
      'goes on from a side in its plane',
      false,
      [
        [4, 0, 0],
        [0, 4, 0],
        [4, 4, 0],
      ],
    ],
    [
      'shares a corner',
      false,
      [
        [0, 0, 0],
        [-1, -2, 1],
        [-2, 1, 3],
      ],
    ],
    [
      'floats above it',
      false,
      [
        [1, 1, 0.1],
        [3, 1, 0.1],
        [1, 2, 0.1],
      ],
    ],
    [
      'lies beside it in its plane',
      false,
      [
        [3, 3, 0],
        [5, 3, 0],
        [3, 5, 0],
      ],
    ],
  ])('says of one that %s: %s', (_what, cuts, [a, b, c]) => {
    if (!a || !b || !c) throw new Error('three corners');
    expect(cutsInto(FLAT, [a, b, c])).toBe(cuts);
    expect(cutsInto([a, b, c], FLAT)).toBe(cuts);
  });
  test('finds two blocks that stand in each other', () => {
    const moved = BLOCK.positions.map((value, at) => value + 0.7 + 0.4 * (at % 3));
    const both: Mesh = {
      positions: Float64Array.from([...BLOCK.positions, ...moved]),
      triangles: Uint32Array.from([...BLOCK.triangles, ...BLOCK.triangles.map((vertex) => vertex + 8)]),
    };
    expect(meshFindings(both).openEdges).toBe(0);
    expect(crossingsIn(both)).toBeGreaterThan(0);
  });
});
