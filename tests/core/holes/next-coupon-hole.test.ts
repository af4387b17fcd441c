import { describe, expect, test } from 'vitest';
import { afterCouponHole } from '../../../src/core/holes/after-coupon-hole.ts';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { couponDiameters, nextCouponHole } from '../../../src/core/holes/next-coupon-hole.ts';
import { boreDeviationOf } from '../../../src/core/holes/print-error.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import fc from '../../support/fast-check.ts';
import { readingOf } from '../../support/hole-readings.ts';
import { MEASURED_FIT } from '../../support/holes.ts';
import { given } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const candidates = couponDiameters({ least: 3, greatest: 10, step: 0.5 });
const WINDOW = {
  smallest: given('D_min', 4.15, 'mm'),
  largest: given('D_max', 4.51, 'mm'),
  expected: entry('D', 4.3, 'mm'),
};
const read = (u: number) => entry('u(D_m)', u, 'mm');
const pilot = (u: number) => entry('u(D_p)', u, 'mm');
const at = (drawn: number) => entry('D_CAD', drawn, 'mm');

describe('couponDiameters', () => {
  test('go from end to end without binary dust', () => {
    expect(couponDiameters({ least: 4, greatest: 4.4, step: 0.1 })).toEqual([4, 4.1, 4.2, 4.3, 4.4]);
    expect(couponDiameters({ least: 3, greatest: 4.9, step: 0.8 })).toEqual([3, 3.8, 4.6]);
    expect(couponDiameters({ least: 5, greatest: 5, step: 0.5 })).toEqual([5]);
  });
});

describe('nextCouponHole', () => {
  const wanted = { drawn: at(4.55), pilotUncertainty: pilot(0.02), window: WINDOW };
  test('on an unknown printer is near the hole that is wanted, and takes its deviation down by a third', () => {
    const { drawn, deviationBefore, deviationAfter, chance } = nextCouponHole(UNCALIBRATED_HOLES, wanted, {
      candidates,
      standardUncertainty: read(0.03),
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
    const { drawn } = nextCouponHole(near, { drawn: at(8) }, { candidates, standardUncertainty: read(0.02) });
    expect(drawn.value).toBeGreaterThanOrEqual(8);
  });
  test('is the best of the candidates, and never does harm', () => {
    const size = fc.double({ min: 2, max: 12, noNaN: true });
    fc.assert(
      fc.property(size, fc.array(size, { minLength: 1, maxLength: 8 }), (diameter, tried) => {
        const hole = { drawn: at(diameter), pilotUncertainty: pilot(0.01) };
        const coupon = { candidates: tried, standardUncertainty: read(0.025) };
        const { drawn, deviationBefore, deviationAfter } = nextCouponHole(MEASURED_FIT, hole, coupon);
        expect(tried).toContain(drawn.value);
        expect(deviationAfter.value).toBeLessThanOrEqual(deviationBefore.value);
        for (const one of tried) {
          const after = afterCouponHole(MEASURED_FIT, { drawn: one, standardUncertainty: 0.025 });
          expect(boreDeviationOf(after, diameter, 0.01)).toBeGreaterThanOrEqual(deviationAfter.value);
        }
      }),
    );
  });
  test('of equals takes the one nearest to the wanted hole', () => {
    const exact = { ...MEASURED_FIT, slope: { value: 0.17, standardUncertainty: 0 } };
    const { drawn } = nextCouponHole(
      exact,
      { drawn: at(5.2) },
      { candidates, standardUncertainty: read(0.02) },
    );
    expect(drawn.value).toBe(5);
  });
  test('without a window gives no chance', () => {
    const found = nextCouponHole(
      MEASURED_FIT,
      { drawn: at(5.2) },
      { candidates, standardUncertainty: read(0.02) },
    );
    expect(found.chance).toBeUndefined();
  });
  test('can be worked out by hand from its derivations', () => {
    const known = { ...MEASURED_FIT, covariance: -0.0007 };
    const { drawn, chance } = nextCouponHole(known, wanted, { candidates, standardUncertainty: read(0.02) });
    expectWays([drawn, ...Object.values(chance ?? {})]);
  });
});
