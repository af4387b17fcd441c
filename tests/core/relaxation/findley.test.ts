import { describe, expect, test } from 'vitest';
import {
  creepFactor,
  creepFactorOf,
  creepLaw,
  creepLawThrough,
} from '../../../src/core/relaxation/findley.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Polycarbonate, ISO 899-1 data sheet: 2400 MPa at short time, 2200 after 1 h, 1900 after 1000 h. */
const POLYCARBONATE = { after1h: 2200 / 2400, after24h: 0.87, after1000h: 1900 / 2400 };

/** Polyamide 66, conditioned, ISO 899-1 data sheet: 1400 MPa at short time and after 1 h, 930 after 1000 h. */
const CONDITIONED_POLYAMIDE = { after1h: 1, after24h: 0.85, after1000h: 930 / 1400 };

/** Ratios as a row may hold them: not rising, the last two below 1. */
const ratios = fc
  .tuple(
    fc.double({ min: 0.3, max: 0.95, noNaN: true }),
    fc.double({ min: 0.5, max: 1, noNaN: true }),
    fc.double({ min: 0.3, max: 1, noNaN: true }),
  )
  .map(([after1h, second, third]) => ({
    after1h,
    after24h: after1h * second,
    after1000h: after1h * second * third,
  }));

const ratioAfter = (law: ReturnType<typeof creepLaw>, hours: number) => 1 / creepFactorOf(law, hours);

describe('creepLaw', () => {
  test('of polycarbonate is m 0.0909, n 0.154 (ISO 899-1 data sheet, law derived)', () => {
    const law = creepLaw(POLYCARBONATE);
    expectPublished(law.m, '0.0909');
    expectPublished(law.n, '0.154');
  });
  test('of polycarbonate comes to 0.871 after 24 h and 0.73 after a year (derived)', () => {
    expectPublished(ratioAfter(creepLaw(POLYCARBONATE), 24), '0.871');
    expectPublished(ratioAfter(creepLaw(POLYCARBONATE), 8760), '0.73');
  });
  test('passes through 1 h and 1000 h', () => {
    fc.assert(
      fc.property(ratios, (row) => {
        expectRelative(ratioAfter(creepLaw(row), 1), row.after1h, 1e-11);
        expectRelative(ratioAfter(creepLaw(row), 1000), row.after1000h, 1e-11);
      }),
    );
  });
  test('passes through 24 h and 1000 h where nothing has crept after 1 h', () => {
    const law = creepLaw(CONDITIONED_POLYAMIDE);
    expectRelative(ratioAfter(law, 24), 0.85, 1e-11);
    expectRelative(ratioAfter(law, 1000), 930 / 1400, 1e-11);
    expectPublished(law.n, '0.282'); // ln[(1400/930 − 1)/(1/0.85 − 1)]/ln(1000/24) = ln 2.8638/3.7297
  });
  test('does not use 24 h otherwise', () => {
    expect(creepLaw({ ...POLYCARBONATE, after24h: 0.8 })).toEqual(creepLaw(POLYCARBONATE));
  });
  test('is constant for a material that has done its creep within the first hour', () => {
    expect(creepLaw({ after1h: 0.8, after24h: 0.8, after1000h: 0.8 })).toEqual({ m: 0.25, n: 0 });
  });
});

describe('creepLawThrough', () => {
  test('gives back m and n that made the points (hand calculation: 1/(1 + 0.2·√t) at 4 h and 25 h)', () => {
    const law = creepLawThrough({
      earlier: { hours: 4, ratio: 1 / (1 + 0.2 * 2) },
      later: { hours: 25, ratio: 1 / (1 + 0.2 * 5) },
    });
    expectRelative(law.m, 0.2);
    expectRelative(law.n, 0.5);
  });
});

describe('creepFactorOf', () => {
  test('is 1 at the start, and does not fall with time', () => {
    const time = fc.double({ min: 0, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(ratios, time, time, (row, first, more) => {
        const law = creepLaw({ ...row, after1000h: row.after1000h * 0.98 });
        expect(creepFactorOf(law, 0)).toBe(1);
        expect(creepFactorOf(law, first + more)).toBeGreaterThanOrEqual(creepFactorOf(law, first));
      }),
    );
  });
});

describe('creepFactor', () => {
  test('carries law and time', () => {
    const factor = creepFactor({ m: 0.0909, n: 0.154 }, 24);
    expect(factor).toMatchObject({ symbol: 'c', unit: '-', source: 'findley-iso-899', standing: 'estimate' });
    expect(factor.entries.map(({ symbol, value }) => [symbol, value])).toEqual([
      ['m', 0.0909],
      ['t', 24],
      ['n', 0.154],
    ]);
    expectPublished(factor.value, '1.148');
  });
});
