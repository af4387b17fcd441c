import { describe, expect, test } from 'vitest';
import { bondPosterior, type CouponRatio } from '../../../src/core/evidence/bond-evidence.ts';
import { gridPosterior } from '../../../src/core/evidence/bond-grid.ts';
import type { LogStudent } from '../../../src/core/evidence/coupon-ratio.ts';
import { studentQuantile } from '../../../src/core/numerics/student-t.ts';
import fixture from '../../fixtures/r-bond/bond.json';
import fc from '../../support/fast-check.ts';
import { broke, held, predictionOf, ratiosOf } from './bond-cases.ts';

const quantileOf = ({ centre, scale, freedom }: LogStudent, p: number): number =>
  centre + studentQuantile(p, freedom) * scale;

/** Median and 5 % quantile, within a share of the distance between them. */
function expectQuantiles(found: LogStudent, expected: readonly number[], share: number) {
  const [median = Number.NaN, low = Number.NaN] = expected;
  const room = share * (median - low);
  expect(Math.abs(found.centre - median)).toBeLessThan(room);
  expect(Math.abs(quantileOf(found, 0.05) - low)).toBeLessThan(room);
}

function expectAlike(found: LogStudent, expected: LogStudent, share: number) {
  expectQuantiles(found, [expected.centre, quantileOf(expected, 0.05)], share);
}

const anyCoupons = fc.array(
  fc.record({
    size: fc.constantFrom('m2', 'm3', 'm4'),
    logRatio: fc.double({ min: -5, max: 5, noNaN: true }),
    outcome: fc.constantFrom('broke' as const, 'held' as const),
    ownDeviation: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1, noNaN: true })),
  }),
  { minLength: 1, maxLength: 8 },
);

function expectFinite(ratios: readonly CouponRatio[]) {
  const { unpulled, bySize, setup } = bondPosterior(0.85, ratios);
  for (const { centre, scale, freedom } of [unpulled, setup, ...bySize.values()]) {
    expect(Number.isFinite(centre)).toBe(true);
    expect(scale).toBeGreaterThan(0);
    expect(scale).toBeLessThan(100);
    expect(freedom).toBeGreaterThanOrEqual(4);
    expect(freedom).toBeLessThanOrEqual(4 + ratios.length);
  }
}

