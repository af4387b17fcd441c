import { describe, expect, test } from 'vitest';
import { countForce, emptyBins } from '../../../src/core/chance/force-bins.ts';
import { forceQuantile } from '../../../src/core/chance/force-quantile.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectRelative } from '../../support/published.ts';

function binsOf(top: number, forces: readonly number[]) {
  const bins = emptyBins(top);
  for (const force of forces) countForce(bins, force);
  return bins;
}

describe('forceQuantile', () => {
  test('of an even row lies at its share, within a bin', () => {
    const bins = binsOf(
      200,
      Array.from({ length: 1000 }, (_, index) => 0.1 + index * 0.1),
    );
    for (const share of [0.05, 0.31, 0.95]) {
      // Neighbours stand 0.1 N apart, a bin is 200/3840 N wide.
      expect(Math.abs(forceQuantile(bins, share).value - 100 * share)).toBeLessThanOrEqual(0.1 + 200 / 3840);
    }
  });
  test('is what its formula comes to, with the joints below its bin counted', () => {
    const found = forceQuantile(binsOf(130, [-2, 11, 12.5, 40.7, 40.71, 40.72, 97, 140]), 0.53);
    const of = (symbol: string) => found.entries.find((entry) => entry.symbol === symbol)?.value;
    expect([of('n_j'), of('k_q'), of('h_q')]).toEqual([8, 3, 3]);
    // 40.7 N lies in the bin 1202 of 130/3840 N each: (1202 + (0.53 · 8 − 3)/3) · 0.033854
    expect(of('i_q')).toBe(1202);
    expectRelative(evaluated(found) ?? Number.NaN, found.value);
  });
  test('is an end where more than the share lies beyond it', () => {
    const bins = binsOf(50, [-3, -2, 20, 60, 70]);
    for (const [share, end] of [
      [0.2, 0],
      [0.9, 50],
    ] as const) {
      const found = forceQuantile(bins, share);
      expect(found.value).toBe(end);
      expect(evaluated(found)).toBe(end);
    }
  });
});
