import { describe, expect, test } from 'vitest';
import { infillShearShare, infillShearShareOf } from '../../../src/core/host/infill-stiffness.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const share = (density: number, family: 'prismatic' | 'cellular') =>
  infillShearShareOf({ pattern: 'any', density, family });

describe('infillShearShareOf', () => {
  test('of vertical walls is half their density: the mean of cos² round a circle, integrated', () => {
    const steps = 360;
    const mean = Array.from({ length: steps }, (_, i) => Math.cos((2 * Math.PI * i) / steps) ** 2).reduce(
      (sum, one) => sum + one / steps,
      0,
    );
    expectRelative(share(0.37, 'prismatic'), mean * 0.37, 1e-9);
  });
  test('of cells goes with the square of their density (gibson-ashby)', () => {
    expectRelative(share(0.3, 'cellular'), 0.09);
  });
  test('is 0 without infill and 1 printed solid', () => {
    for (const family of ['prismatic', 'cellular'] as const) {
      expect(share(0, family)).toBe(0);
      expect(share(1, family)).toBe(1);
    }
  });
  test('never falls as the infill grows denser', () => {
    const density = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(density, density, fc.constantFrom('prismatic', 'cellular'), (one, other, family) => {
        expect(share(Math.max(one, other), family)).toBeGreaterThanOrEqual(
          share(Math.min(one, other), family),
        );
      }),
    );
  });
});

describe('infillShearShare', () => {
  test.each([
    [0.37, 'prismatic', '½ · ρ', 'own-model'],
    [0.29, 'cellular', 'ρ²', 'gibson-ashby'],
    [1, 'cellular', '1, printed solid', 'own-model'],
  ] as const)('at %d, %s, is the same number, with its formula %s', (density, family, formula, source) => {
    expect(infillShearShare({ pattern: 'any', density, family })).toMatchObject({
      value: share(density, family),
      formula,
      source,
      entries: [{ symbol: 'ρ', value: density }],
    });
  });
});
