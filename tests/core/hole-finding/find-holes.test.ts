import { describe, expect, test } from 'vitest';
import { findHoles } from '../../../src/core/hole-finding/find-holes.ts';
import { depthFromFace, type FoundHole } from '../../../src/core/hole-finding/hole.ts';
import type { Surface } from '../../../src/core/hole-finding/surface.ts';
import {
  blind,
  type Cell,
  drilledPlate,
  type Move,
  moved,
  movedSurface,
  PITCH,
  THICKNESS,
  through,
} from '../../support/drilled-plate.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const holesOf = (cells: readonly Cell[]) => findHoles(drilledPlate(cells)).holes;

function theHole(surface: Surface): FoundHole {
  const { holes, total } = findHoles(surface);
  const [hole] = holes;
  if (hole === undefined || total !== 1) throw new Error(`${total} holes instead of one`);
  return hole;
}

const only = (cell: Cell) => theHole(drilledPlate([cell]));

/** Places and directions are compared in millimetres, or as parts of 1. */
function expectNear(a: { x: number; y: number; z: number }, b: readonly number[], room = 1e-9): void {
  const apart = Math.hypot(a.x - (b[0] ?? 0), a.y - (b[1] ?? 0), a.z - (b[2] ?? 0));
  expect(apart, `${JSON.stringify(a)} against ${String(b)}`).toBeLessThanOrEqual(room);
}

describe('findHoles in a plate', () => {
  test.each([6, 7, 8, 12, 17, 36, 64, 129, 400])('finds a through hole of %d facets, as drawn', (facets) => {
    const hole = only(through(4.3, facets));
    expectRelative(hole.cornerDiameter, 4.3, 1e-9);
    // The middle of a side is at cos(π/N) of the corners.
    expectRelative(hole.acrossFlats, 4.3 * Math.cos(Math.PI / facets), 1e-9);
    expectRelative(hole.depth, THICKNESS, 1e-9);
    expectRelative(hole.depthAllRound, THICKNESS, 1e-9);
    expectRelative(hole.turn, 2 * Math.PI, 1e-9);
    expect(hole.chamfers).toEqual({ mouth: 0, far: 0 });
    expect(hole).toMatchObject({ facets, lie: 'vertical', ends: { mouth: 'open', far: 'open' } });
    expectNear(hole.mouth, [0, 0, THICKNESS]);
    expectNear(hole.direction, [0, 0, -1]);
  });
  test.each([6, 11, 24, 400])('finds a blind hole of %d facets with its mouth and its floor', (facets) => {
    const hole = only(blind(5.1, 6.7, facets));
    expectRelative(hole.cornerDiameter, 5.1, 1e-9);
    expectRelative(hole.depth, 6.7, 1e-9);
    expect(hole).toMatchObject({ facets, ends: { mouth: 'open', far: 'closed' } });
    expectNear(hole.mouth, [0, 0, THICKNESS]);
    expectNear(hole.direction, [0, 0, -1]);
  });
  test('lists several by diameter, each in its place', () => {
    const holes = holesOf([through(5.6, 32), blind(3.2, 4.4, 24), blind(4.1, 7.3, 48)]);
    expect(holes.map(({ facets }) => facets)).toEqual([24, 48, 32]);
    holes.forEach(({ mouth }, place) => {
      expectNear(mouth, [[PITCH, 2 * PITCH, 0][place] ?? 0, 0, THICKNESS]);
    });
  });
  test('counts all and lists two hundred', () => {
    const cells = Array.from({ length: 207 }, (_, place) => blind(2 + place / 100, 5.5, 8));
    const { holes, total } = findHoles(drilledPlate(cells));
    expect(total).toBe(207);
    expect(holes).toHaveLength(200);
    expectRelative(holes.at(-1)?.cornerDiameter ?? 0, 3.99, 1e-9);
  });
});

