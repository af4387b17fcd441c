import { describe, expect, test } from 'vitest';
import {
  areaCentroid,
  inPlaneForces,
  polarMoment,
  type WeightedScrew,
} from '../../../src/core/loads/in-plane.ts';
import { edgeTensions, outOfPlanePulls } from '../../../src/core/loads/out-of-plane.ts';
import { screwPositions } from '../../../src/core/loads/pattern.ts';
import { momentsAbout, screwLoads } from '../../../src/core/loads/screw-loads.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const sizes = (forces: readonly { x: number; y: number }[]) => forces.map(({ x, y }) => Math.hypot(x, y));
const equal = (positions: readonly { x: number; y: number }[]): WeightedScrew[] =>
  positions.map((position) => ({ ...position, area: 1 }));

/** Six bolts of unequal size after Niu ch. 9: the source's own lengths and newtons. */
const UNEQUAL: readonly WeightedScrew[] = [
  [1, 1, 0.375],
  [-1, 1, 0.25],
  [-1, -1, 0.25],
  [1, 5, 0.375],
  [0, 5, 0.25],
  [10, 2, 0.375],
].map(([x = 0, y = 0, diameter = 0]) => ({ x, y, area: (Math.PI / 4) * diameter ** 2 }));

describe('inPlaneForces', () => {
  const corners = equal([
    { x: 75, y: 60 },
    { x: 75, y: -60 },
    { x: -75, y: 60 },
    { x: -75, y: -60 },
  ]);
  test.each([
    ['group.inplane.8-7.FA, near bolts', 0, '21.0'],
    ['group.inplane.8-7.FC, far bolts', 2, '14.8'],
  ])('%s (shigley, Example 8-7) carries %d: %s kN', (_id, index, printed) => {
    const forces = sizes(inPlaneForces(corners, { x: 0, y: 16_000, moment: 6_800_000 }));
    const force = (forces[index] ?? 0) / 1000;
    if (printed === '14.8') expectRelative(force, 14.8, 0.1 / 14.8);
    else expectPublished(force, printed);
  });
  test('group.inplane.line.8-48: the outer of three bolts in a line carries 2.343 F (shigley 8th ed., 8-48)', () => {
    const line = equal([
      { x: -50, y: 0 },
      { x: 0, y: 0 },
      { x: 50, y: 0 },
    ]);
    expectPublished(Math.max(...sizes(inPlaneForces(line, { x: 0, y: 1, moment: 201 }))), '2.343');
  });
  test('group.inplane.10kN: 10 kN at 100 mm on (±40, ±30) mm gives 7.16 kN', () => {
    const four = equal(
      screwPositions({ kind: 'rectangular', columns: 2, rows: 2, spacingX: 80, spacingY: 60 }),
    );
    expectPublished(Math.max(...sizes(inPlaneForces(four, { x: 0, y: 10, moment: 1000 }))), '7.16');
  });
  test('group.area-weighted.xc: the centroid of unequal areas lies at 2.6 / 2.4 (Niu ch. 9)', () => {
    const centre = areaCentroid(UNEQUAL);
    expectPublished(centre.x, '2.6');
    expectPublished(centre.y, '2.4');
  });
  test.each([
    ['group.area-weighted.bolt1', 0, 2493],
    ['group.area-weighted.bolt4', 3, 2507],
    ['group.area-weighted.bolt6', 5, 1451],
  ])('%s (Niu ch. 9): bolt %d within 0.3 %% of %d N', (_id, index, printed) => {
    const forces = sizes(inPlaneForces(UNEQUAL, { x: 0, y: -10_000, moment: 10_641 }));
    expectRelative(forces[index] ?? 0, printed, 0.003);
  });
  const place = fc.double({ min: -90, max: 90, noNaN: true });
  const places = fc.array(fc.record({ x: place, y: place }), { minLength: 2, maxLength: 9 });
  test('balances the load: forces add up to it, and their moment about the centroid too', () => {
    fc.assert(
      fc.property(places, fc.double({ min: -500, max: 500, noNaN: true }), (positions, moment) => {
        const screws = equal(positions);
        fc.pre(polarMoment(screws) > 1);
        const forces = inPlaneForces(screws, { x: 37, y: -11, moment });
        const centre = areaCentroid(screws);
        const sum = forces.reduce((total, { x }) => total + x, 0);
        const turned = forces.reduce((total, force, index) => {
          const { x = 0, y = 0 } = screws[index] ?? {};
          return total + (x - centre.x) * force.y - (y - centre.y) * force.x;
        }, 0);
        expect(Math.abs(sum - 37)).toBeLessThan(1e-9);
        expect(Math.abs(turned - moment)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('outOfPlanePulls', () => {
  test('12 kN at 400 mm on rows at 50 and 375 mm gives 6.29 kN on a top bolt (Khurmi and Gupta, from memory)', () => {
    const tensions = edgeTensions(12 * 400, [50, 50, 375, 375]);
    expectPublished(tensions[3] ?? 0, '6.29');
  });
  test('group.outofplane.equiv: 6.29 kN with 3 kN of shear act like 7.49 kN (from memory)', () => {
    const [, , , top = 0] = edgeTensions(12 * 400, [50, 50, 375, 375]);
    expectPublished(0.5 * (top + Math.sqrt(top ** 2 + 4 * 3 ** 2)), '7.49');
  });
  const four = screwPositions({ kind: 'rectangular', columns: 2, rows: 2, spacingX: 34, spacingY: 22 });
  test('about the centroid the pulls add up to the pull and to the moment', () => {
    const pulls = outOfPlanePulls(four, { pull: 91, aboutX: 740, aboutY: -310 }, { kind: 'centroid' });
    expectRelative(
      pulls.reduce((sum, pull) => sum + pull, 0),
      91,
    );
    expectRelative(
      pulls.reduce((sum, pull, index) => sum + pull * (four[index]?.y ?? 0), 0),
      740,
    );
    expectRelative(
      pulls.reduce((sum, pull, index) => sum - pull * (four[index]?.x ?? 0), 0),
      -310,
    );
  });
  test('about the edge the lifted side carries most and no screw is pressed', () => {
    const pulls = outOfPlanePulls(four, { pull: 0, aboutX: 740, aboutY: 0 }, { kind: 'edge', x: 25, y: 19 });
    expect(Math.min(...pulls)).toBeGreaterThan(0);
    expect(pulls[2]).toBeGreaterThan(pulls[0] ?? 0);
  });
  test('one screw carries a moment by its distance to the edge: M/L', () => {
    const [pull = 0] = outOfPlanePulls(
      [{ x: 0, y: 0 }],
      { pull: 13, aboutX: 620, aboutY: 0 },
      { kind: 'edge', x: 7, y: 15.5 },
    );
    expectRelative(pull, 13 + 620 / 15.5);
  });
});

describe('screwLoads', () => {
  test('turns a force off the centre into moments (statics: (r − c) × F)', () => {
    const moments = momentsAbout(
      { force: { x: 3, y: 5, pull: 7 }, at: { x: 11, y: 13, z: 17 }, moment: { x: 0.5, y: 0.25, z: 0.125 } },
      { x: 1, y: 2 },
    );
    expect(moments).toEqual({
      x: 0.5 + 11 * 7 - 17 * 5,
      y: 0.25 + 17 * 3 - 10 * 7,
      z: 0.125 + 10 * 5 - 11 * 3,
    });
  });
  test('a single screw under a centred load carries exactly that load', () => {
    const loads = screwLoads(
      { kind: 'single' },
      { force: { x: 30, y: 40, pull: 180 }, at: { x: 0, y: 0, z: 0 }, moment: { x: 0, y: 0, z: 0 } },
      { kind: 'centroid' },
    );
    expectRelative(loads.pull.value, 180);
    expectRelative(loads.shear.value, 50);
  });
  test('a ring of screws shares a centred pull evenly', () => {
    const loads = screwLoads(
      { kind: 'circular', count: 5, diameter: 61 },
      { force: { x: 0, y: 0, pull: 435 }, at: { x: 0, y: 0, z: 9 }, moment: { x: 0, y: 0, z: 0 } },
      { kind: 'edge', x: 40, y: 40 },
    );
    for (const screw of loads.screws) expectRelative(screw.pull, 87);
  });
  test('a part that presses pulls at no screw', () => {
    const loads = screwLoads(
      { kind: 'single' },
      { force: { x: 0, y: 0, pull: -90 }, at: { x: 0, y: 0, z: 0 }, moment: { x: 0, y: 0, z: 0 } },
      { kind: 'centroid' },
    );
    expect(loads.pull.value).toBe(0);
  });
});
