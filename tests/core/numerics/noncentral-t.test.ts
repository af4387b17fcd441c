import { describe, expect, test } from 'vitest';
import { noncentralTProbability, noncentralTQuantile } from '../../../src/core/numerics/noncentral-t.ts';
import { normalProbability } from '../../../src/core/numerics/normal-distribution.ts';
import { studentProbability, studentQuantile } from '../../../src/core/numerics/student-t.ts';
import fixture from '../../fixtures/r-statistics/distributions.json';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const degreesOfFreedom = fc.double({ min: 1, max: 300, noNaN: true });
const noncentralities = fc.double({ min: -20, max: 20, noNaN: true });

describe('noncentralTProbability', () => {
  test.each(fixture.noncentralT)(
    'at $t with $degrees degrees of freedom and δ $noncentrality is $expected (R, Rmpfr, 200 bits)',
    (row) => {
      const off = noncentralTProbability(row.t, row) - Number(row.expected);
      expect(Math.abs(off)).toBeLessThan(5e-15);
    },
  );
  test('is Student’s t without noncentrality', () => {
    fc.assert(
      fc.property(fc.double({ min: -9, max: 9, noNaN: true }), degreesOfFreedom, (t, degrees) => {
        const off = noncentralTProbability(t, { degrees, noncentrality: 0 }) - studentProbability(t, degrees);
        expect(Math.abs(off)).toBeLessThan(1e-13);
      }),
    );
  });
  test('is Φ(−δ) at 0, whatever the degrees of freedom', () => {
    fc.assert(
      fc.property(noncentralities, degreesOfFreedom, (noncentrality, degrees) => {
        const off = noncentralTProbability(0, { degrees, noncentrality }) - normalProbability(-noncentrality);
        expect(Math.abs(off)).toBeLessThan(1e-14);
      }),
    );
  });
  test('turns over with the signs of t and δ', () => {
    fc.assert(
      fc.property(noncentralities, degreesOfFreedom, (noncentrality, degrees) => {
        const t = 1.7 + noncentrality;
        const sum =
          noncentralTProbability(t, { degrees, noncentrality }) +
          noncentralTProbability(-t, { degrees, noncentrality: -noncentrality });
        expectRelative(sum, 1, 1e-13);
      }),
    );
  });
  test('has its median near δ when the degrees of freedom are many', () => {
    const shape = { degrees: 1e5, noncentrality: 2.5 };
    expectRelative(noncentralTProbability(2.9, shape), normalProbability(0.4), 1e-4);
  });
});

describe('noncentralTQuantile', () => {
  test.each(fixture.noncentralTQuantile)(
    'at $p with $degrees degrees of freedom and δ $noncentrality is $expected (R, Rmpfr, 200 bits)',
    (row) => {
      expectRelative(noncentralTQuantile(row.p, row), Number(row.expected), 1e-13);
    },
  );
  test('undoes the distribution function', () => {
    const chances = fc.double({ min: 1e-4, max: 0.9999, noNaN: true });
    fc.assert(
      fc.property(chances, degreesOfFreedom, noncentralities, (p, degrees, noncentrality) => {
        const shape = { degrees, noncentrality };
        expectRelative(noncentralTProbability(noncentralTQuantile(p, shape), shape), p, 1e-9);
      }),
    );
  });
  test('is Student’s t without noncentrality, at both ends', () => {
    expectRelative(
      noncentralTQuantile(1e-8, { degrees: 3, noncentrality: 0 }),
      studentQuantile(1e-8, 3),
      1e-6,
    );
    expectRelative(
      noncentralTQuantile(0.999, { degrees: 1, noncentrality: 0 }),
      studentQuantile(0.999, 1),
      1e-10,
    );
  });
});