describe('gridPosterior', () => {
  test.each(fixture.dense)('agrees within 0.2 % with brute-force sums: $name (R)', (row) => {
    const found = gridPosterior(row.prior, ratiosOf(row.ratios));
    expectQuantiles(found.unpulled, row.expected.unpulled, 2e-3);
    for (const [size, expected] of Object.entries(row.expected.bySize)) {
      expectQuantiles(predictionOf(found, size), expected, 2e-3);
    }
  });
  test.each(fixture.dense)('has a 1 ‰ quantile within 10 % of brute-force sums: $name (R)', (row) => {
    const found = gridPosterior(row.prior, ratiosOf(row.ratios)).unpulled;
    const [median = Number.NaN, , rare = Number.NaN] = row.expected.unpulled;
    expect(Math.abs(quantileOf(found, 0.001) - rare)).toBeLessThan(0.1 * (median - rare));
  });
  test.each(fixture.drawn)('agrees within 2 % with weighted draws from the prior: $name (R)', (row) => {
    const found = gridPosterior(row.prior, ratiosOf(row.ratios));
    expectQuantiles(found.unpulled, row.expected.unpulled, 0.02);
    expectQuantiles(found.setup, row.expected.setup, 0.02);
    for (const [size, expected] of Object.entries(row.expected.bySize)) {
      expectQuantiles(predictionOf(found, size), expected, 0.02);
    }
  });
  test.each(fixture.closed)('is the closed form within 0.2 % where all broke sharply: $name', (row) => {
    const ratios = ratiosOf(row.ratios);
    const found = gridPosterior(row.prior, ratios);
    const closed = bondPosterior(row.prior, ratios);
    expectAlike(found.unpulled, closed.unpulled, 2e-3);
    expectAlike(found.setup, closed.setup, 2e-3);
    expect(found.unpulled.freedom).toBe(closed.unpulled.freedom);
    for (const [size, prediction] of closed.bySize) {
      expectAlike(predictionOf(found, size), prediction, 2e-3);
    }
  });
  test('learns next to nothing from a coupon that held far less than expected', () => {
    const prior = bondPosterior(0.85, []).unpulled;
    const { unpulled, bySize } = gridPosterior(0.85, [held('m3', Math.log(0.85) - 4)]);
    expectAlike(unpulled, prior, 0.01);
    for (const prediction of bySize.values()) expectAlike(prediction, prior, 0.01);
  });
  test('moves up by a coupon that held more than expected, and the more the more it held', () => {
    const centres = [-0.3, 0.1, 0.4, 1.1, 2.6].map((above) => {
      const found = gridPosterior(0.85, [held('m3', Math.log(0.85) + above)]);
      expect(predictionOf(found, 'm3').centre).toBeGreaterThan(found.unpulled.centre);
      return found.unpulled.centre;
    });
    expect(centres).toEqual(centres.toSorted((a, b) => a - b));
    expect(centres[0]).toBeGreaterThan(Math.log(0.85));
  });
  test('takes a coupon that broke for a stricter statement than one that held the same', () => {
    const brokenOne = gridPosterior(0.85, [broke('m3', 0.2)]).unpulled;
    const heldOne = gridPosterior(0.85, [held('m3', 0.2)]).unpulled;
    expect(brokenOne.centre).toBeLessThan(heldOne.centre);
    expect(brokenOne.scale).toBeLessThan(heldOne.scale);
  });
  test('learns nothing from coupons measured with a huge deviation, however often', () => {
    const prior = bondPosterior(0.85, []).unpulled;
    const vague = { ...broke('m3', 1.3), ownDeviation: 200 };
    expectAlike(gridPosterior(0.85, [vague, vague, vague]).unpulled, prior, 1e-3);
    expectAlike(gridPosterior(0.85, [{ ...vague, outcome: 'held' }]).unpulled, prior, 0.01);
  });
  test('counts coupons that held the same like coupons that held almost the same', () => {
    const same = gridPosterior(0.85, [held('m3', 0.4), held('m3', 0.4), held('m3', 0.4)]).unpulled;
    const almost = gridPosterior(0.85, [held('m3', 0.4), held('m3', 0.4 + 1e-9), held('m3', 0.4 - 1e-9)]);
    expectAlike(same, almost.unpulled, 1e-5);
  });
  test('keeps the heavy tail of the prior after twenty coupons that held next to nothing', () => {
    const ratios = Array.from({ length: 20 }, (_, place) => held('m3', -3 - place / 100));
    expect(gridPosterior(0.85, ratios).unpulled.freedom).toBeLessThanOrEqual(5);
  });
  test('goes over into the closed form as the deviations of the coupons vanish', () => {
    const ratios = [broke('m3', 0.12), broke('m4', -0.31), broke('m3', 0.27)];
    const nearly = ratios.map((ratio) => ({ ...ratio, ownDeviation: 1e-4 }));
    expectAlike(bondPosterior(0.85, nearly).unpulled, bondPosterior(0.85, ratios).unpulled, 2e-3);
  });
  test('is the same in any order of the coupons, within its tolerance', () => {
    const ratios = [held('m3', 0.12), broke('m4', -0.31), held('m3', 0.27), held('m5', -0.6)];
    expectAlike(
      gridPosterior(0.85, ratios).unpulled,
      gridPosterior(0.85, ratios.toReversed()).unpulled,
      1e-6,
    );
  });
});

describe('the grid stands up to', () => {
  test('anything that the door admits', () => {
    fc.assert(fc.property(anyCoupons, expectFinite), { numRuns: 25 });
  });
  test.each([-5, 0.03, 5])('200 held coupons at a logarithm of %d', (logRatio) => {
    expectFinite(Array.from({ length: 200 }, (_, place) => held('m3', logRatio - place * 1e-4)));
  });
  test('200 that contradict each other, over 50 sizes', () => {
    const ratios = Array.from({ length: 200 }, (_, place) => ({
      ...broke(`size ${place % 50}`, place % 2 === 0 ? -5 : 5),
      outcome: place % 3 === 0 ? ('broke' as const) : ('held' as const),
      ownDeviation: (place % 5) / 4,
    }));
    expectFinite(ratios);
  });
  test('one that held at the top of the range', () => {
    expectFinite([held('m3', 5)]);
  });
});
