import { describe, expect, test } from 'vitest';
import { ratioTicks } from '../../../src/app/charts/ratio-ticks.ts';
import { strengthLines } from '../../../src/app/charts/strength-lines.ts';
import { strengthFit } from '../../../src/core/bench/strength-fit.ts';
import type { StrengthPoint } from '../../../src/core/bench/strength-points.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { expectRelative } from '../../support/published.ts';

describe('ratioTicks', () => {
  test.each([
    [0.93, 1.28, [0.9, 1, 1.1, 1.2, 1.3]],
    [0.31, 0.62, [0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2]],
    [1.4, 4.2, [0.7, 1, 1.5, 2, 3, 5]],
  ])('of %f to %f hold both and 1', (low, high, ticks) => {
    expect(ratioTicks(low, high)).toEqual(ticks);
  });
  test('end at a tenth and ten times, whatever lies beyond', () => {
    expect(ratioTicks(0.002, 800)).toEqual([0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 5, 10]);
  });
  test('have room on both sides of 1 where nothing is compared', () => {
    expect(ratioTicks(1, 1)).toEqual([0.9, 1, 1.1]);
  });
});

describe('strengthLines', () => {
  const of = (length: number, diameter: number, load: number): StrengthPoint => ({
    test: benchTest({ value: load }),
    length,
    diameter,
    load,
  });
  const points = [of(2.6, 5, 690), of(3.6, 5, 1010), of(6.1, 5, 1530), of(3.6, 4.6, 880), of(6.1, 4.6, 1390)];
  const linesOf = (some: readonly StrengthPoint[], over: readonly ('length' | 'diameter')[]) => {
    const found = strengthFit(some, { over, kind: 'pull-out' });
    if (found.kind === 'refused') throw new Error(found.code);
    return strengthLines(found, some);
  };
  test('run from the shortest to the longest coupon and no farther', () => {
    const { panels, sizes } = linesOf(points.slice(0, 3), ['length']);
    expect(panels).toHaveLength(1);
    expect(panels[0]?.line[0]?.at).toBe(2.6);
    expectRelative(panels[0]?.line.at(-1)?.at ?? 0, 6.1);
    expect([sizes[0], sizes.at(-1)]).toEqual([2, 7]);
  });
  test('lie within the band of the mean, and that within the one of the next coupon', () => {
    for (const { fit, mean, nextLow, nextHigh } of linesOf(points.slice(0, 3), ['length']).panels[0]?.line ??
      []) {
      const order = [nextLow, mean[0], fit, mean[1], nextHigh];
      expect(order).toEqual(order.toSorted((one, other) => one - other));
    }
  });
  test('of a plane are one a diameter, with its own coupons', () => {
    const { panels } = linesOf(points, ['length', 'diameter']);
    expect(panels.map(({ kept, points: own }) => [kept, own.length])).toEqual([
      [4.6, 2],
      [5, 3],
    ]);
  });
  test('are cut at twice what was measured where few coupons leave a wide band', () => {
    const { loads } = linesOf([of(2.6, 5, 690), of(3.6, 5, 640), of(4.1, 5, 1010)], ['length']);
    expect(loads.at(-1)).toBeLessThanOrEqual(2500);
    expect(loads.at(-1)).toBeGreaterThanOrEqual(2020);
  });
});
