import { describe, expect, test } from 'vitest';
import {
  normalDensity,
  normalProbability,
  normalQuantile,
} from '../../../src/core/numerics/normal-distribution.ts';
import fixture from '../../fixtures/mpmath/distributions.json';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

describe('normalProbability', () => {
  test.each(fixture.normalProbability)('at $x is $expected (mpmath, 60 digits)', ({ x, expected }) => {
    expectRelative(normalProbability(x), Number(expected), 1e-15);
  });
  test('and its mirror image add up to one', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (x) => {
        expectRelative(normalProbability(x) + normalProbability(-x), 1, 2e-16);
      }),
    );
  });
  test('does not fall as x rises', () => {
    const x = fc.double({ min: -38, max: 9, noNaN: true });
    fc.assert(
      fc.property(x, fc.double({ min: 1e-6, max: 3, noNaN: true }), (low, step) => {
        expect(normalProbability(low + step)).toBeGreaterThanOrEqual(normalProbability(low));
      }),
    );
  });
  test.each([0.67448975, Math.sqrt(32)])('is continuous where its approximation switches, at −%f', (x) => {
    const width = 1e-9;
    const drop = normalProbability(-x + width) - normalProbability(-x - width);
    expectRelative(drop, 2 * width * normalDensity(x), 1e-4);
  });
  test('is exactly a half at zero, 0 and 1 far out', () => {
    expect([normalProbability(0), normalProbability(-50), normalProbability(50)]).toEqual([0.5, 0, 1]);
  });
});

describe('normalDensity', () => {
  test('is the closed form at a point that no rounding helps', () => {
    expectRelative(normalDensity(-1.3), Math.exp(-0.845) / Math.sqrt(2 * Math.PI), 1e-15);
  });
  test('is the slope of the distribution function', () => {
    const h = 1e-5;
    expectRelative(
      (normalProbability(0.7 + h) - normalProbability(0.7 - h)) / (2 * h),
      normalDensity(0.7),
      1e-9,
    );
  });
});

describe('normalQuantile', () => {
  test.each(fixture.normalQuantile)('at $p is $expected (mpmath, 60 digits)', ({ p, expected }) => {
    expectRelative(normalQuantile(p), Number(expected), 1e-15);
  });
  test.each([
    [0.95, '1.645'],
    [0.99, '2.326'],
    [0.9, '1.282'],
  ])('at %f is %s, the factor for an infinite sample', (p, printed) => {
    expectPublished(normalQuantile(p), printed);
  });
  test('undoes the distribution function', () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (x) => {
        const roundTrip = normalQuantile(normalProbability(x));
        const lostToRoundingOfP = 2 ** -52 / normalDensity(Math.max(x, 0));
        expect(Math.abs(roundTrip - x)).toBeLessThan(2e-14 * Math.max(1, Math.abs(x)) + lostToRoundingOfP);
      }),
    );
  });
  test('is finite at the ends of the numbers below one and above zero', () => {
    expect(normalQuantile(Number.MIN_VALUE)).toBeGreaterThan(-39);
    expect(normalQuantile(1 - 2 ** -53)).toBeLessThan(9);
  });
});
