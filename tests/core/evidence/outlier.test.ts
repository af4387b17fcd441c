import { describe, expect, test } from 'vitest';
import { extremeValue, grubbsCritical } from '../../../src/core/evidence/outlier.ts';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectRelative } from '../../support/published.ts';

const inNewtons = (values: readonly number[]) => ({ values, unit: 'N' }) as const;

describe('grubbsCritical', () => {
  test.each([
    [3, '1.155'],
    [4, '1.481'],
    [5, '1.715'],
    [6, '1.887'],
    [7, '2.020'],
    [8, '2.126'],
    [9, '2.215'],
    [10, '2.290'],
  ])('of %i values, at a false alarm of 0.05 two-sided, is %s (from memory)', (count, printed) => {
    // The remembered table is a unit of its last digit off at 3 and at 8 values.
    expect(Math.abs(grubbsCritical(count, 0.05) - Number(printed))).toBeLessThan(0.001);
  });
  test('of three values is 2/√3·cos(α·π/6)', () => {
    // One degree of freedom: t = cot(α·π/6).
    for (const falseAlarm of [0.01, 0.05, 0.2]) {
      expectRelative(
        grubbsCritical(3, falseAlarm),
        (2 / Math.sqrt(3)) * Math.cos((falseAlarm * Math.PI) / 6),
        1e-12,
      );
    }
  });
  test('stays below the largest distance that n values can have', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 200 }), (count) => {
        expect(grubbsCritical(count, 0.01)).toBeLessThan((count - 1) / Math.sqrt(count));
      }),
    );
  });
});

describe('extremeValue', () => {
  test('names the one far value and keeps the rest silent', () => {
    const found = extremeValue(inNewtons([410, 423, 417, 402, 190, 421, 415]), 0.05);
    if (found.kind !== 'named') throw new Error(found.code);
    expect(found).toMatchObject({ place: 4, isExtreme: true });
    expectRelative(found.statistic.value, 2.258, 1e-3);
  });
  test('names the farthest of a sound sample too, as not extreme', () => {
    expect(extremeValue(inNewtons([410, 423, 417, 402, 395]), 0.05)).toMatchObject({
      place: 4,
      isExtreme: false,
    });
  });
  test('never calls one of three extreme at 1 % unless two are nearly equal', () => {
    expect(extremeValue(inNewtons([1, 1.001, 9]), 0.01)).toMatchObject({ place: 2, isExtreme: true });
    expect(extremeValue(inNewtons([1, 2, 9]), 0.01)).toMatchObject({ place: 2, isExtreme: false });
  });
  test('refuses two values and equal ones', () => {
    expect(extremeValue(inNewtons([5, 7]), 0.05)).toMatchObject({ code: 'too-few-values', least: 3 });
    expect(extremeValue(inNewtons([5, 5, 5]), 0.05)).toMatchObject({ code: 'no-scatter', count: 3 });
  });
  test('does not depend on unit or offset', () => {
    const values = fc.array(fc.integer({ min: 100, max: 900 }), { minLength: 3, maxLength: 15 });
    fc.assert(
      fc.property(values, (list) => {
        const one = extremeValue(inNewtons(list), 0.05);
        const moved = extremeValue(inNewtons(list.map((value) => 3 * value + 1024)), 0.05);
        expect(notFinite(one)).toEqual([]);
        expect(moved.kind).toBe(one.kind);
        if (one.kind === 'refused' || moved.kind === 'refused') return;
        expectRelative(one.statistic.value, moved.statistic.value, 1e-10);
      }),
    );
  });
});
