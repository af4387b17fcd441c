import { describe, expect, test } from 'vitest';
import { bondPosterior } from '../../../src/core/evidence/bond-evidence.ts';
import { bondFactor, PRIOR_DEVIATION } from '../../../src/core/pull-out/bond.ts';
import fixture from '../../fixtures/r-bond/bond.json';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';
import { broke, held, predictionOf, ratiosOf } from './bond-cases.ts';

const sharpCoupons = fc.array(
  fc
    .record({
      size: fc.constantFrom('m2', 'm3', 'm4', 'm5'),
      logRatio: fc.double({ min: -5, max: 5, noNaN: true }),
    })
    .map(({ size, logRatio }) => broke(size, logRatio)),
  { minLength: 1, maxLength: 30 },
);

function expectStudent(
  found: { readonly centre: number; readonly scale: number; readonly freedom: number },
  expected: { readonly centre: number; readonly scale: number; readonly freedom: number },
) {
  expectRelative(found.centre, expected.centre, 1e-10);
  expectRelative(found.scale, expected.scale, 1e-10);
  expect(found.freedom).toBe(expected.freedom);
}

describe('bondPosterior in closed form', () => {
  test.each(fixture.closed)('agrees with the whole covariance matrix: $name (R)', (row) => {
    const found = bondPosterior(row.prior, ratiosOf(row.ratios));
    expect(found.method).toBe('closed-form');
    expectStudent(found.unpulled, row.expected.unpulled);
    expectStudent(found.setup, row.expected.setup);
    expect(found.bySize.size).toBe(Object.keys(row.expected.bySize).length);
    for (const [size, expected] of Object.entries(row.expected.bySize)) {
      expectStudent(predictionOf(found, size), expected);
    }
  });
  test('of one coupon at a ratio of e^0.3 over the prior is what a hand calculation gives', () => {
    // One coupon: y − m0 = 0.3 with variance 10σ². Set-up takes 8/10, its size 9/10 of it.
    // 5·s² = 4·0.01 + 0.3²/10 = 0.049. Same size: (9 − 81/10 + 1)·s² = 1.9·s²; another: (9 − 64/10 + 1)·s² = 3.6·s².
    const found = bondPosterior(0.7, [broke('m3', Math.log(0.7) + 0.3)]);
    expectRelative(predictionOf(found, 'm3').centre, Math.log(0.7) + 0.27, 1e-12);
    expectRelative(predictionOf(found, 'm3').scale, Math.sqrt((1.9 * 0.049) / 5), 1e-12);
    expectRelative(found.unpulled.centre, Math.log(0.7) + 0.24, 1e-12);
    expectRelative(found.unpulled.scale, Math.sqrt((3.6 * 0.049) / 5), 1e-12);
    expectRelative(found.setup.scale, Math.sqrt((1.6 * 0.049) / 5), 1e-12);
    expect(found.unpulled).toMatchObject({ freedom: 5, coupons: 1, broke: 1 });
  });
});

describe('bondPosterior', () => {
  test('without a ratio is what the program assumes of every set-up, to the last bit', () => {
    const median = bondFactor('heat-set').value;
    const found = bondPosterior(median, []);
    expect(found.unpulled).toEqual({
      centre: Math.log(median),
      scale: PRIOR_DEVIATION,
      freedom: 4,
      coupons: 0,
      broke: 0,
    });
    expect(found).toMatchObject({ method: 'prior', bySize: new Map() });
  });
  test('is the same in any order of the coupons', () => {
    fc.assert(
      fc.property(sharpCoupons, (ratios) => {
        const found = bondPosterior(0.85, ratios);
        const other = bondPosterior(0.85, ratios.toReversed());
        expect(Math.abs(found.unpulled.centre - other.unpulled.centre)).toBeLessThan(1e-12);
        expectRelative(found.unpulled.scale, other.unpulled.scale, 1e-11);
        for (const [size, prediction] of found.bySize) {
          expect(Math.abs(prediction.centre - predictionOf(other, size).centre)).toBeLessThan(1e-12);
        }
      }),
    );
  });
  test('moves the median up with a ratio above the prior, down with one below', () => {
    const prior = Math.log(0.85);
    const above = bondPosterior(0.85, [broke('m3', prior + 0.21)]);
    const below = bondPosterior(0.85, [broke('m3', prior - 0.17)]);
    expect(above.unpulled.centre).toBeGreaterThan(prior);
    expect(predictionOf(above, 'm3').centre).toBeGreaterThan(above.unpulled.centre);
    expect(below.unpulled.centre).toBeLessThan(prior);
    expect(predictionOf(below, 'm3').centre).toBeLessThan(below.unpulled.centre);
  });
  test('grows narrower with every further coupon of the same ratio', () => {
    const scales = [1, 2, 3, 5, 9, 40].map(
      (count) => bondPosterior(0.85, Array(count).fill(broke('m3', -0.2))).unpulled.scale,
    );
    expect(scales).toEqual(scales.toSorted((a, b) => b - a));
    expect(new Set(scales).size).toBe(6);
  });
  test('knows a pulled size better than another one of the same set-up', () => {
    fc.assert(
      fc.property(sharpCoupons, (ratios) => {
        const { unpulled, bySize } = bondPosterior(0.283, ratios);
        for (const { scale } of bySize.values()) expect(scale).toBeLessThan(unpulled.scale);
      }),
    );
  });
  test('moves together with the ratios and the prior', () => {
    const ratios = [broke('m3', 0.12), broke('m4', -0.31), broke('m3', 0.27)];
    const moved = ratios.map((ratio) => ({ ...ratio, logRatio: ratio.logRatio + Math.log(1.7) }));
    const found = bondPosterior(0.5, ratios).unpulled;
    const other = bondPosterior(0.5 * 1.7, moved).unpulled;
    expectRelative(other.centre, found.centre + Math.log(1.7), 1e-12);
    expectRelative(other.scale, found.scale, 1e-12);
  });
  test('goes to the grid for one held coupon, or one with a deviation of its own', () => {
    expect(bondPosterior(0.85, [broke('m3', 0.1), held('m3', 0.2)]).method).toBe('grid');
    expect(bondPosterior(0.85, [{ ...broke('m3', 0.1), ownDeviation: 0.15 }]).method).toBe('grid');
  });
  test('counts who spoke and who broke', () => {
    const found = bondPosterior(0.85, [broke('m3', 0.1), held('m4', 0.2), held('m4', 0.3)]);
    expect(found.unpulled).toMatchObject({ coupons: 3, broke: 1 });
    expect(predictionOf(found, 'm4')).toMatchObject({ coupons: 3, broke: 1 });
  });
});
