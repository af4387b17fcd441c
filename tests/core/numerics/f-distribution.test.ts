import { describe, expect, test } from 'vitest';
import { varianceRatioTail } from '../../../src/core/numerics/f-distribution.ts';
import { studentProbability } from '../../../src/core/numerics/student-t.ts';
import fixture from '../../fixtures/r-statistics/distributions.json';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const degreesOfFreedom = fc.double({ min: 1, max: 90, noNaN: true });
const ratios = fc.double({ min: 0.05, max: 20, noNaN: true });

describe('varianceRatioTail', () => {
  test.each(fixture.fTail)(
    'above $f with $numerator and $denominator degrees of freedom is $above (R, pf)',
    (row) => {
      expectRelative(varianceRatioTail(row.f, row), Number(row.above), 1e-13);
    },
  );
  test('is the square of Student’s t for one degree of freedom above', () => {
    fc.assert(
      fc.property(ratios, degreesOfFreedom, (f, denominator) => {
        const both = 2 * studentProbability(-Math.sqrt(f), denominator);
        expectRelative(varianceRatioTail(f, { numerator: 1, denominator }), both, 1e-11);
      }),
    );
  });
  test('and that of the ratio turned over make 1', () => {
    fc.assert(
      fc.property(ratios, degreesOfFreedom, degreesOfFreedom, (f, numerator, denominator) => {
        const there = varianceRatioTail(f, { numerator, denominator });
        const back = varianceRatioTail(1 / f, { numerator: denominator, denominator: numerator });
        expectRelative(there + back, 1, 1e-12);
      }),
    );
  });
  test('is 1 at 0', () => {
    expect(varianceRatioTail(0, { numerator: 3, denominator: 7 })).toBe(1);
  });
});
