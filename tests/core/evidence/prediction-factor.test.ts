import { describe, expect, test } from 'vitest';
import {
  derivedPredictionFactor,
  predictionFactor,
  predictionFactorKnown,
} from '../../../src/core/evidence/prediction-factor.ts';
import { toleranceFactor } from '../../../src/core/evidence/tolerance-factor.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const counts = fc.integer({ min: 2, max: 60 });

describe('predictionFactor', () => {
  test.each([
    [3, '3.37'],
    [4, '2.63'],
    [6, '2.18'],
    [10, '1.92'],
  ])('of %i values is %s (EN 1990 Table D1, V_X unknown, from memory)', (count, printed) => {
    expectPublished(predictionFactor(count, 0.95), printed);
  });
  test('promises less than the tolerance factor of 0.95 confidence', () => {
    fc.assert(
      fc.property(counts, (count) => {
        const k = toleranceFactor(count, { share: 0.95, confidence: 0.95 });
        expect(predictionFactor(count, 0.95)).toBeLessThan(k);
      }),
    );
  });
});

describe('predictionFactorKnown', () => {
  test.each([
    [3, '1.90'],
    [5, '1.80'],
    [30, '1.67'],
  ])('of %i values is %s (z · √(1 + 1/n), worked apart)', (count, printed) => {
    expectPublished(predictionFactorKnown(count, 0.95), printed);
  });
  test('is below that of an unknown deviation and √2 times the quantile for one value', () => {
    fc.assert(
      fc.property(counts, (count) => {
        expect(predictionFactorKnown(count, 0.95)).toBeLessThan(predictionFactor(count, 0.95));
      }),
    );
    expectRelative(predictionFactorKnown(1, 0.95), Math.SQRT2 * 1.6448536269514722, 1e-13);
  });
});

describe('derivedPredictionFactor', () => {
  test('is named apart from a tolerance factor and has no confidence', () => {
    const factor = derivedPredictionFactor(8, 0.95, 'from-sample');
    expect(factor).toMatchObject({ symbol: 'k_n', source: 'en-1990' });
    expect(factor.entries.map(({ symbol }) => symbol)).toEqual(['t_n', 'n_t']);
    // t of 0.95 with 7 degrees of freedom, printed tables: 1.895
    const quantile = factor.entries[0]?.from;
    expectPublished(quantile?.value ?? 0, '1.895');
    expect(quantile).toMatchObject({ formula: 't(p_s, ν_n)', entries: [{ value: 0.95 }, { value: 7 }] });
  });
});
