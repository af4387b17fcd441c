import { describe, expect, test } from 'vitest';
import {
  boreDeviationOf,
  curveDeviationOf,
  printError,
  printErrorOf,
} from '../../../src/core/holes/print-error.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import fc from '../../support/fast-check.ts';
import { MEASURED_FIT, PUBLISHED_FIT } from '../../support/holes.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const diameter = fc.double({ min: 1.5, max: 30, noNaN: true });

describe('printErrorOf', () => {
  test.each([
    [3, '−0.369'],
    [4, '−0.302'],
    [5, '−0.251'],
    [6, '−0.209'],
    [8, '−0.143'],
  ])('of a hole of %i mm by the published fit is %s mm (hole-metrology-note)', (drawn, printed) => {
    expectPublished(printErrorOf(PUBLISHED_FIT, drawn), printed);
  });
  test('never comes above −0.10 mm: from 9.62 mm on (hole-metrology-note)', () => {
    expect(printErrorOf(PUBLISHED_FIT, 10)).toBe(-0.1);
    expect(printErrorOf(PUBLISHED_FIT, 27)).toBe(-0.1);
    expect(printErrorOf(PUBLISHED_FIT, 9.61)).toBeLessThan(-0.1);
    expect(printErrorOf(PUBLISHED_FIT, 9.63)).toBe(-0.1);
  });
  test('of the hole drawn at 4.55 mm on a printer nobody knows is −0.25 mm (hand calculation)', () => {
    // −0.28 + 0.23 · ln 1.1375 = −0.28 + 0.0296
    expectPublished(printErrorOf(UNCALIBRATED_HOLES, 4.55), '−0.250');
  });
  test('is the offset itself at 4 mm, and one slope more at 4·e', () => {
    expect(printErrorOf(MEASURED_FIT, 4)).toBe(-0.19);
    expectRelative(printErrorOf(MEASURED_FIT, 4 * Math.E), -0.19 + 0.17);
  });
  test('rises by the same for every doubling, coupons or not, and only coupons go above the ceiling', () => {
    fc.assert(
      fc.property(diameter, (drawn) => {
        const step = printErrorOf(MEASURED_FIT, 2 * drawn) - printErrorOf(MEASURED_FIT, drawn);
        expectRelative(step, 0.17 * Math.LN2, 1e-10);
        expect(printErrorOf(PUBLISHED_FIT, drawn)).toBeLessThanOrEqual(-0.1);
      }),
    );
    expect(printErrorOf(MEASURED_FIT, 20)).toBeGreaterThan(-0.1);
  });
});

describe('printError', () => {
  test('carries the ceiling where there is one', () => {
    const shown = printError(PUBLISHED_FIT, entry('D_CAD', 4.37, 'mm'));
    expect(shown.entries.map(({ symbol }) => symbol)).toEqual(['D_CAD', 'a', 'b', 'e_max']);
    expect(shown).toMatchObject({
      formula: 'min(a + b · ln(D_CAD/4 mm), e_max)',
      source: 'hole-metrology-note',
      standing: 'estimate',
    });
    expect(shown.value).toBe(printErrorOf(PUBLISHED_FIT, 4.37));
  });
  test('names the own coupons once they speak', () => {
    expect(printError(MEASURED_FIT, entry('D_g', 5.3, 'mm'))).toMatchObject({
      formula: 'a + b · ln(D_g/4 mm)',
      source: 'your-measurement',
      standing: 'measured',
      entries: [{ value: 5.3 }, { value: -0.19 }, { value: 0.17 }],
    });
  });
});

describe('boreDeviationOf', () => {
  test('adds four uncertainties in squares (jcgm-100; hand calculation: 0.03, 0, 0.06 and 0.02 are 0.07)', () => {
    expectRelative(boreDeviationOf(MEASURED_FIT, 4, 0.02), 0.07);
  });
  test('counts the slope by the distance from 4 mm on the logarithm', () => {
    const atFour = boreDeviationOf(MEASURED_FIT, 4, 0.02) ** 2;
    expectRelative(boreDeviationOf(MEASURED_FIT, 4 * Math.E, 0.02) ** 2 - atFour, 0.04 ** 2, 1e-9);
    expectRelative(boreDeviationOf(MEASURED_FIT, 4 / Math.E, 0.02) ** 2 - atFour, 0.04 ** 2, 1e-9);
  });
  test('adds the covariance of offset and slope twice (jcgm-100 5.2.2; hand calculation)', () => {
    // 0.03² + 2 · 1 · (−0.0006) + 0.04² + 0.06² + 0.02² at 4·e mm
    const joined = { ...MEASURED_FIT, covariance: -0.0006 };
    expectRelative(
      boreDeviationOf(joined, 4 * Math.E, 0.02) ** 2,
      0.0009 - 0.0012 + 0.0016 + 0.0036 + 0.0004,
      1e-9,
    );
    expectRelative(curveDeviationOf(joined, 4 / Math.E) ** 2, 0.0009 + 0.0012 + 0.0016, 1e-9);
  });
  test('of a curve whose offset and slope only move together is 0 at one place, never below', () => {
    const bound = { ...MEASURED_FIT, covariance: -0.03 * 0.04 };
    expect(curveDeviationOf(bound, 4 * Math.exp(0.75))).toBeLessThan(1e-9);
    expect(curveDeviationOf(bound, 4)).toBe(0.03);
  });
});
