import { describe, expect, test } from 'vitest';
import { meanOf, measuredLength } from '../../../src/core/inserts/measured-length.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Deviations −0.03, +0.03, −0.03, +0.03, 0 mm about 5.01 mm: s = √(4 · 0.03²/4) = 0.03 mm. */
const FIVE = { values: [4.98, 5.04, 4.98, 5.04, 5.01], permissibleError: 0.03 };

const reading = fc.double({ min: 1, max: 20, noNaN: true });
const several = fc.array(reading, { minLength: 2, maxLength: 12 });

describe('measuredLength', () => {
  test('of five readings with s 0.03 mm: uA 0.0134, uB 0.0173, u 0.0219 mm (jcgm-100 4.2.3, 4.3.7, 5.1.2)', () => {
    const { estimate, standardUncertainty, readings } = measuredLength('D_k', FIVE);
    expect(readings).toBe(5);
    expectPublished(estimate.value, '5.01');
    const [typeA] = standardUncertainty.entries;
    expect(typeA?.symbol).toBe('u_A');
    expectPublished(typeA?.value ?? 0, '0.0134');
    expectPublished(measuredLength('D_k', { ...FIVE, values: [4.98] }).standardUncertainty.value, '0.0173');
    expectPublished(standardUncertainty.value, '0.0219');
  });
  test('of 5.01, 4.98 and 5.02 mm is 5.003 with u 0.021 mm (hand calculation)', () => {
    // Deviations 0.0067, −0.0233, 0.0167: Σ² = 0.000867, uA = √(0.000867/2/3) = 0.0120; √(0.0120² + 0.0173²) = 0.0211.
    const found = measuredLength('L', { values: [5.01, 4.98, 5.02], permissibleError: 0.03 });
    expectPublished(found.estimate.value, '5.003');
    expectPublished(found.standardUncertainty.value, '0.021');
  });
  test('of one reading knows the caliper alone', () => {
    const found = measuredLength('L', { values: [5.31], permissibleError: 0.02 });
    expect(found.estimate).toMatchObject({ symbol: 'L', value: 5.31, unit: 'mm', formula: 'x_1' });
    expectRelative(found.standardUncertainty.value * Math.sqrt(3), 0.02);
    expect(found.standardUncertainty).toMatchObject({ symbol: 'u(L)', formula: 'u_B', source: 'jcgm-100' });
  });
  test('of equal readings with a faultless caliper is certain', () => {
    expect(measuredLength('L', { values: [4.3, 4.3], permissibleError: 0 }).standardUncertainty.value).toBe(
      0,
    );
  });
  test('does not see in which order the readings came, and moves along with them', () => {
    fc.assert(
      fc.property(several, fc.double({ min: -0.5, max: 3, noNaN: true }), (values, shift) => {
        const one = measuredLength('L', { values, permissibleError: 0.04 });
        const other = measuredLength('L', {
          values: values.toReversed().map((value) => value + shift),
          permissibleError: 0.04,
        });
        expectRelative(one.estimate.value + shift, other.estimate.value, 1e-11);
        expectRelative(one.standardUncertainty.value, other.standardUncertainty.value, 1e-8);
      }),
    );
  });
  test('scales: readings and caliper in thousandths give the same in thousandths', () => {
    fc.assert(
      fc.property(several, (values) => {
        const one = measuredLength('L', { values, permissibleError: 0.027 });
        const other = measuredLength('L', { values: values.map((x) => 1000 * x), permissibleError: 27 });
        expectRelative(1000 * one.standardUncertainty.value, other.standardUncertainty.value, 1e-8);
      }),
    );
  });
  test('is surer of readings taken twice over: uA² falls as (n − 1)/(2n − 1)', () => {
    const uA = (values: readonly number[]) =>
      measuredLength('L', { values, permissibleError: 0 }).standardUncertainty.value;
    const values = [4.11, 4.17, 4.12];
    expectRelative(uA([...values, ...values]) ** 2 / uA(values) ** 2, 2 / 5, 1e-9);
  });
  test('shows twelve readings at most, and counts them all', () => {
    const values = Array.from({ length: 50 }, (_, index) => 5 + index / 1000);
    const { estimate } = measuredLength('L', { values, permissibleError: 0.03 });
    expect(estimate.entries).toHaveLength(13);
    expect(estimate.entries.at(-1)).toEqual({ symbol: 'n', value: 50, unit: '-' });
    expectPublished(estimate.value, '5.0245');
  });
});

describe('meanOf', () => {
  test('is the estimate itself', () => {
    expect(meanOf(FIVE)).toBe(measuredLength('D_k', FIVE).estimate.value);
    expectRelative(meanOf({ values: [3, 4, 8], permissibleError: 0.07 }), 5);
  });
});
