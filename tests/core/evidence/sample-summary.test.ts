import { describe, expect, test } from 'vitest';
import { momentsOf } from '../../../src/core/evidence/sample.ts';
import { logSummary, medianOf, sampleSummary } from '../../../src/core/evidence/sample-summary.ts';
import { variationEnds } from '../../../src/core/evidence/variation.ts';
import { noncentralTProbability } from '../../../src/core/numerics/noncentral-t.ts';
import { rootInBracket } from '../../../src/core/numerics/root.ts';
import strd from '../../fixtures/nist-strd/sets.json';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectRelative } from '../../support/published.ts';

const forces = fc.array(fc.double({ min: 50, max: 4000, noNaN: true }), { minLength: 1, maxLength: 20 });
const inNewtons = (values: readonly number[]) => ({ values, unit: 'N' }) as const;
const alternating = (base: number) => [
  base + 0.2,
  ...Array.from({ length: 1000 }, (_, place) => Number((base + (place % 2 === 0 ? 0.1 : 0.3)).toFixed(1))),
];

describe('momentsOf', () => {
  // A deviation loses the digits that the values have in common: room is digits of mean/deviation in double precision.
  const room = (mean: string, deviation: string) =>
    1e-15 + (4e-16 * Math.abs(Number(mean))) / Number(deviation);
  test.each(Object.entries(strd.univariate))('meets the certified values of %s (NIST StRD)', (_name, set) => {
    const { mean, deviation } = momentsOf(set.values);
    expectRelative(mean, Number(set.mean), 1e-15);
    expectRelative(deviation ?? 0, Number(set.deviation), room(set.mean, set.deviation));
  });
  test('meets the certified values of PiDigits (NIST StRD)', () => {
    const { mean, deviation } = momentsOf(Array.from(strd.piDigits.digits, Number));
    expectRelative(mean, Number(strd.piDigits.mean), 1e-15);
    expectRelative(deviation ?? 0, Number(strd.piDigits.deviation), 1e-14);
  });
  test.each([
    ['NumAcc2', 1],
    ['NumAcc3', 1e6],
    ['NumAcc4', 1e7],
  ])('meets mean and deviation 0.1 of %s, which its definition gives (NIST StRD)', (_name, base) => {
    const { mean, deviation } = momentsOf(alternating(base));
    expectRelative(mean, base + 0.2, 1e-15);
    // Tenths are rounded in the values themselves: half a unit in the last place of the base.
    expectRelative(deviation ?? 0, 0.1, 1e-14 + (base * 2 ** -53) / 0.1);
  });
  test('have no deviation for one value, and none but 0 for equal ones', () => {
    expect(momentsOf([412])).toEqual({ count: 1, mean: 412 });
    expect(momentsOf([0.1, 0.1, 0.1])).toEqual({ count: 3, mean: 0.1, deviation: 0 });
  });
});

describe('sampleSummary', () => {
  test('lists place, scatter and ends with their derivations', () => {
    const summary = sampleSummary(inNewtons([412, 455, 438, 470, 421]), 0.95);
    expect(summary.count).toBe(5);
    expect(summary.mean).toMatchObject({ symbol: 'm_x', value: 439.2, unit: 'N', standing: 'measured' });
    expect(summary.median.value).toBe(438);
    expect([summary.least.value, summary.greatest.value]).toEqual([412, 470]);
    expectRelative(summary.deviation?.value ?? 0, Math.sqrt(2270.8 / 4), 1e-12);
  });
  test('of one value has neither deviation nor variation: they are absent, not 0', () => {
    const summary = sampleSummary(inNewtons([390]), 0.95);
    expect(Object.keys(summary).toSorted()).toEqual(['count', 'greatest', 'least', 'mean', 'median']);
  });
  test('of equal values gives no interval of the variation', () => {
    const { variation } = sampleSummary(inNewtons([500, 500, 500]), 0.95);
    expect(Object.keys(variation ?? {})).toEqual(['value']);
    expect(variation?.value.value).toBe(0);
  });
  test('of a value of zero gives no variation', () => {
    expect(sampleSummary(inNewtons([0, 12, 19]), 0.95)).not.toHaveProperty('variation');
  });
  test('scales with the values and holds only finite numbers', () => {
    fc.assert(
      fc.property(forces, (values) => {
        const one = sampleSummary(inNewtons(values), 0.9);
        const twice = sampleSummary(inNewtons(values.map((value) => 2 * value)), 0.9);
        expect(notFinite(one)).toEqual([]);
        expectRelative(twice.mean.value, 2 * one.mean.value);
        expectRelative(twice.median.value, 2 * one.median.value);
        expectRelative(twice.variation?.value.value ?? 0, one.variation?.value.value ?? 0, 1e-9);
      }),
    );
  });
});

