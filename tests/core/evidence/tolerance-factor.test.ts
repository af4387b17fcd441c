import { describe, expect, test } from 'vitest';
import {
  derivedToleranceFactor,
  toleranceFactor,
  toleranceFactorKnown,
} from '../../../src/core/evidence/tolerance-factor.ts';
import { normalQuantile } from '../../../src/core/numerics/normal-distribution.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const promises = fc.record({
  share: fc.double({ min: 0.6, max: 0.999, noNaN: true }),
  confidence: fc.double({ min: 0.5, max: 0.99, noNaN: true }),
});
const counts = fc.integer({ min: 2, max: 200 });

describe('toleranceFactor', () => {
  // The whole table stands in tests/verification.
  test.each([
    [4, 0.95, 0.95, '5.144'],
    [10, 0.95, 0.95, '2.911'],
    [9, 0.99, 0.9, '3.641'],
  ])('of %i values at %f/%f is %s (ISO 16269-6, from memory)', (count, share, confidence, printed) => {
    expectPublished(toleranceFactor(count, { share, confidence }), printed);
  });
  test('of 50 values at 0.95/0.95 is 2.065 (NUREG tables, as quoted)', () => {
    expectPublished(toleranceFactor(50, { share: 0.95, confidence: 0.95 }), '2.065');
  });
  test('falls with the number of values towards the quantile of the share', () => {
    fc.assert(
      fc.property(promises, counts, (promise, count) => {
        if (promise.confidence < 0.6) return;
        const k = toleranceFactor(count, promise);
        expect(k).toBeGreaterThan(toleranceFactor(count + 1, promise));
        expect(k).toBeGreaterThan(normalQuantile(promise.share));
      }),
    );
  });
  test('rises with share and confidence', () => {
    const k = toleranceFactor(6, { share: 0.95, confidence: 0.9 });
    expect(toleranceFactor(6, { share: 0.96, confidence: 0.9 })).toBeGreaterThan(k);
    expect(toleranceFactor(6, { share: 0.95, confidence: 0.91 })).toBeGreaterThan(k);
  });
});

describe('toleranceFactorKnown', () => {
  test('of one value adds the quantile of the confidence whole', () => {
    expectRelative(
      toleranceFactorKnown(1, { share: 0.9, confidence: 0.95 }),
      1.2815515655446 + 1.6448536269515,
      1e-12,
    );
  });
  test('is below that of an unknown deviation at 0.75 confidence and more', () => {
    fc.assert(
      fc.property(promises, counts, ({ share, confidence }, count) => {
        const promise = { share, confidence: Math.max(confidence, 0.75) };
        expect(toleranceFactorKnown(count, promise)).toBeLessThan(toleranceFactor(count, promise));
      }),
    );
  });
});

describe('derivedToleranceFactor', () => {
  test('carries its promise, its symbol and its source', () => {
    const factor = derivedToleranceFactor(5, { share: 0.95, confidence: 0.9 }, 'from-sample');
    expect(factor).toMatchObject({ symbol: 'k_t', unit: '-', source: 'iso-16269-6', standing: 'published' });
    const quantile = factor.entries[0]?.from;
    expect(quantile).toMatchObject({ symbol: 't_k', formula: 't(γ, ν_n, δ_n)' });
    expect(quantile?.entries).toContainEqual({ symbol: 'γ', value: 0.9, unit: '-' });
    // δ = z(0.95) · √5 = 1.64485 · 2.23607
    expectPublished(quantile?.entries[2]?.value ?? 0, '3.6780');
    expectPublished(factor.value, '3.400');
  });
});
