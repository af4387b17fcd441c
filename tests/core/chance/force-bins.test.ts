import { describe, expect, test } from 'vitest';
import { countForce, emptyBins, forceQuantile, histogramOf } from '../../../src/core/chance/force-bins.ts';

function binsOf(top: number, forces: readonly number[]) {
  const bins = emptyBins(top);
  for (const force of forces) countForce(bins, force);
  return bins;
}

describe('countForce', () => {
  test('puts a force into the bar that it lies in, ends below and above apart', () => {
    const { bars, below, above } = histogramOf(binsOf(120, [0, 1.99, 2, 119.9, 120, 300, -0.1]));
    expect([bars[0], bars[1], bars[59], below, above]).toEqual([2, 1, 1, 1, 2]);
  });
});

describe('forceQuantile', () => {
  test('of an even row lies at its share, within a bin', () => {
    const bins = binsOf(
      200,
      Array.from({ length: 1000 }, (_, index) => 0.1 + index * 0.1),
    );
    for (const share of [0.05, 0.31, 0.95]) {
      // Neighbours stand 0.1 N apart, a bin is 200/3840 N wide.
      expect(Math.abs(forceQuantile(bins, share) - 100 * share)).toBeLessThanOrEqual(0.1 + 200 / 3840);
    }
  });
  test('is an end where more than the share lies beyond it', () => {
    const bins = binsOf(50, [-3, -2, 20, 60, 70]);
    expect(forceQuantile(bins, 0.2)).toBe(0);
    expect(forceQuantile(bins, 0.9)).toBe(50);
  });
});
