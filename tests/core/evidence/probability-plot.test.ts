import { describe, expect, test } from 'vitest';
import { plottedAt, plottingPosition, probabilityPlot } from '../../../src/core/evidence/probability-plot.ts';
import { normalQuantile } from '../../../src/core/numerics/normal-distribution.ts';
import r from '../../fixtures/r-statistics/samples.json';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const plotOf = (values: readonly number[]) => {
  const found = probabilityPlot({ values, unit: 'N' });
  if (found.kind !== 'plotted') throw new Error(found.code);
  return found;
};

describe('probabilityPlot', () => {
  test.each(r.plots)('of $values has the coefficients of R’s cor and ppoints', (row) => {
    const plot = plotOf(row.values);
    expectRelative(plot.normal.value, row.normal, 1e-13);
    expectRelative(plot.lognormal?.value ?? 0, row.lognormal, 1e-13);
    for (const [place, { position }] of plot.points.entries()) {
      expectRelative(position, row.positions[place] ?? 0, 1e-14);
    }
  });
  test('lies quite straight for the distribution that the values are made of', () => {
    const logs = [1, 2, 3, 4, 5, 6, 7].map((rank) => 6 + 0.4 * normalQuantile(plottingPosition(rank, 7)));
    const plot = plotOf(logs.map(Math.exp).toReversed());
    expectRelative(plot.lognormal?.value ?? 0, 1, 1e-14);
    expect(plot.normal.value).toBeLessThan(0.99);
    expect(plot.points.map(({ value }) => value)).toEqual(logs.map(Math.exp));
  });
  test('has no lognormal plot for a value of zero', () => {
    expect(plotOf([0, 3, 5])).not.toHaveProperty('lognormal');
  });
  test('refuses two values, and equal ones', () => {
    expect(probabilityPlot({ values: [3, 4], unit: 'N' })).toMatchObject({
      code: 'too-few-values',
      count: 2,
    });
    expect(probabilityPlot({ values: [3, 3, 3], unit: 'N' })).toMatchObject({ code: 'no-scatter' });
  });
  test('has coefficients of at most 1 and is finite', () => {
    const values = fc.array(fc.integer({ min: 1, max: 999 }), { minLength: 3, maxLength: 30 });
    fc.assert(
      fc.property(values, (list) => {
        const found = probabilityPlot({ values: list, unit: 'N·mm' });
        expect(notFinite(found)).toEqual([]);
        const straightness = found.kind === 'plotted' ? found.normal.value : 0;
        expect(straightness).toBeLessThanOrEqual(1 + 1e-14);
      }),
    );
  });
});

describe('plottingPosition', () => {
  test('is even about the middle', () => {
    expect(plottingPosition(3, 5)).toBe(0.5);
    expectRelative(plottingPosition(2, 9), 1 - plottingPosition(8, 9), 1e-15);
  });
});

describe('plottedAt', () => {
  test('is the point of the plot: the 1st of 5 at 0.119 (Blom: 0.625/5.25), −1.18 deviations (tables)', () => {
    const { position, score } = plottedAt(1, 5);
    expectPublished(position.value, '0.119');
    expectPublished(score.value, '-1.18');
  });
});
