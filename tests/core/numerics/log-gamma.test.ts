import { describe, expect, test } from 'vitest';
import { logBeta, logGamma } from '../../../src/core/numerics/log-gamma.ts';
import fixture from '../../fixtures/mpmath/distributions.json';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

describe('logGamma', () => {
  test.each(fixture.logGamma)('at $x is $expected (mpmath, 60 digits)', ({ x, expected }) => {
    expect(Math.abs(logGamma(x) - Number(expected))).toBeLessThan(6e-15 + 1e-15 * Math.abs(Number(expected)));
  });
  test.each([
    [5, Math.log(24)],
    [0.5, Math.log(Math.PI) / 2],
    [18, Math.log(355687428096000)],
  ])('at %f is the closed form %f', (x, closed) => {
    expectRelative(logGamma(x), closed, 1e-14);
  });
  test('grows by ln x from x to x + 1', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 60, noNaN: true }), (x) => {
        expect(Math.abs(logGamma(x + 1) - logGamma(x) - Math.log(x))).toBeLessThan(1e-13);
      }),
    );
  });
  test.each([1, 2])('is zero at %i', (x) => {
    expect(Math.abs(logGamma(x))).toBeLessThan(4e-15);
  });
});

describe('logBeta', () => {
  test.each(fixture.logBeta)('of $a and $b is $expected (mpmath, 60 digits)', ({ a, b, expected }) => {
    expect(Math.abs(logBeta(a, b) - Number(expected))).toBeLessThan(
      8e-15 + 1e-15 * Math.abs(Number(expected)),
    );
  });
  test('is symmetric', () => {
    expectRelative(logBeta(0.7, 31.5), logBeta(31.5, 0.7), 1e-15);
  });
  test.each([11.4, 11.999999, 12.000001, 12.7])(
    'keeps B(a, b + 1) = B(a, b)·b/(a + b) across its switch at b %f',
    (b) => {
      for (const a of [0.5, 3.3, 11.7, 14.2]) {
        expect(Math.abs(logBeta(a, b + 1) - logBeta(a, b) - Math.log(b / (a + b)))).toBeLessThan(2e-14);
      }
    },
  );
});