describe('variationEnds', () => {
  /** The exact end: √n/V is noncentral t with δ = √n over the coefficient of variation of all parts. */
  const exactEnd = (variation: number, count: number, chance: number) => {
    const excess = (logarithm: number) =>
      noncentralTProbability(Math.sqrt(count) / variation, {
        degrees: count - 1,
        noncentrality: Math.sqrt(count) / Math.exp(logarithm),
      }) - chance;
    return Math.exp(
      rootInBracket({ f: excess, low: Math.log(variation / 6), high: Math.log(40 * variation) }),
    );
  };
  test.each([
    [3, 0.07, 0.0003],
    [5, 0.054, 0.0001],
    [7, 0.12, 0.0005],
    [4, 0.2, 0.012],
    [12, 0.25, 0.004],
  ])(
    'of %i values, V %f, are the exact ones by the noncentral t within a part of %f',
    (count, variation, part) => {
      const { low, high = 0 } = variationEnds(variation, { count, confidence: 0.95 });
      expectRelative(low, exactEnd(variation, count, 0.025), part);
      expectRelative(high, exactEnd(variation, count, 0.975), part);
    },
  );
  test('are open above for three values that scatter widely, and for two always', () => {
    const ends = variationEnds(0.4, { count: 3, confidence: 0.95 });
    expect(ends).not.toHaveProperty('high');
    expect(ends.low).toBeLessThan(0.4);
    expect(variationEnds(0.02, { count: 2, confidence: 0.95 })).not.toHaveProperty('high');
  });
  test('hold the variation between them', () => {
    const variations = fc.double({ min: 0.005, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(variations, fc.integer({ min: 3, max: 40 }), (variation, count) => {
        const { low, high = Infinity } = variationEnds(variation, { count, confidence: 0.9 });
        expect(low).toBeLessThan(variation);
        expect(high).toBeGreaterThan(variation);
      }),
    );
  });
});

describe('logSummary', () => {
  test('has the geometric mean of 4 and 9, 6, and the deviation of their logarithms', () => {
    const { geometricMean, logDeviation } = logSummary({ values: [4, 9], unit: 'N·mm' });
    expectRelative(geometricMean.value, 6);
    expect(geometricMean.unit).toBe('N·mm');
    expectRelative(logDeviation?.value ?? 0, Math.log(9 / 4) / Math.SQRT2);
  });
  test('lies below the mean', () => {
    fc.assert(
      fc.property(forces, (values) => {
        const { geometricMean } = logSummary(inNewtons(values));
        expect(geometricMean.value).toBeLessThanOrEqual(
          sampleSummary(inNewtons(values), 0.95).mean.value * (1 + 1e-14),
        );
      }),
    );
  });
  test('of one value has no deviation', () => {
    expect(logSummary(inNewtons([77]))).not.toHaveProperty('logDeviation');
  });
});

describe('medianOf', () => {
  test('is the middle one, or the mean of the middle two, in any order', () => {
    expect(medianOf([9, 1, 100])).toBe(9);
    expect(medianOf([100, 2, 7, 1])).toBe(4.5);
  });
});
