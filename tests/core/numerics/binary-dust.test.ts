import { describe, expect, test } from 'vitest';
import { withoutDust } from '../../../src/core/numerics/binary-dust.ts';
import fc from '../../support/fast-check.ts';

describe('withoutDust', () => {
  test.each([
    [91 * 0.05, 4.55],
    [34 * 0.2, 6.8],
    [0.1 + 0.2, 0.3],
    [-7 * 0.15, -1.05],
  ])('gives %f as the decimal %f', (dusty, clean) => {
    expect(withoutDust(dusty)).toBe(clean);
  });
  test('moves a number by half of its last place at most', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (x) => {
        expect(Math.abs(withoutDust(x) - x)).toBeLessThanOrEqual(5.1e-10);
      }),
    );
  });
});
