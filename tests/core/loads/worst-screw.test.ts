import { describe, expect, test } from 'vitest';
import type { Pivot } from '../../../src/core/loads/out-of-plane.ts';
import type { ScrewPattern } from '../../../src/core/loads/pattern.ts';
import { type PartLoad, screwLoads } from '../../../src/core/loads/screw-loads.ts';
import { pullOnScrew, shearOnScrew } from '../../../src/core/loads/worst-screw.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const FOUR: ScrewPattern = { kind: 'rectangular', columns: 2, rows: 2, spacingX: 81, spacingY: 62 };
const SLANTED: ScrewPattern = {
  kind: 'free',
  positions: [
    { x: 3, y: 1 },
    { x: 21, y: 17 },
    { x: 44, y: 26 },
  ],
};
const OFF: PartLoad = {
  force: { x: 13, y: -29, pull: 71 },
  at: { x: 17, y: 9, z: 23 },
  moment: { x: 310, y: -170, z: 230 },
};
const EDGE: Pivot = { kind: 'edge', x: 57, y: 43 };

const CASES: readonly (readonly [string, ScrewPattern, PartLoad, Pivot])[] = [
  ['four screws about the centroid', FOUR, OFF, { kind: 'centroid' }],
  ['four screws about the edges', FOUR, OFF, EDGE],
  ['a slanting row about the centroid', SLANTED, OFF, { kind: 'centroid' }],
  ['a slanting row about the edges', SLANTED, { ...OFF, moment: { x: -3100, y: 900, z: 0 } }, EDGE],
  ['a ring of five', { kind: 'circular', count: 5, diameter: 61 }, OFF, { kind: 'centroid' }],
  ['one screw', { kind: 'single' }, { ...OFF, at: { x: 0, y: 0, z: 0 } }, EDGE],
];

describe('the most loaded screw', () => {
  test.each(CASES)('carries what screwLoads says, and leads to the load: %s', (_, pattern, load, pivot) => {
    const { pull, shear } = screwLoads(pattern, load, pivot);
    expect(pull.value).toBeGreaterThan(0);
    expectWays([pull, shear]);
    for (const derived of [pull, shear]) {
      for (const entry of derived.entries) expectRelative(wayTo(entry)?.value ?? 0, entry.value, 1e-9);
    }
  });
  test('without a load says so, free of binary dust', () => {
    const none = { force: { x: 0, y: 0, pull: 0 }, at: { x: 3, y: 4, z: 5 }, moment: { x: 0, y: 0, z: 0 } };
    const { pull, shear } = screwLoads(FOUR, none, { kind: 'centroid' });
    expect([pull.value, shear.value]).toEqual([0, 0]);
    expectWays([pull, shear]);
  });
  test('where the part presses everywhere is not pulled', () => {
    const { pull } = screwLoads(FOUR, { ...OFF, force: { x: 0, y: 0, pull: -900 } }, { kind: 'centroid' });
    expect(pull.value).toBe(0);
    expectWays([pull]);
  });
});

describe('pullOnScrew', () => {
  test('about the edge is 4800 N·m · 375/Σ50² and 375² on two rows of two: 6.29 kN (nasa-rp-1228)', () => {
    // Arms of 50 and 375 mm twice each: the centroid lies 212.5 mm from the edge.
    const pattern: ScrewPattern = { kind: 'rectangular', columns: 2, rows: 2, spacingX: 80, spacingY: 325 };
    const load: PartLoad = {
      force: { x: 0, y: 0, pull: 0 },
      at: { x: 0, y: 0, z: 0 },
      moment: { x: 4_800_000, y: 0, z: 0 },
    };
    const found = pullOnScrew({ pattern, load, pivot: { kind: 'edge', x: 60, y: 212.5 }, index: 3 });
    expectPublished(found.value / 1000, '6.29');
    expect(found.formula).toBe('F_z/n + M_x · L_y/S_y');
  });
});

describe('shearOnScrew', () => {
  test('of 10 kN at 100 mm on (±40, ±30) mm is 7.16 kN on the near screws', () => {
    const pattern: ScrewPattern = { kind: 'rectangular', columns: 2, rows: 2, spacingX: 80, spacingY: 60 };
    const load: PartLoad = {
      force: { x: 0, y: 10, pull: 0 },
      at: { x: 100, y: 0, z: 0 },
      moment: { x: 0, y: 0, z: 0 },
    };
    const { x, y } = shearOnScrew({ pattern, load, pivot: { kind: 'centroid' }, index: 1 });
    expectPublished(Math.hypot(x.value, y.value), '7.16');
    expect(x.formula).toBe('F_x/n − M_z · y_w/S_r');
  });
});
