import { describe, expect, test } from 'vitest';
import { compareGroups } from '../../../src/core/evidence/compare-groups.ts';
import { fiellerEnds, satterthwaiteDegrees } from '../../../src/core/evidence/welch.ts';
import r from '../../fixtures/r-statistics/samples.json';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectRelative } from '../../support/published.ts';

const inNewtons = (values: readonly number[]) => ({ values, unit: 'N' }) as const;
const compared = (one: readonly number[], other: readonly number[], confidence = 0.95) => {
  const found = compareGroups({ first: inNewtons(one), second: inNewtons(other), confidence });
  if (found.kind !== 'compared') throw new Error(found.code);
  return found;
};

describe('compareGroups', () => {
  // R prints 15 digits; its own rounding and ours are in the last two of them.
  test.each(r.welch)('of $x and $y has t $t, p $p and the interval of R’s t.test', (row) => {
    const { difference, ratio } = compared(row.x, row.y, row.level);
    expectRelative(difference.t.value, row.t, 1e-12);
    expectRelative(difference.degrees.value, row.degrees, 1e-12);
    expectRelative(difference.chance.value, row.p, 1e-12);
    expectRelative(difference.estimate.low.value, row.low, 1e-12);
    expectRelative(difference.estimate.high.value, row.high, 1e-12);
    expectRelative(ratio.estimate.value.value, row.ratio, 1e-12);
    expectRelative(ratio.estimate.low.value, row.ratioLow, 1e-12);
    expectRelative(ratio.estimate.high.value, row.ratioHigh, 1e-12);
    expectRelative(ratio.chance.value, row.logP, 1e-11);
  });
  test.each(r.fieller)('of $x and $y has Fieller’s ends $low and $high (R, roots of t)', (row) => {
    const { ratioOfMeans } = compared(row.x, row.y, row.level);
    expectRelative(ratioOfMeans?.low.value ?? 0, row.low, 1e-10);
    expectRelative(ratioOfMeans?.high.value ?? 0, row.high, 1e-10);
  });
  test('turns over when the groups change places', () => {
    const there = compared([31, 44, 39], [55, 61, 49, 70]);
    const back = compared([55, 61, 49, 70], [31, 44, 39]);
    expectRelative(there.ratio.estimate.low.value * back.ratio.estimate.high.value, 1, 1e-12);
    expectRelative(there.difference.estimate.low.value, -back.difference.estimate.high.value, 1e-12);
    expectRelative(there.difference.chance.value, back.difference.chance.value, 1e-12);
  });
  test('has no ratio of means where the mean below is not told from zero', () => {
    expect(compared([300, 330], [5, 700])).not.toHaveProperty('ratioOfMeans');
  });
  test('refuses a group of one, and says which', () => {
    const found = compareGroups({ first: inNewtons([3, 4]), second: inNewtons([5]), confidence: 0.9 });
    expect(found).toEqual({ kind: 'refused', code: 'too-few-values', group: 'second', count: 1, least: 2 });
  });
  test('refuses two groups without scatter', () => {
    const found = compareGroups({ first: inNewtons([3, 3]), second: inNewtons([5, 5]), confidence: 0.9 });
    expect(found).toEqual({ kind: 'refused', code: 'no-scatter' });
  });
  test('takes one group without scatter', () => {
    expect(compared([3, 3], [5, 6]).difference.degrees.value).toBe(1);
  });
  test('holds only finite numbers', () => {
    const values = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(values, values, (one, other) => {
        const found = compareGroups({ first: inNewtons(one), second: inNewtons(other), confidence: 0.95 });
        expect(notFinite(found)).toEqual([]);
      }),
    );
  });
});

describe('satterthwaiteDegrees', () => {
  test('lie between the least and the sum of the degrees', () => {
    const parts = fc.record({
      variance: fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
      degrees: fc.integer({ min: 1, max: 30 }),
    });
    fc.assert(
      fc.property(parts, parts, (one, other) => {
        const degrees = satterthwaiteDegrees([one, other]);
        expect(degrees).toBeGreaterThan(Math.min(one.degrees, other.degrees) * (1 - 1e-12));
        expect(degrees).toBeLessThan((one.degrees + other.degrees) * (1 + 1e-12));
      }),
    );
  });
});

describe('fiellerEnds', () => {
  test('are those of a plain mean where the one below is known exactly', () => {
    const ends = fiellerEnds(
      { mean: 30, variance: 4, degrees: 1 },
      { mean: 5, variance: 0, degrees: 8 },
      0.9,
    );
    // t of 0.95 with 1 degree of freedom: tan(0.45·π)
    const half = (Math.tan(0.45 * Math.PI) * 2) / 5;
    expectRelative(ends?.low ?? 0, 6 - half, 1e-11);
    expectRelative(ends?.high ?? 0, 6 + half, 1e-11);
  });
});