describe('findHoles in stepped holes', () => {
  const rings = (...pairs: readonly (readonly [number, number])[]) =>
    pairs.map(([diameter, height]) => ({ radius: diameter / 2, height }));
  test('tells the chamfer of the mouth apart from the wall, and counts both from the face', () => {
    const hole = only({ facets: 32, rings: rings([5.2, 10], [4.2, 9.5], [4.2, 3.1], [0, 3.1]) });
    expectRelative(hole.cornerDiameter, 4.2, 1e-9);
    expectRelative(hole.depth, 6.4, 1e-9);
    expectRelative(hole.chamfers.mouth, 0.5, 1e-9);
    expectRelative(depthFromFace(hole), 6.9, 1e-9);
    expectNear(hole.mouth, [0, 0, 9.5]);
    expect(hole.ends).toEqual({ mouth: 'open', far: 'closed' });
  });
  test('finds different chamfers at both mouths of a through hole, whichever way it lies', () => {
    const plate = drilledPlate([{ facets: 19, rings: rings([5.1, 10], [4.3, 9.3], [4.3, 0.6], [5.5, 0]) }]);
    for (const angle of [0, 2.5]) {
      const hole = theHole(movedSurface(plate, { axis: [1, 0.2, 0], angle, scale: 1, shift: [5, -7, 9] }));
      const [mouth, far] = angle === 0 ? [0.7, 0.6] : [0.6, 0.7];
      expectRelative(hole.chamfers.mouth, mouth, 1e-6);
      expectRelative(hole.chamfers.far, far, 1e-6);
      expectRelative(depthFromFace(hole), 10, 1e-6);
    }
  });
  test.each([
    ['a countersink, deeper than half of the radius', rings([8.2, 10], [4.2, 8], [4.2, 3.1], [0, 3.1])],
    ['a wider bore over a cone', rings([6.2, 10], [6.2, 8], [4.2, 7.5], [4.2, 3.1], [0, 3.1])],
    ['a face without anything', rings([4.2, 10], [4.2, 3.1], [0, 3.1])],
  ])('takes for no chamfer %s', (_what, ringsOfHole) => {
    const [hole] = holesOf([{ facets: 32, rings: ringsOfHole }]);
    expectRelative(hole?.cornerDiameter ?? 0, 4.2, 1e-9);
    expect(hole?.chamfers).toEqual({ mouth: 0, far: 0 });
  });
  test('leaves the cone of a drill out of the depth', () => {
    // 118° at the tip: the cone is r/tan(59°) deep.
    const tip = 2.1 / Math.tan((59 * Math.PI) / 180);
    const hole = only({ facets: 40, rings: rings([4.2, 10], [4.2, 4], [0, 4 - tip]) });
    expectRelative(hole.depth, 6, 1e-9);
    expect(hole).toMatchObject({ facets: 40, ends: { mouth: 'open', far: 'closed' } });
  });
  test('gives a counterbore and its bore as two holes that know each other', () => {
    const holes = holesOf([{ facets: 28, rings: rings([8.4, 10], [8.4, 6.2], [4.4, 6.2], [4.4, 0]) }]);
    expect(holes.map(({ ends }) => ends)).toEqual([
      { mouth: 'wider', far: 'open' },
      { mouth: 'open', far: 'narrower' },
    ]);
    expectRelative(holes[0]?.depth ?? 0, 6.2, 1e-9);
    expectRelative(holes[1]?.depth ?? 0, 3.8, 1e-9);
  });
  test('finds the wall over a rounded bottom', () => {
    const corner = Array.from({ length: 9 }, (_, step): readonly [number, number] => {
      const angle = (step * Math.PI) / 16;
      return [5 - 2 * (1 - Math.cos(angle)), 4 - Math.sin(angle)];
    });
    const hole = only({ facets: 36, rings: rings([5, 10], ...corner, [0, 3]) });
    expectRelative(hole.cornerDiameter, 5, 1e-9);
    expectRelative(hole.depth, 6, 1e-9);
    expect(hole.ends.far).toBe('closed');
  });
  test('finds the hole of a boss and not the boss', () => {
    const hole = only({
      facets: 30,
      rings: rings([9.2, 10], [9.2, 18], [4.6, 18], [4.6, 7.5], [0, 7.5]),
    });
    expectRelative(hole.cornerDiameter, 4.6, 1e-9);
    expectRelative(hole.depth, 10.5, 1e-9);
  });
  test.each<[string, Cell]>([
    ['a boss', { facets: 30, rings: rings([6.1, 10], [6.1, 17], [0, 17]) }],
    ['a countersink', { facets: 30, rings: rings([9, 10], [4, 5], [0, 5]) }],
    ['a tapered hole of 3° each side', { facets: 30, rings: rings([5, 10], [4.371, 4], [0, 4]) }],
    ['a square hole', { facets: 4, rings: rings([5, 10], [5, 4], [0, 4]) }],
    [
      'half a ball',
      {
        facets: 48,
        rings: Array.from({ length: 13 }, (_, step) => ({
          radius: 4 * Math.cos((step * Math.PI) / 24) * Number(step < 12),
          height: 10 - 4 * Math.sin((step * Math.PI) / 24),
        })),
      },
    ],
  ])('does not count %s', (_what, cell) => {
    expect(holesOf([cell])).toEqual([]);
  });
  test('finds nothing on a surface without triangles', () => {
    const none = { positions: new Float64Array(), triangles: new Uint32Array() };
    expect(findHoles(none)).toEqual({ holes: [], total: 0, isInsideOut: false });
  });
});

