import { describe, expect, test } from 'vitest';
import { countForce, emptyBins, histogramOf } from '../../../src/core/chance/force-bins.ts';

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
