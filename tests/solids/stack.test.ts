import { describe, expect, test } from 'vitest';
import { meshFindings } from '../../src/solids/mesh-checks.ts';
import { circle, type Outline, rectangle } from '../../src/solids/outline.ts';
import { stackMesh, type Wall } from '../../src/solids/stack.ts';
import { expectRelative } from '../support/published.ts';
import { crossingsIn } from '../support/self-intersection.ts';

const square = (side: number, [x, y]: readonly [number, number]): Outline => ({
  corners: rectangle(side, side).corners.map(([across, up]) => [across + x, up + y]),
});

const BASE: Wall = { from: 0, to: 4, foot: square(20, [0, 0]) };

function expectSound(walls: readonly Wall[], volume: number): void {
  const mesh = stackMesh(walls);
  const findings = meshFindings(mesh);
  expect(findings).toMatchObject({ openEdges: 0, flatTriangles: 0 });
  expect(crossingsIn(mesh)).toBe(0);
  expectRelative(findings.volume, volume, 1e-10);
}

describe('stackMesh', () => {
  test('makes a cube of twelve triangles', () => {
    const mesh = stackMesh([{ from: -1, to: 2, foot: square(3, [5, 7]) }]);
    expect([mesh.positions.length, mesh.triangles.length]).toEqual([3 * 8, 3 * 12]);
    expectSound([{ from: -1, to: 2, foot: square(3, [5, 7]) }], 27);
  });
  test('takes a blind, a through and a buried hollow out of a block', () => {
    expectSound(
      [
        BASE,
        { from: 1, to: 4, foot: square(3, [2, 2]) },
        { from: 0, to: 4, foot: square(5, [8, 3]) },
        { from: 1.5, to: 2.5, foot: square(4, [14, 13]) },
      ],
      1600 - 27 - 100 - 16,
    );
  });
  test('stands islands on a block, with hollows and islands in them', () => {
    expectSound(
      [
        BASE,
        { from: 4, to: 6, foot: square(12, [4, 4]) },
        { from: 4, to: 6, foot: square(8, [6, 6]) },
        { from: 4, to: 7, foot: square(2, [9, 9]) },
      ],
      1600 + 2 * (144 - 64) + 3 * 4,
    );
  });
  test('widens and narrows between two outlines by the frustum’s volume', () => {
    expectSound(
      [
        BASE,
        { from: 3, to: 4, foot: square(4, [6, 6]), top: square(6, [5, 5]) },
        { from: 4, to: 5, foot: square(2, [15, 15]), top: square(1, [15.5, 15.5]) },
      ],
      1600 - (16 + 36 + 24) / 3 + (4 + 1 + 2) / 3,
    );
  });
  test('goes through a level of another wall without a gap, straight or not', () => {
    const foot = square(4, [6, 6]);
    const top = square(7, [4.5, 4.5]);
    expectSound(
      [BASE, { from: 1, to: 4, foot, top }, { from: 2, to: 4, foot: square(2, [14, 14]) }],
      1600 - (3 * (16 + 49 + 28)) / 3 - 8,
    );
  });
  test('changes outline where one wall goes on from another', () => {
    const bore = circle(5, [10, 10]);
    const sides = (96 * Math.tan(Math.PI / 96)) / 4;
    expectSound(
      [BASE, { from: 1, to: 3, foot: bore }, { from: 3, to: 4, foot: bore, top: circle(7, [10, 10]) }],
      1600 - sides * (2 * 25 + (25 + 49 + 35) / 3),
    );
  });
  test('keeps every corner of rows of equal squares, whose sides lie on one line', () => {
    const row = [1, 4, 7, 10, 13, 16].map((x): Wall => ({ from: 2, to: 4, foot: square(2, [x, 9]) }));
    const raised = [1, 4, 7, 10, 13, 16].map((x): Wall => ({ from: 4, to: 5, foot: square(2, [x, 12]) }));
    const diagonal = [1, 3.5, 6].map((x): Wall => ({ from: 4, to: 5, foot: square(1, [x, x]) }));
    expectSound([BASE, ...row, ...raised, ...diagonal], 1600 - 6 * 8 + 6 * 4 + 3);
  });
  test('leaves out a wall without height', () => {
    expectSound([BASE, { from: 4, to: 4, foot: square(2, [3, 3]) }], 1600);
  });
});
