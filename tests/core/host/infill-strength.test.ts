import { describe, expect, test } from 'vitest';
import type { InfillFamily } from '../../../src/core/host/host.ts';
import { infillStrength } from '../../../src/core/host/infill-strength.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const shareOf = (family: InfillFamily, density: number) =>
  infillStrength({ pattern: 'any', family, density });

describe('infillStrength', () => {
  test('of vertical walls is 0.64 · ρ (mean of |cos θ| round the circle, 2/π)', () => {
    expectPublished(shareOf('prismatic', 0.37).value / 0.37, '0.64');
    expectPublished(shareOf('prismatic', 0.2).value, '0.127');
  });
  test('of vertical walls is their cut at every angle, summed up (numerical mean over 100,000 angles)', () => {
    const steps = 100_000;
    let sum = 0;
    for (let index = 0; index < steps; index += 1)
      sum += Math.abs(Math.cos((2 * Math.PI * (index + 0.5)) / steps));
    expectRelative(shareOf('prismatic', 0.53).value, (0.53 * sum) / steps, 1e-8);
  });
  test('of cells is ρ^1.5: a quarter leaves an eighth (gibson-ashby)', () => {
    expectRelative(shareOf('cellular', 0.25).value, 1 / 8);
    expect(shareOf('cellular', 0.25).source).toBe('gibson-ashby');
  });
  test('is 0 without infill and 1 for a solid, in both families', () => {
    for (const family of ['prismatic', 'cellular'] as const) {
      expect(shareOf(family, 0).value).toBe(0);
      expect(shareOf(family, 1)).toMatchObject({ value: 1, formula: '1' });
    }
  });
  test('rises with density and stays below it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<InfillFamily>('prismatic', 'cellular'),
        fc.double({ min: 0.01, max: 0.98, noNaN: true }),
        (family, density) => {
          const { value } = shareOf(family, density);
          expect(value).toBeLessThan(density);
          expect(shareOf(family, density + 0.01).value).toBeGreaterThan(value);
        },
      ),
    );
  });
});
