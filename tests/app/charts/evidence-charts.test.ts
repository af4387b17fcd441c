import { describe, expect, test } from 'vitest';
import { bondCurves } from '../../../src/app/charts/bond-curves.ts';
import { probabilityLines } from '../../../src/app/charts/probability-lines.ts';
import { evidenceOf } from '../../../src/core/bench/evidence.ts';
import { probabilityPlot } from '../../../src/core/evidence/probability-plot.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

describe('bondCurves', () => {
  const [setup] = evidenceOf(
    [
      benchTest({ value: 107 }),
      benchTest({ id: 'test-2', value: 118 }),
      benchTest({ id: 'test-3', value: 70, result: 'held' }),
    ],
    answerableJoint(),
    undefined,
  ).setups;
  if (setup === undefined) throw new Error('no test of a bond');
  const { points, marks, quantiles, ticks } = bondCurves(setup, 'usual');
  test('draws densities: what lies under each is one, but for the tail beyond the axis', () => {
    const end = ticks.at(-1) ?? 0;
    for (const key of ['before', 'after'] as const) {
      const area = points.reduce((sum, point) => sum + (point[key] * end) / points.length, 0);
      expect(area).toBeGreaterThan(0.96);
      expect(area).toBeLessThan(1.001);
    }
  });
  test('marks each coupon of the size where it showed its bond: 1049.3 N over 1542.1 N', () => {
    expect(marks.map(({ testId, says }) => [testId, says])).toEqual([
      ['test-1', 'broke'],
      ['test-2', 'broke'],
      ['test-3', 'held'],
    ]);
    expectPublished(marks[0]?.bond.value ?? 0, '0.680');
    expect(bondCurves(setup, 'another').marks).toEqual([]);
  });
  test('gives the same as shares below: 0.43 for 1 in 20 and 0.85 for half without tests', () => {
    expectPublished(quantiles[0]?.before.value ?? 0, '0.433');
    expectRelative(quantiles[2]?.before.value ?? 0, 0.85);
    const after = quantiles.map((quantile) => quantile.after.value);
    expect(after).toEqual(after.toSorted((one, other) => one - other));
  });
});

describe('probabilityLines', () => {
  const values = [894, 945, 1018, 1032, 1080, 1144];
  const plot = probabilityPlot({ values, unit: 'N' });
  if (plot.kind !== 'plotted') throw new Error('six values are enough');
  const { normal, lognormal, ticks } = probabilityLines(plot.points);
  test('go through the mean and the geometric mean at half', () => {
    const middle = (line: typeof normal) => line.find(({ score }) => score === 0)?.value ?? 0;
    expectRelative(middle(normal), 6113 / 6);
    expectRelative(middle(lognormal), values.reduce((product, value) => product * value, 1) ** (1 / 6), 1e-9);
  });
  test('lie on an axis of round values that holds both', () => {
    const drawn = [...normal, ...lognormal].map(({ value }) => value);
    expect(ticks[0]).toBeLessThanOrEqual(Math.min(...drawn));
    expect(ticks.at(-1)).toBeGreaterThanOrEqual(Math.max(...drawn));
    expect(ticks.every((tick) => tick % 50 === 0)).toBe(true);
  });
});
