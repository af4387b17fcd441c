import { describe, expect, test } from 'vitest';
import {
  incompleteBetaParts,
  regularisedIncompleteBeta,
} from '../../../src/core/numerics/incomplete-beta.ts';
import fixture from '../../fixtures/mpmath/distributions.json';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const shape = fc.double({ min: 0.3, max: 80, noNaN: true });
const fraction = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe('regularisedIncompleteBeta', () => {
  test.each(fixture.incompleteBeta)('at $x with $a, $b is $expected (mpmath, 60 digits)', (row) => {
    expectRelative(regularisedIncompleteBeta(row), Number(row.expected), 1e-13);
  });
  test('is the binomial sum 6x² − 8x³ + 3x⁴ for a 2, b 3', () => {
    const x = 0.37;
    expectRelative(regularisedIncompleteBeta({ x, a: 2, b: 3 }), 6 * x ** 2 - 8 * x ** 3 + 3 * x ** 4, 1e-14);
  });
  test('is x to the power a when b is one', () => {
    fc.assert(
      fc.property(fraction, shape, (x, a) => {
        expectRelative(regularisedIncompleteBeta({ x, a, b: 1 }), x ** a, 1e-12);
      }),
    );
  });
  test('and the one with a and b swapped at 1 − x add up to one', () => {
    fc.assert(
      fc.property(fraction, shape, shape, (x, a, b) => {
        const sum =
          regularisedIncompleteBeta({ x, a, b }) + regularisedIncompleteBeta({ x: 1 - x, a: b, b: a });
        expectRelative(sum, 1, 1e-12);
      }),
    );
  });
  test('does not fall as x rises', () => {
    fc.assert(
      fc.property(fraction, shape, shape, (x, a, b) => {
        const here = regularisedIncompleteBeta({ x, a, b });
        expect(regularisedIncompleteBeta({ x: x + (1 - x) * 0.01, a, b })).toBeGreaterThanOrEqual(
          here * (1 - 1e-12),
        );
      }),
    );
  });
  test('is 0 at 0 and 1 at 1', () => {
    expect(regularisedIncompleteBeta({ x: 0, a: 1.7, b: 0.6 })).toBe(0);
    expect(regularisedIncompleteBeta({ x: 1, a: 1.7, b: 0.6 })).toBe(1);
  });
});

describe('incompleteBetaParts', () => {
  test.each([0.07, 0.93])('add up to one on either side of the middle, at %f', (x) => {
    const { lower, upper } = incompleteBetaParts({ a: 2.4, b: 1.9, x, complement: 1 - x });
    expectRelative(lower + upper, 1, 1e-15);
  });
  test('keeps a small upper part that one minus the lower part loses', () => {
    const complement = 1e-25;
    const { upper } = incompleteBetaParts({ a: 1, b: 2.5, x: 1 - complement, complement });
    expectRelative(upper, complement ** 2.5, 1e-13);
  });
});
