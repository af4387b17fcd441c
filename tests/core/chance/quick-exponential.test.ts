import { describe, expect, test } from 'vitest';
import { quickExponential } from '../../../src/core/chance/quick-exponential.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** r⁴/4! · e^r at r = ln 2/128 is 3.6 · 10⁻¹¹. */
const ERROR = 4e-11;

describe('quickExponential', () => {
  test.each([
    [1, '2.718281828'],
    [-1, '0.367879441'],
    [2 + 0.302585093, '10.00000000'],
  ])('of %f is %s (printed tables, from memory)', (x, printed) => {
    expectPublished(quickExponential(x), printed);
  });
  test('of 0 is exactly 1', () => {
    expect(quickExponential(0)).toBe(1);
  });
  test('stays within its error of the exact exponential, beyond its table too', () => {
    for (let x = -120.3; x < 120; x += 0.0137) expectRelative(quickExponential(x), Math.exp(x), ERROR);
  });
  test('of the infinite ends is nothing and infinite', () => {
    expect(quickExponential(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(quickExponential(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  });
  test('turns sums into products where one power of two follows another', () => {
    const edge = 3.5 * Math.LN2;
    expectRelative(
      quickExponential(edge - 1e-9),
      quickExponential(edge + 1e-9) * quickExponential(-2e-9),
      2 * ERROR,
    );
  });
});
