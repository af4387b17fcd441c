import { describe, expect, test } from 'vitest';
import {
  chiSquaredProbability,
  chiSquaredQuantile,
  chiSquaredTail,
} from '../../../src/core/numerics/chi-squared.ts';
import { incompleteGammaParts } from '../../../src/core/numerics/incomplete-gamma.ts';
import { normalProbability } from '../../../src/core/numerics/normal-distribution.ts';
import fixture from '../../fixtures/r-statistics/distributions.json';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

describe('chiSquaredProbability and chiSquaredTail', () => {
  test.each(fixture.chiSquared)(
    'at $x with $degrees degrees of freedom are $lower and $upper (R, Rmpfr, 600 bits)',
    (row) => {
      // The front factor has an exponent of up to 400, rounded in its last digit.
      expectRelative(chiSquaredProbability(row.x, row.degrees), Number(row.lower), 2e-13);
      expectRelative(chiSquaredTail(row.x, row.degrees), Number(row.upper), 2e-13);
    },
  );
  test('are the square of a normal variable for one degree of freedom', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 8, noNaN: true }), (z) => {
        expectRelative(chiSquaredTail(z * z, 1), 2 * normalProbability(-z), 1e-12);
      }),
    );
  });
  test('are exponential for two degrees of freedom', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 300, noNaN: true }), (x) => {
        expectRelative(chiSquaredTail(x, 2), Math.exp(-x / 2), 1e-13);
      }),
    );
  });
  test('begin at 0', () => {
    expect(chiSquaredProbability(0, 3)).toBe(0);
    expect(chiSquaredTail(0, 3)).toBe(1);
  });
});

describe('incompleteGammaParts', () => {
  test('is continuous where the series turns into the fraction', () => {
    const below = incompleteGammaParts({ a: 4.5, x: 5.5 - 1e-9 });
    const above = incompleteGammaParts({ a: 4.5, x: 5.5 + 1e-9 });
    expectRelative(below.lower, above.lower, 1e-8);
    expectRelative(below.upper, above.upper, 1e-8);
  });
  test('has parts that make 1, and steps with a as its recurrence says', () => {
    const a = 3.25;
    const x = 6.75;
    const one = incompleteGammaParts({ a, x });
    const next = incompleteGammaParts({ a: a + 1, x });
    expectRelative(one.lower + one.upper, 1, 1e-15);
    // Γ(4.25), mpmath
    expectRelative(next.upper - one.upper, (x ** a * Math.exp(-x)) / 8.28508514183522, 1e-9);
  });
});

describe('chiSquaredQuantile', () => {
  test.each(fixture.chiSquaredQuantile)(
    'at $p with $degrees degrees of freedom is $expected (R, Rmpfr, 600 bits)',
    (row) => {
      expectRelative(chiSquaredQuantile(row.p, row.degrees), Number(row.expected), 1e-13);
    },
  );
  test('at 0.01 with 42 degrees of freedom is 23.650 (NIST/SEMATECH e-Handbook, 7.2.6.3)', () => {
    expectPublished(chiSquaredQuantile(0.01, 42), '23.650');
  });
  test('undoes the distribution function', () => {
    const chances = fc.double({ min: 1e-12, max: 1 - 1e-9, noNaN: true });
    fc.assert(
      fc.property(chances, fc.double({ min: 0.5, max: 400, noNaN: true }), (p, degrees) => {
        expectRelative(chiSquaredProbability(chiSquaredQuantile(p, degrees), degrees), p, 1e-11);
      }),
    );
  });
});
