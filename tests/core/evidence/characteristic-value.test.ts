import { describe, expect, test } from 'vitest';
import { characteristicValue } from '../../../src/core/evidence/characteristic-value.ts';
import { sampleSummary } from '../../../src/core/evidence/sample-summary.ts';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectRelative } from '../../support/published.ts';

const promise = { share: 0.95, confidence: 0.95 };
const inNewtons = (values: readonly number[]) => ({ values, unit: 'N' }) as const;
const five = inNewtons([412, 455, 438, 470, 421]);

describe('characteristicValue', () => {
  test('is the mean less 4.203 deviations for five normal values (hand calculation, printed k)', () => {
    const found = characteristicValue(five, { distribution: 'normal', promise });
    if (found.kind !== 'value') throw new Error(found.code);
    const byHand = 439.2 - 4.203 * Math.sqrt(2270.8 / 4);
    expectRelative(found.value.value, byHand, 5e-5);
    expect(found.value).toMatchObject({ unit: 'N', formula: 'm_x − k_t · s_x', standing: 'measured' });
  });
  test('is the exponential of it for the logarithms', () => {
    const logs = inNewtons(five.values.map((value) => Math.log(value)));
    const normal = characteristicValue(logs, { distribution: 'normal', promise });
    const lognormal = characteristicValue(five, { distribution: 'lognormal', promise });
    if (normal.kind !== 'value' || lognormal.kind !== 'value') throw new Error('refused');
    expectRelative(lognormal.value.value, Math.exp(normal.value.value));
  });
  test('takes the prediction factor for the next value, and says so', () => {
    const found = characteristicValue(five, {
      distribution: 'normal',
      promise: { kind: 'next-value', share: 0.95 },
    });
    if (found.kind !== 'value') throw new Error(found.code);
    expect(found.factor.symbol).toBe('k_n');
    expect(found.value).toMatchObject({ formula: 'm_x − k_n · s_x', source: 'en-1990' });
  });
  test('needs only one value with a known deviation', () => {
    const one = inNewtons([700]);
    const found = characteristicValue(one, { distribution: 'lognormal', promise, knownDeviation: 0.1 });
    if (found.kind !== 'value') throw new Error(found.code);
    expectRelative(found.value.value, 700 * Math.exp(-0.1 * 2 * 1.6448536269514722), 1e-12);
  });
  test('refuses one value without a known deviation', () => {
    const found = characteristicValue(inNewtons([700]), { distribution: 'lognormal', promise });
    expect(found).toEqual({ kind: 'refused', code: 'too-few-values', count: 1, least: 2 });
  });
  test('refuses equal values', () => {
    const found = characteristicValue(inNewtons([60, 60]), { distribution: 'normal', promise });
    expect(found).toEqual({ kind: 'refused', code: 'no-scatter', count: 2 });
  });
  test('refuses where normal theory promises nothing above zero', () => {
    const found = characteristicValue(inNewtons([400, 520]), { distribution: 'normal', promise });
    expect(found).toMatchObject({ kind: 'refused', code: 'nothing-above-zero' });
  });
  test('lies below the least value of up to 20 and is finite, lognormal', () => {
    const values = fc.array(fc.integer({ min: 100, max: 900 }), { minLength: 2, maxLength: 20 });
    fc.assert(
      fc.property(values, (list) => {
        const found = characteristicValue(inNewtons(list), { distribution: 'lognormal', promise });
        expect(notFinite(found)).toEqual([]);
        if (found.kind === 'refused') return;
        expect(found.value.value).toBeGreaterThan(0);
        expect(found.value.value).toBeLessThan(sampleSummary(inNewtons(list), 0.95).median.value);
      }),
    );
  });
});
