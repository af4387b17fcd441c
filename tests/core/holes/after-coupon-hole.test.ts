import { describe, expect, test } from 'vitest';
import { afterCouponHole, figuresAfterCoupon } from '../../../src/core/holes/after-coupon-hole.ts';
import { lineAfter, lineOf } from '../../../src/core/holes/hole-line.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import fc from '../../support/fast-check.ts';
import { MEASURED_FIT } from '../../support/holes.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

describe('afterCouponHole', () => {
  test('at 4 mm takes the uncertainty of the offset from 0.1 to 0.0488 mm and leaves the slope (hand calculation)', () => {
    // 1/(1/0.1² + 1/(0.05² + 0.025²)) = 0.002381
    const after = afterCouponHole(UNCALIBRATED_HOLES, { drawn: 4, standardUncertainty: 0.025 });
    expectRelative(after.offset.standardUncertainty ** 2, 1 / (100 + 1 / 0.003125), 1e-12);
    expectPublished(after.offset.standardUncertainty, '0.0488');
    expectRelative(after.slope.standardUncertainty, 0.1, 1e-12);
    expect(after.offset.value).toBe(-0.28);
  });
  test('is the rank-one update, worked apart', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.5, max: 20, noNaN: true }),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        (drawn, u) => {
          const before = { ...MEASURED_FIT, covariance: -0.0004 };
          const after = afterCouponHole(before, { drawn, standardUncertainty: u });
          const x = Math.log(drawn / 4);
          const [va, vb, vab] = [0.03 ** 2, 0.04 ** 2, -0.0004];
          const [fa, fb] = [va + x * vab, vab + x * vb];
          const total = 0.06 ** 2 + u ** 2 + fa + x * fb;
          expectRelative(after.offset.standardUncertainty ** 2, va - fa ** 2 / total, 1e-9);
          expectRelative(after.slope.standardUncertainty ** 2, vb - fb ** 2 / total, 1e-9);
          expect(Math.abs((after.covariance ?? 0) - (vab - (fa * fb) / total))).toBeLessThan(1e-15);
        },
      ),
    );
  });
  test('is what a reading with the repeatability as it is believed then leaves (lineAfter)', () => {
    const weight = 1 / (0.06 ** 2 + 0.02 ** 2);
    const { belief } = lineAfter(lineOf(MEASURED_FIT), [{ x: Math.log(6.3 / 4), y: 0.1, weight }]);
    const after = afterCouponHole(MEASURED_FIT, { drawn: 6.3, standardUncertainty: 0.02 });
    expectRelative(after.slope.standardUncertainty ** 2, belief.slopeVariance, 1e-12);
  });
});

describe('figuresAfterCoupon', () => {
  const before = { ...MEASURED_FIT, covariance: -0.0004 };
  const after = afterCouponHole(before, { drawn: 6.3, standardUncertainty: 0.02 });
  const coupon = { drawn: entry('D_c', 6.3, 'mm'), standardUncertainty: entry('u_D', 0.02, 'mm') };
  const figures = figuresAfterCoupon({ before, after }, coupon);
  test('are those of the curve after the reading, and what their formulae come to', () => {
    expect(figures.offsetUncertainty?.value).toBe(after.offset.standardUncertainty);
    expect(figures.slopeUncertainty?.value).toBe(after.slope.standardUncertainty);
    expect(figures.covariance?.value).toBe(after.covariance);
    expectWays(Object.values(figures));
  });
});
