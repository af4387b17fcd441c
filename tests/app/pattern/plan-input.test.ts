import { describe, expect, test } from 'vitest';
import { hasSharesOfLoad, isWorthAPlan } from '../../../src/app/pattern/plan-input.ts';
import { FOUR, jointWith, planOf } from './joints-in-plan.ts';

const NO_MOMENT = { x: 0, y: 0, z: 0 };

describe('planInput', () => {
  test('numbers the screws and marks the ones with most pull', () => {
    // A moment about x lifts the side of positive y: screws 3 and 4 of a grid that begins below.
    const { screws } = planOf(FOUR, { moment_Nm: { ...NO_MOMENT, x: 1.3 } });
    expect(screws.map(({ number, y }) => [number, y])).toEqual([
      [1, -17],
      [2, -17],
      [3, 17],
      [4, 17],
    ]);
    expect(screws.map(({ hasMostPull }) => hasMostPull)).toEqual([false, false, true, true]);
  });
  test('marks none where all get the same', () => {
    const { screws } = planOf(FOUR);
    expect(screws.some(({ hasMostPull, hasMostShear }) => hasMostPull || hasMostShear)).toBe(false);
  });
  test.each([
    ['lower', { ...NO_MOMENT, x: 1.3 }, { x: 0, y: -1 }],
    ['upper', { ...NO_MOMENT, x: -1.3 }, { x: 0, y: 1 }],
    ['right', { ...NO_MOMENT, y: 0.7 }, { x: 1, y: 0 }],
    ['left', { ...NO_MOMENT, y: -0.7 }, { x: -1, y: 0 }],
  ])('lets the %s edge stay down under a moment of %o', (_, moment_Nm, down) => {
    const loads = { moment_Nm, pivot: { kind: 'edge' as const, x_mm: 41, y_mm: 23 } };
    const input = planOf(FOUR, loads);
    expect(input.staysDown).toEqual(down);
    expect(input.edge).toEqual({ x: 41, y: 23 });
  });
  test('has no edge where the part turns about the middle of the screws', () => {
    expect(planOf(FOUR, { moment_Nm: { ...NO_MOMENT, x: 1.3 } })).not.toHaveProperty('edge');
  });
});

describe('hasSharesOfLoad', () => {
  test('is so for several screws, also when each gets the whole', () => {
    expect(hasSharesOfLoad(jointWith(FOUR))).toBe(true);
  });
  test('is not so for one screw that is pulled at its centre', () => {
    expect(hasSharesOfLoad(jointWith({ kind: 'single' }))).toBe(false);
  });
  test('is so for one screw whose part turns about its edge', () => {
    const pivot = { kind: 'edge' as const, x_mm: 12, y_mm: 9 };
    expect(
      hasSharesOfLoad(jointWith({ kind: 'single' }, { at_mm: { x: 5, y: 0, z: 0 }, shear_N: 0, pivot })),
    ).toBe(true);
  });
});

describe('isWorthAPlan', () => {
  test('is so where there is more than one screw at the load', () => {
    expect(isWorthAPlan(jointWith({ kind: 'single' }))).toBe(false);
    expect(isWorthAPlan(jointWith({ kind: 'circular', count: 3, diameter_mm: 44 }))).toBe(true);
  });
});
