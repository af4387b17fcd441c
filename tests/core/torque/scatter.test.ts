import { describe, expect, test } from 'vitest';
import { leastPreload, preloadBounds, tighteningFactor } from '../../../src/core/torque/scatter.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

describe('tighteningFactor', () => {
  test('scatter.alphaA.from_pct: ±23 % is 1.6 (vdi-2230:1986, pairing from memory)', () => {
    expectPublished(tighteningFactor(0.23).value, '1.6');
  });
  test('of a scatter of 1/9 is 5/4 and of 1/3 is 2 (hand calculation)', () => {
    expectRelative(tighteningFactor(1 / 9).value, 1.25);
    expectRelative(tighteningFactor(1 / 3).value, 2);
  });
  test('is 1 without scatter', () => {
    expect(tighteningFactor(0).value).toBe(1);
  });
  test('carries what went in', () => {
    expect(tighteningFactor(0.23)).toMatchObject({
      symbol: 'α_A',
      unit: '-',
      source: 'vdi-2230',
      entries: [{ symbol: 's', value: 0.23, unit: '-' }],
    });
  });
});

describe('preloadBounds', () => {
  test('nasa.preload.bounds: Γ 0.35 spans 2.0769 (nsts-08307 §3.4, derived)', () => {
    const { least, most } = preloadBounds({ mean: 1870, scatter: 0.35 });
    expectPublished(most.value / least.value, '2.0769');
    expectPublished(least.value, '1215.5');
    expectPublished(most.value, '2524.5');
  });
  test('have the mean in their middle and the tightening factor as their ratio', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 1e5, noNaN: true }),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (mean, s) => {
          const { least, most } = preloadBounds({ mean, scatter: s });
          expectRelative((least.value + most.value) / 2, mean);
          expectRelative(most.value / least.value, tighteningFactor(s).value);
        },
      ),
    );
  });
  test('carry what went in', () => {
    const { least, most } = preloadBounds({ mean: 1870, scatter: 0.35 });
    expect([least.symbol, most.symbol, least.formula, most.formula]).toEqual([
      'F_min',
      'F_max',
      '(1 − Γ) · F',
      '(1 + Γ) · F',
    ]);
    expect(least).toMatchObject({ unit: 'N', source: 'nsts-08307', entries: most.entries });
  });
});

describe('leastPreload', () => {
  test('scatter.alphaA.FMmin: 41.9 kN at 1.8 is 23.3 kN (worked example on the tables of vdi-2230, M12 × 40)', () => {
    const least = leastPreload({ most: 41900, tighteningFactor: 1.8 });
    expectPublished(least.value / 1000, '23.3');
    expect(least).toMatchObject({ symbol: 'F_Mmin', unit: 'N', source: 'vdi-2230' });
    expect(least.entries.map(({ value }) => value)).toEqual([41900, 1.8]);
  });
});
