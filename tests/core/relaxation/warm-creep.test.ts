import { describe, expect, test } from 'vitest';
import { creepFactorOf } from '../../../src/core/relaxation/findley.ts';
import { warmCreepLaw } from '../../../src/core/relaxation/warm-creep.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

describe('warmCreepLaw', () => {
  test('at 23 °C, with all strength left, is the law itself', () => {
    expect(warmCreepLaw({ m: 0.083, n: 0.21 }, 1)).toEqual({ m: 0.083, n: 0.21 });
  });
  test('of m 0.08 with 0.61 of the strength left is 0.262: 0.08 · 0.61^−2.4 (hand calculation)', () => {
    // 2.4 · ln(1/0.61) = 1.18631; e^1.18631 = 3.2750
    expectPublished(warmCreepLaw({ m: 0.08, n: 0.19 }, 0.61).m, '0.262');
  });
  test('of PLA, 0.54 of its strength left at 40 °C, comes to 0.25 of its modulus after 1000 h (from memory)', () => {
    // A law that leaves 0.60 at 23 °C; the exponent is rounded to 2.4, so within a hundredth.
    const law = { m: (1 / 0.6 - 1) / 1000 ** 0.2, n: 0.2 };
    expect(Math.abs(1 / creepFactorOf(warmCreepLaw(law, 0.54), 1000) - 0.25)).toBeLessThan(0.01);
  });
  test('creeps faster the less strength is left, in the same course of time', () => {
    const share = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.1, max: 438_000, noNaN: true }), (one, other, hours) => {
        const law = { m: 0.11, n: 0.17 };
        const [cool, warm] = [Math.max(one, other), Math.min(one, other)].map((left) =>
          warmCreepLaw(law, left),
        );
        expect(creepFactorOf(warm ?? law, hours)).toBeGreaterThanOrEqual(creepFactorOf(cool ?? law, hours));
        expectRelative(warm?.n ?? 0, 0.17);
      }),
    );
  });
});
