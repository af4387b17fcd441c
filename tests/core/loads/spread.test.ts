import { describe, expect, test } from 'vitest';
import { outOfPlanePulls } from '../../../src/core/loads/out-of-plane.ts';
import { centroidOf, type ScrewPosition } from '../../../src/core/loads/pattern.ts';
import { type PatternLoads, screwLoads } from '../../../src/core/loads/screw-loads.ts';
import { momentAlong, principalAxes } from '../../../src/core/loads/spread.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const place = fc.double({ min: -60, max: 60, noNaN: true });
const places = fc.array(fc.record({ x: place, y: place }), { minLength: 1, maxLength: 9 });
const moment = fc.double({ min: -900, max: 900, noNaN: true });

const spreadAlong = (positions: readonly ScrewPosition[]) =>
  principalAxes(positions).map(({ spread }) => spread);
/** Sum of a part of every pull. */
const total = (pulls: readonly number[], of: (pull: number, index: number) => number) =>
  pulls.reduce((sum, pull, index) => sum + of(pull, index), 0);

describe('principalAxes', () => {
  test('of a rectangle are its own: 4 · 17² and 4 · 11² mm²', () => {
    const corners = [17, -17].flatMap((x) => [11, -11].map((y) => ({ x, y })));
    expect(spreadAlong(corners)).toEqual([4 * 17 ** 2, 4 * 11 ** 2]);
    expect(principalAxes(corners).map(({ direction }) => direction)).toEqual([
      { x: 1, y: 0 },
      { x: -0, y: 1 },
    ]);
  });
  test('of screws on a diagonal have all their spread along it', () => {
    const [along = 0, across] = spreadAlong([
      { x: 3, y: 3 },
      { x: -5, y: -5 },
    ]);
    expectRelative(along, 2 * 32);
    expect(across).toBe(0);
  });
  test('of one screw have none', () => {
    expect(spreadAlong([{ x: 7, y: -2 }])).toEqual([0, 0]);
  });
  test('keep the polar moment, and their places do not depend on each other', () => {
    fc.assert(
      fc.property(places, (positions) => {
        const [one, other] = principalAxes(positions);
        const centre = centroidOf(positions);
        const polar = positions.reduce((sum, { x, y }) => sum + (x - centre.x) ** 2 + (y - centre.y) ** 2, 0);
        const product = (one?.places ?? []).reduce(
          (sum, at, index) => sum + at * (other?.places[index] ?? 0),
          0,
        );
        expect(Math.abs((one?.spread ?? 0) + (other?.spread ?? 0) - polar)).toBeLessThan(1e-5);
        expect(Math.abs(product)).toBeLessThan(1e-5);
      }),
    );
  });
});

describe('outOfPlanePulls about the centroid', () => {
  test('of two screws on a slanting line carry a moment across it: M/(2 · 20 · √2) each way', () => {
    const pulls = outOfPlanePulls(
      [
        { x: 20, y: 20 },
        { x: -20, y: -20 },
      ],
      { pull: 0, aboutX: 500, aboutY: -500 },
      { kind: 'centroid' },
    );
    // The moment across the line is 500 · √2 N·mm, the screws are 40 · √2 mm apart.
    expectRelative(pulls[0] ?? 0, 500 / 40);
    expectRelative(pulls[1] ?? 0, -500 / 40);
  });
  test('balance the pull and both moments of any pattern that has arms for them', () => {
    fc.assert(
      fc.property(places, moment, moment, (positions, aboutX, aboutY) => {
        fc.pre(Math.min(...spreadAlong(positions)) > 1);
        const centre = centroidOf(positions);
        const pulls = outOfPlanePulls(positions, { pull: 71, aboutX, aboutY }, { kind: 'centroid' });
        const arm = (index: number): ScrewPosition => positions[index] ?? centre;
        expect(Math.abs(total(pulls, (pull) => pull) - 71)).toBeLessThan(1e-6);
        expect(Math.abs(total(pulls, (pull, i) => pull * (arm(i).y - centre.y)) - aboutX)).toBeLessThan(1e-5);
        expect(Math.abs(total(pulls, (pull, i) => -pull * (arm(i).x - centre.x)) - aboutY)).toBeLessThan(
          1e-5,
        );
      }),
    );
  });
  test('turn with the pattern: the same pulls for screws and moment turned by 30°', () => {
    const screws = [
      { x: 12, y: 3 },
      { x: -7, y: 15 },
      { x: -9, y: -11 },
      { x: 14, y: -4 },
    ];
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const turned = (v: ScrewPosition): ScrewPosition => ({ x: c * v.x - s * v.y, y: s * v.x + c * v.y });
    const about = turned({ x: 310, y: -170 });
    const plain = outOfPlanePulls(screws, { pull: 0, aboutX: 310, aboutY: -170 }, { kind: 'centroid' });
    const after = outOfPlanePulls(
      screws.map(turned),
      { pull: 0, aboutX: about.x, aboutY: about.y },
      { kind: 'centroid' },
    );
    for (const [index, pull] of plain.entries()) expectRelative(after[index] ?? 0, pull, 1e-9);
  });
});

describe('momentAlong', () => {
  test('is what lifts the positive side: Mx along y, −My along x', () => {
    expect(momentAlong({ direction: { x: 0, y: 1 } }, { x: 310, y: 170 })).toBe(310);
    expect(momentAlong({ direction: { x: 1, y: 0 } }, { x: 310, y: 170 })).toBe(-170);
  });
});

describe('what the screws of a pattern have to hold', () => {
  const load = {
    force: { x: 13, y: -7, pull: 91 },
    at: { x: 4, y: -9, z: 21 },
    moment: { x: 310, y: -190, z: 270 },
  };
  const grid = (spacingX: number, spacingY: number) =>
    ({ kind: 'rectangular', columns: 3, rows: 2, spacingX, spacingY }) as const;
  const forces = (loads: PatternLoads) => loads.screws.flatMap(({ pull, shear }) => [pull, shear]);
  const plain = forces(screwLoads(grid(23, 31), load, { kind: 'centroid' }));
  test('is the same where every length is k times as long, and every moment k times as large', () => {
    const k = 3.7;
    const large = screwLoads(
      grid(23 * k, 31 * k),
      {
        ...load,
        at: { x: 4 * k, y: -9 * k, z: 21 * k },
        moment: { x: 310 * k, y: -190 * k, z: 270 * k },
      },
      { kind: 'centroid' },
    );
    for (const [index, force] of forces(large).entries()) expectRelative(force, plain[index] ?? 0, 1e-9);
  });
  test('grows with the loads', () => {
    const twice = screwLoads(
      grid(23, 31),
      { ...load, force: { x: 26, y: -14, pull: 182 }, moment: { x: 620, y: -380, z: 540 } },
      { kind: 'centroid' },
    );
    for (const [index, force] of forces(twice).entries())
      expectRelative(force, 2 * (plain[index] ?? 0), 1e-9);
  });
});
