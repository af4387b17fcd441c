import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { lineAfter, lineOf } from '../../../src/core/holes/hole-line.ts';
import {
  afterCouponHole,
  couponDiameters,
  nextCouponHole,
} from '../../../src/core/holes/next-coupon-hole.ts';
import { boreDeviationOf } from '../../../src/core/holes/print-error.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import fc from '../../support/fast-check.ts';
import { readingOf } from '../../support/hole-readings.ts';
import { MEASURED_FIT } from '../../support/holes.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const candidates = couponDiameters({ least: 3, greatest: 10, step: 0.5 });
const WINDOW = { smallest: 4.15, largest: 4.51, expected: 4.3 };

describe('couponDiameters', () => {
  test('go from end to end without binary dust', () => {
    expect(couponDiameters({ least: 4, greatest: 4.4, step: 0.1 })).toEqual([4, 4.1, 4.2, 4.3, 4.4]);
    expect(couponDiameters({ least: 3, greatest: 4.9, step: 0.8 })).toEqual([3, 3.8, 4.6]);
    expect(couponDiameters({ least: 5, greatest: 5, step: 0.5 })).toEqual([5]);
  });
});

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

describe('nextCouponHole', () => {
  const wanted = { drawn: 4.55, pilotUncertainty: 0.02, window: WINDOW };
  test('on an unknown printer is near the hole that is wanted, and takes its deviation down by a third', () => {
    const { drawn, deviationBefore, deviationAfter, chance } = nextCouponHole(UNCALIBRATED_HOLES, wanted, {
      candidates,
      standardUncertainty: 0.03,
    });
    expect([4.5, 5]).toContain(drawn.value);
    expectRelative(deviationBefore.value, boreDeviationOf(UNCALIBRATED_HOLES, 4.55, 0.02));
    expect(deviationAfter.value).toBeLessThan(0.72 * deviationBefore.value);
    expect(chance?.gain.value).toBeGreaterThan(0.08);
    expectRelative(chance?.gain.value ?? 0, (chance?.after.value ?? 0) - (chance?.before.value ?? 0), 1e-12);
  });
  test('far from all that was read goes beyond the wanted hole rather than among the others', () => {
    const near = calibrateHoles(
      UNCALIBRATED_HOLES,
      [3.8, 4, 4.2, 4.1].map((drawn) => readingOf({ drawn, error: -0.27, standardUncertainty: 0.02 })),
    ).behaviour;
    const { drawn } = nextCouponHole(
      near,
      { drawn: 8, pilotUncertainty: 0 },
      { candidates, standardUncertainty: 0.02 },
    );
    expect(drawn.value).toBeGreaterThanOrEqual(8);
  });
  test('is the best of the candidates, and never does harm', () => {
    const size = fc.double({ min: 2, max: 12, noNaN: true });
    fc.assert(
      fc.property(size, fc.array(size, { minLength: 1, maxLength: 8 }), (at, tried) => {
        const hole = { drawn: at, pilotUncertainty: 0.01 };
        const coupon = { candidates: tried, standardUncertainty: 0.025 };
        const { drawn, deviationBefore, deviationAfter } = nextCouponHole(MEASURED_FIT, hole, coupon);
        expect(tried).toContain(drawn.value);
        expect(deviationAfter.value).toBeLessThanOrEqual(deviationBefore.value);
        for (const one of tried) {
          const after = afterCouponHole(MEASURED_FIT, { drawn: one, standardUncertainty: 0.025 });
          expect(boreDeviationOf(after, at, 0.01)).toBeGreaterThanOrEqual(deviationAfter.value);
        }
      }),
    );
  });
  test('of equals takes the one nearest to the wanted hole', () => {
    const exact = { ...MEASURED_FIT, slope: { value: 0.17, standardUncertainty: 0 } };
    const { drawn } = nextCouponHole(
      exact,
      { drawn: 5.2, pilotUncertainty: 0 },
      { candidates, standardUncertainty: 0.02 },
    );
    expect(drawn.value).toBe(5);
  });
  test('without a window gives no chance', () => {
    const found = nextCouponHole(
      MEASURED_FIT,
      { drawn: 5.2, pilotUncertainty: 0 },
      { candidates, standardUncertainty: 0.02 },
    );
    expect(found.chance).toBeUndefined();
  });
  test('can be worked out by hand from its derivations', () => {
    const known = { ...MEASURED_FIT, covariance: -0.0007 };
    const { deviationBefore, deviationAfter, chance } = nextCouponHole(known, wanted, {
      candidates,
      standardUncertainty: 0.02,
    });
    for (const one of [deviationBefore, deviationAfter, ...Object.values(chance ?? {})]) {
      expectRelative(evaluated(one) ?? 0, one.value, 1e-12);
    }
  });
});
