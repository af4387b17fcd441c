import { describe, expect, test } from 'vitest';
import { rootInBracket } from '../../../src/core/numerics/root.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

describe('rootInBracket', () => {
  test.each([
    ['eˣ = 2', (x: number) => Math.exp(x) - 2, -10, 13, Math.LN2],
    ['cos x = x', (x: number) => Math.cos(x) - x, 0, 1.5, 0.7390851332151607],
    ['falling 1/x = 7', (x: number) => 1 / x - 7, 1e-3, 1e3, 1 / 7],
    ['x³ = 2 from the far end', (x: number) => x ** 3 - 2, -1, 1e6, Math.cbrt(2)],
    ['a step at 0.3', (x: number) => (x < 0.3 ? -1 : 1), -2, 1.7, 0.3],
  ] as const)('finds %s', (_name, f, low, high, root) => {
    expectRelative(rootInBracket({ f, low, high }), root, 4 * 2 ** -52);
  });
  test('finds a root that its function touches flat, x⁹ = 0', () => {
    expect(
      Math.abs(rootInBracket({ f: (x) => x ** 9, low: -1.3, high: 0.9, tolerance: 1e-12 })),
    ).toBeLessThan(1e-12);
  });
  test('stops within the tolerance asked for, also where only halving helps', () => {
    fc.assert(
      fc.property(fc.double({ min: -3.9, max: 4.9, noNaN: true }), (step) => {
        const f = (x: number) => (x < step ? -1 : 1);
        expect(Math.abs(rootInBracket({ f, low: -4, high: 5, tolerance: 0.01 }) - step)).toBeLessThanOrEqual(
          0.01,
        );
      }),
    );
  });
  test.each([
    ['eˣ = 2', (x: number) => Math.exp(x) - 2, -10, 13, 55 / 3.5],
    ['x³ = 2 from the far end', (x: number) => x ** 3 - 2, -1, 1e6, 72 / 2],
  ] as const)('needs a fraction of the evaluations of bisection for %s', (_name, f, low, high, most) => {
    let count = 0;
    const counted = (x: number) => {
      count += 1;
      return f(x);
    };
    rootInBracket({ f: counted, low, high });
    expect(count).toBeLessThanOrEqual(most);
  });
  test('inverts any monotone cubic', () => {
    const coefficient = fc.double({ min: 0.01, max: 20, noNaN: true });
    const place = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(coefficient, coefficient, place, (a, b, root) => {
        const f = (x: number) => a * (x - root) ** 3 + b * (x - root);
        expect(Math.abs(rootInBracket({ f, low: -6.1, high: 7.3 }) - root)).toBeLessThan(1e-14);
      }),
    );
  });
  test('gives an end that is the root itself', () => {
    expect(rootInBracket({ f: (x) => x - 2, low: 2, high: 9 })).toBe(2);
    expect(rootInBracket({ f: (x) => x - 9, low: 2, high: 9 })).toBe(9);
  });
  test('throws for ends of one sign, a mistake of the caller', () => {
    expect(() => rootInBracket({ f: (x) => x * x + 1, low: -1, high: 2 })).toThrow(RangeError);
  });
});
