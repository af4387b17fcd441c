import { describe, expect, test } from 'vitest';
import { creepFactor } from '../../../src/core/relaxation/findley.ts';
import {
  residualPreloadRatio,
  residualPreloadRatioOf,
} from '../../../src/core/relaxation/residual-preload.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const compliance = fc.double({ min: 1e-7, max: 1e-3, noNaN: true });
const factor = fc.double({ min: 1, max: 20, noNaN: true });

describe('residualPreloadRatioOf', () => {
  test('is 12/17 for Cb 5, Cp 7 µm/kN and φ 12/7 (hand calculation; no published example known)', () => {
    expectRelative(
      residualPreloadRatioOf({ elasticCompliance: 5e-6, plasticCompliance: 7e-6 }, 12 / 7),
      12 / 17,
    );
  });
  test('keeps the length of the loop: Cb·F + Cp·φ·F is the first (Cb + Cp)·F0', () => {
    fc.assert(
      fc.property(compliance, compliance, factor, (elasticCompliance, plasticCompliance, phi) => {
        const left = residualPreloadRatioOf({ elasticCompliance, plasticCompliance }, phi);
        expectRelative(
          elasticCompliance * left + plasticCompliance * phi * left,
          elasticCompliance + plasticCompliance,
        );
      }),
    );
  });
  test('falls as the plastic creeps on, rises with a springier screw', () => {
    fc.assert(
      fc.property(compliance, compliance, factor, (elasticCompliance, plasticCompliance, phi) => {
        const loop = { elasticCompliance, plasticCompliance };
        const left = residualPreloadRatioOf(loop, phi + 0.1);
        expect(left).toBeLessThanOrEqual(residualPreloadRatioOf(loop, phi));
        const springier = { ...loop, elasticCompliance: 2 * elasticCompliance };
        expect(residualPreloadRatioOf(springier, phi + 0.1)).toBeGreaterThan(left * (1 - 1e-12));
      }),
    );
  });
  test('comes to 1/φ for a rigid screw', () => {
    expectRelative(
      residualPreloadRatioOf({ elasticCompliance: 1e-15, plasticCompliance: 3e-6 }, 1.7),
      1 / 1.7,
      1e-8,
    );
  });
  test('is 1 without plastic in the loop and 1 at the start', () => {
    expect(residualPreloadRatioOf({ elasticCompliance: 3e-6, plasticCompliance: 0 }, 9.1)).toBe(1);
    expect(residualPreloadRatioOf({ elasticCompliance: 3e-6, plasticCompliance: 8e-6 }, 1)).toBe(1);
  });
});

describe('residualPreloadRatio', () => {
  test('is what its own formula makes of its own entries', () => {
    const shown = residualPreloadRatio(
      { elasticCompliance: 5e-6, plasticCompliance: 7e-6 },
      creepFactor({ m: 0.1, n: 0.2 }, 32),
    );
    expect(shown).toMatchObject({ symbol: 'F(t)/F_0', unit: '-', source: 'own-model', standing: 'estimate' });
    expect(shown.entries.map(({ symbol, from }) => [symbol, from?.source])).toEqual([
      ['C_p/C_b', undefined],
      ['φ', 'findley-iso-899'],
    ]);
    const [share, phi] = shown.entries.map(({ value }) => value);
    expectRelative(share ?? 0, 1.4);
    expectRelative(phi ?? 0, 1.2);
    expectRelative(shown.value, 2.4 / 2.68);
  });
  test('of as much give in the plastic as in the screw, φ 1.5, is 0.8 (hand calculation)', () => {
    const phi = creepFactor({ m: 0.5, n: 0.3 }, 1);
    expectPublished(
      residualPreloadRatio({ elasticCompliance: 4e-6, plasticCompliance: 4e-6 }, phi).value,
      '0.8',
    );
  });
});
