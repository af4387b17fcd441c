import { describe, expect, test } from 'vitest';
import { NONE, neighboursOf, nextEdge } from '../../../src/core/hole-finding/neighbours.ts';
import fc from '../../support/fast-check.ts';

const of = (triangles: readonly number[], vertices = 9) =>
  Array.from(
    neighboursOf({ positions: new Float64Array(3 * vertices), triangles: Uint32Array.from(triangles) }),
  );

/** The same by looking at every pair of edges. */
function byPairs(triangles: readonly number[]): readonly number[] {
  const ends = triangles.map((from, edge) => ({ from, to: triangles[nextEdge(edge)] ?? 0 }));
  return ends.map(({ from, to }, edge) => {
    if (from === to) return NONE;
    const others = ends.flatMap((other, place) =>
      place !== edge &&
      Math.min(other.from, other.to) === Math.min(from, to) &&
      Math.max(other.from, other.to) === Math.max(from, to)
        ? [place]
        : [],
    );
    const [other = NONE] = others;
    return others.length === 1 && ends[other]?.from === to ? other : NONE;
  });
}

describe('neighboursOf', () => {
  test('joins the edges of two triangles that turn the same way round', () => {
    expect(of([0, 1, 2, 2, 1, 3])).toEqual([NONE, 3, NONE, 1, NONE, NONE]);
  });
  test('joins none where one of two is turned over', () => {
    expect(of([0, 1, 2, 1, 2, 3])).toEqual(Array.from({ length: 6 }, () => NONE));
  });
  test('joins none where three triangles meet', () => {
    expect(of([0, 1, 2, 1, 0, 3, 0, 1, 4])).toEqual(Array.from({ length: 9 }, () => NONE));
  });
  test('finds what looking at every pair finds, however badly the triangles hang together', () => {
    const anyTriangles = fc.array(fc.nat(6), { minLength: 3, maxLength: 60 });
    fc.assert(
      fc.property(anyTriangles, (corners) => {
        const triangles = corners.slice(0, corners.length - (corners.length % 3));
        expect(of(triangles)).toEqual(byPairs(triangles));
      }),
    );
  });
});