describe('the laws of findHoles', () => {
  const side = fc.double({ min: -1, max: 1, noNaN: true });
  const anyMove: fc.Arbitrary<Move> = fc.record({
    axis: fc.tuple(side, side, side).filter((axis) => Math.hypot(...axis) > 0.1),
    angle: fc.double({ min: -3, max: 3, noNaN: true }),
    scale: fc.double({ min: 0.05, max: 25.4, noNaN: true }),
    shift: fc
      .tuple(side, side, side)
      .map((shift) => shift.map((value) => 300 * value) as [number, number, number]),
  });
  const anyCell = fc
    .record({
      facets: fc.integer({ min: 6, max: 100 }),
      diameter: fc.double({ min: 1.5, max: 15, noNaN: true }),
      depth: fc.double({ min: 1, max: 9, noNaN: true }),
      isThrough: fc.boolean(),
    })
    .map(({ facets, diameter, depth, isThrough }) => ({
      cell: isThrough ? through(diameter, facets) : blind(diameter, depth, facets),
      diameter,
      depth: isThrough ? THICKNESS : depth,
    }));

  test('turned, scaled and shifted, a hole keeps its facets and ends; lengths go with the scale', () => {
    fc.assert(
      fc.property(anyCell, anyMove, ({ cell, diameter, depth }, move) => {
        const hole = theHole(movedSurface(drilledPlate([cell]), move));
        expectRelative(hole.cornerDiameter, move.scale * diameter, 1e-6);
        expectRelative(hole.acrossFlats, move.scale * diameter * Math.cos(Math.PI / cell.facets), 1e-6);
        expectRelative(hole.depth, move.scale * depth, 1e-6);
        expect(hole.facets).toBe(cell.facets);
        const isThrough = cell.rings.at(-1)?.radius !== 0;
        expect(hole.ends).toEqual({ mouth: 'open', far: isThrough ? 'open' : 'closed' });
        const top = moved([0, 0, THICKNESS], move);
        const bottom = moved([0, 0, 0], move);
        const atBottom = isThrough && bottom[2] > top[2];
        expectNear(hole.mouth, atBottom ? bottom : top, 1e-6 * move.scale * PITCH);
        const inward = moved([0, 0, atBottom ? 1 : -1], { ...move, scale: 1, shift: [0, 0, 0] });
        expectNear(hole.direction, inward, 1e-6);
      }),
    );
  });
  test('the order of the triangles and of their corners does not matter', () => {
    const { positions, triangles } = drilledPlate([
      through(5.5, 20),
      blind(3.4, 6.1, 33),
      blind(7.7, 2.3, 9),
    ]);
    const plain = findHoles({ positions, triangles });
    const all = Array.from({ length: triangles.length / 3 }, (_, face) =>
      Array.from(triangles.subarray(3 * face, 3 * face + 3)),
    );
    fc.assert(
      fc.property(fc.shuffledSubarray(all, { minLength: all.length }), fc.nat(2), (shuffled, turn) => {
        const turned = shuffled.map((corners) => [...corners.slice(turn), ...corners.slice(0, turn)]);
        const found = findHoles({ positions, triangles: Uint32Array.from(turned.flat()) });
        expect(found.holes.map(({ facets, ends, lie }) => ({ facets, ends, lie }))).toEqual(
          plain.holes.map(({ facets, ends, lie }) => ({ facets, ends, lie })),
        );
        found.holes.forEach((hole, place) => {
          const same = plain.holes[place];
          expectRelative(hole.cornerDiameter, same?.cornerDiameter ?? 0, 1e-9);
          expectNear(hole.mouth, [same?.mouth.x ?? 0, same?.mouth.y ?? 0, same?.mouth.z ?? 0], 1e-7);
        });
      }),
      { numRuns: 30 },
    );
  });
  test('a surface wound the wrong way round gives the same holes, and says so', () => {
    const right = drilledPlate([through(5.5, 20), blind(3.4, 6.1, 33)]);
    const wrong = { ...right, triangles: right.triangles.toReversed() };
    const [one, other] = [findHoles(right), findHoles(wrong)];
    expect([one.isInsideOut, other.isInsideOut]).toEqual([false, true]);
    expect(other.holes.map(({ facets, ends }) => ({ facets, ends }))).toEqual(
      one.holes.map(({ facets, ends }) => ({ facets, ends })),
    );
  });
  test.each([
    [4, 'vertical'],
    [6, 'oblique'],
    [41, 'oblique'],
    [84, 'oblique'],
    [86, 'horizontal'],
    [90, 'horizontal'],
  ])('a hole leaning by %d° is %s', (degrees, lie) => {
    const move: Move = { axis: [0.3, -0.7, 0], angle: (degrees * Math.PI) / 180, scale: 1, shift: [0, 0, 0] };
    const hole = theHole(movedSurface(drilledPlate([blind(4.4, 5.2, 18)]), move));
    expect(hole.lie).toBe(lie);
    expectRelative(hole.tilt, (degrees * Math.PI) / 180, 1e-6);
  });
});
