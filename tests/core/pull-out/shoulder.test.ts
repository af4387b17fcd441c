import { describe, expect, test } from 'vitest';
import { shoulderArea, shoulderPunch, shoulderYield } from '../../../src/core/pull-out/shoulder.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';

const SEATS = ['on-insert', 'on-plastic', 'over-gap', 'far-side'] as const;

describe('shoulderArea', () => {
  test('of a knurl of 6.86 over a hole of 5.5 mm is 13.2 mm² (hand calculation: π/4 · (47.06 − 30.25))', () => {
    // The cap head of the usual screw would fall through; the area alone is asked.
    const passed = situationOfNumbers({ knurl: 6.86, bore: 6.35 });
    const situation = { ...passed, clamped: { ...passed.clamped, clearanceHole: 5.5 } };
    expectPublished(shoulderArea(situation).value, '13.2');
  });
  test('is 0 for a hole as wide as the insert', () => {
    const passed = situationOfNumbers();
    expect(shoulderArea({ ...passed, clamped: { ...passed.clamped, clearanceHole: 5.01 } }).value).toBe(0);
  });
});

describe('shoulderYield', () => {
  test('of 57 MPa on 10.556 mm² is 602 N, for years 290 N (hand calculation, creep may leave 0.65/1.35)', () => {
    // π/4 · (25 − 11.56) = 10.556
    const found = shoulderYield.capacity(situationOfNumbers());
    expectPublished(found?.median.value ?? 0, '602');
    expectPublished(found?.characteristic.value ?? 0, '290');
  });
});

describe('shoulderPunch', () => {
  test('of 13.7 MPa, knurl 5, shoulder 2.3 mm is 495 N (hand calculation: 13.7 · π · 5 · 2.3)', () => {
    const found = shoulderPunch.capacity(situationOfNumbers({ floor: 2.3 }));
    expectPublished(found?.median.value ?? 0, '495');
  });
  test('grows with the thickness of the shoulder in proportion', () => {
    const force = (floor: number) => shoulderPunch.capacity(situationOfNumbers({ floor }))?.median.value ?? 0;
    expectRelative(force(4.6), 2 * force(2.3));
  });
});

test('both are loaded by the clamp force from the far side, and there alone', () => {
  for (const rule of [shoulderYield, shoulderPunch]) {
    expect(SEATS.map(rule.path)).toEqual(['none', 'none', 'none', 'clamp']);
  }
});
