import { describe, expect, test } from 'vitest';
import { normalDensity, normalProbability } from '../../../src/core/numerics/normal-distribution.ts';
import { studentDensity, studentProbability, studentQuantile } from '../../../src/core/numerics/student-t.ts';
import fixture from '../../fixtures/mpmath/distributions.json';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const degreesOfFreedom = fc.double({ min: 1, max: 500, noNaN: true });

describe('studentProbability', () => {
  test.each(fixture.studentProbability)(
    'at $t with $degrees degrees of freedom is $expected (mpmath, 60 digits)',
    (row) => {
      expectRelative(studentProbability(row.t, row.degrees), Number(row.expected), 2e-13);
    },
  );
  test('is the arctangent for one degree of freedom', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (t) => {
        expectRelative(studentProbability(t, 1), 0.5 + Math.atan(t) / Math.PI, 1e-13);
      }),
    );
  });
  test('is ½ + t/(2·√(2 + t²)) for two degrees of freedom', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (t) => {
        expectRelative(studentProbability(t, 2), 0.5 + t / (2 * Math.sqrt(2 + t * t)), 1e-12);
      }),
    );
  });
  test('exceeds the normal tail by φ(t)·(t + t³)/(4ν) when the degrees of freedom are many', () => {
    const t = 1.3;
    const excess = studentProbability(-t, 1e6) - normalProbability(-t);
    expectRelative(excess, (normalDensity(t) * (t + t ** 3)) / 4e6, 1e-5);
  });
  test('is the leading power of the tail, Cauchy, where t² is beyond the numbers', () => {
    expectRelative(studentProbability(-1e200, 1), 1e-200 / Math.PI, 1e-13);
  });
  test('is continuous where the tail turns into its leading power', () => {
    const degrees = 3.5;
    const t = 1e9 * Math.sqrt(degrees);
    expectRelative(
      studentProbability(-t * 0.999999, degrees) / studentProbability(-t * 1.000001, degrees),
      1 + 7e-6,
      1e-10,
    );
  });
});

describe('studentDensity', () => {
  test('is the slope of the distribution function', () => {
    const h = 1e-5;
    const slope = (studentProbability(1.4 + h, 4.5) - studentProbability(1.4 - h, 4.5)) / (2 * h);
    expectRelative(studentDensity(1.4, 4.5), slope, 1e-9);
  });
  test('is 1/(π·(1 + t²)) for one degree of freedom', () => {
    expectRelative(studentDensity(-2.7, 1), 1 / (Math.PI * (1 + 2.7 ** 2)), 1e-14);
  });
});

describe('studentQuantile', () => {
  test.each(fixture.studentQuantile)(
    'at $p with $degrees degrees of freedom is $expected (mpmath, 60 digits)',
    (row) => {
      expectRelative(studentQuantile(row.p, row.degrees), Number(row.expected), 2e-13);
    },
  );
  test.each([
    ['t.0.95.1', 1, '6.314'],
    ['t.0.95.2', 2, '2.920'],
    ['t.0.95.5', 5, '2.015'],
    ['t.0.95.9', 9, '1.833'],
    ['t.0.95.29', 29, '1.699'],
    ['df 3', 3, '2.353'],
    ['df 4', 4, '2.132'],
  ])(
    '%s is %i degrees of freedom, %s (NIST/SEMATECH e-Handbook, table 1.3.6.7.2)',
    (_id, degrees, printed) => {
      expectPublished(studentQuantile(0.95, degrees), printed);
    },
  );
  test('undoes the distribution function, far tail included', () => {
    const logChance = fc.double({ min: -250, max: -0.01, noNaN: true });
    fc.assert(
      fc.property(logChance, degreesOfFreedom, (exponent, degrees) => {
        const p = 10 ** exponent;
        expectRelative(studentProbability(studentQuantile(p, degrees), degrees), p, 1e-11);
      }),
    );
  });
  test('is odd about the median', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 511 }), degreesOfFreedom, (numerator, degrees) => {
        const p = numerator / 1024;
        expect(studentQuantile(p, degrees)).toBe(-studentQuantile(1 - p, degrees));
      }),
    );
  });
  test('falls as the degrees of freedom grow, at the 95 % point', () => {
    fc.assert(
      fc.property(degreesOfFreedom, (degrees) => {
        expect(studentQuantile(0.95, degrees * 1.01)).toBeLessThan(studentQuantile(0.95, degrees));
      }),
    );
  });
  test('is zero at the median, and finite at the smallest chance', () => {
    expect(studentQuantile(0.5, 3.3)).toBe(0);
    expectRelative(studentQuantile(1e-300, 1), -1e300 / Math.PI, 1e-12);
    expect(Number.isFinite(studentQuantile(1e-300, 4e5))).toBe(true);
  });
});
