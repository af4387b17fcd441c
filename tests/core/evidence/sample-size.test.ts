import { describe, expect, test } from 'vitest';
import { powerOfRatio, testsNeeded } from '../../../src/core/evidence/sample-size.ts';
import r from '../../fixtures/r-statistics/samples.json';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectRelative } from '../../support/published.ts';

describe('powerOfRatio', () => {
  // R’s noncentral t stops at 1e-12.
  test.each(r.power)('of $n tests a group for $ratio at s $deviation is $power (R, power.t.test)', (row) => {
    const { ratio, deviation } = row;
    expectRelative(powerOfRatio(row.n, { ratio, deviation, falseAlarm: 0.05 }), row.power, 1e-9);
  });
  test('is the false alarm where there is nothing to see', () => {
    expectRelative(powerOfRatio(7, { ratio: 1, deviation: 0.2, falseAlarm: 0.04 }), 0.04, 1e-10);
  });
  test('is the same for a ratio and its inverse', () => {
    const one = powerOfRatio(4, { ratio: 1.25, deviation: 0.15, falseAlarm: 0.1 });
    expectRelative(one, powerOfRatio(4, { ratio: 0.8, deviation: 0.15, falseAlarm: 0.1 }), 1e-12);
  });
  test('goes to 1 without a jump where it is taken as certain', () => {
    const near = { deviation: 1, falseAlarm: 0.2 };
    // t of 0.9 with 2 degrees of freedom is 1.8856: certain from δ = 40 + 6t = 51.3.
    expectRelative(powerOfRatio(2, { ...near, ratio: Math.exp(51) }), 1, 1e-14);
    expect(powerOfRatio(2, { ...near, ratio: Math.exp(52) })).toBe(1);
  });
});

/** R: power.t.test(n = 8, delta = log(1.2), sd = 0.12, strict = TRUE)$power */
const POWER_OF_EIGHT = 0.80652049140965;

describe('testsNeeded', () => {
  test('is the least number with the power asked for', () => {
    const wanted = fc.record({
      ratio: fc.double({ min: 1.05, max: 3, noNaN: true }),
      deviation: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
      falseAlarm: fc.constantFrom(0.01, 0.05, 0.1),
    });
    fc.assert(
      fc.property(wanted, fc.double({ min: 0.5, max: 0.95, noNaN: true }), (question, power) => {
        const found = testsNeeded(question, power);
        expect(notFinite(found)).toEqual([]);
        if (found.kind === 'refused') return;
        const n = found.each.value;
        expect(powerOfRatio(n, question)).toBeGreaterThanOrEqual(power);
        const powerBelow = n > 2 ? powerOfRatio(n - 1, question) : 0;
        expect(powerBelow).toBeLessThan(power);
      }),
      { numRuns: 40 },
    );
  });
  test('is eight for a fifth more at s 0.12, with a power of 0.807', () => {
    const found = testsNeeded({ ratio: 1.2, deviation: 0.12, falseAlarm: 0.05 }, 0.8);
    if (found.kind === 'refused') throw new Error(found.code);
    expect(found.each.value).toBe(8);
    expectRelative(found.power.value, POWER_OF_EIGHT, 1e-9);
  });
  test('is two where two are enough', () => {
    const found = testsNeeded({ ratio: 9, deviation: 0.05, falseAlarm: 0.05 }, 0.9);
    expect(found).toMatchObject({ kind: 'tests', each: { value: 2, unit: '-' } });
  });
  test('is refused where 1000 a group are not enough', () => {
    const found = testsNeeded({ ratio: 1.001, deviation: 0.3, falseAlarm: 0.05 }, 0.8);
    expect(found).toMatchObject({ kind: 'refused', code: 'too-many-tests', most: 1000 });
  });
});
