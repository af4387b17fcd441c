import { describe, expect, test } from 'vitest';
import { type FitPoint, leverageAt, linearRegression } from '../../../src/core/evidence/linear-regression.ts';
import { regressionBand } from '../../../src/core/evidence/regression-band.ts';
import strd from '../../fixtures/nist-strd/sets.json';
import r from '../../fixtures/r-statistics/samples.json';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectRelative } from '../../support/published.ts';

const pointsOf = (
  columns: readonly (readonly number[])[],
  response: readonly number[],
): readonly FitPoint[] =>
  response.map((value, place) => ({
    predictors: columns.map((column) => column[place] ?? 0),
    response: value,
  }));
const fitOf = (points: readonly FitPoint[]) => {
  const found = linearRegression(points);
  if (found.kind !== 'fitted') throw new Error(found.code);
  return found;
};
const SETS = [
  ['Norris', strd.linear.Norris],
  ['Pontius', strd.linear.Pontius],
] as const;
const CASES = [
  ['a line', pointsOf([r.line.x], r.line.y), r.line],
  ['a plane', pointsOf([r.plane.x1, r.plane.x2], r.plane.y), r.plane],
] as const;

describe('linearRegression', () => {
  test.each(SETS)('meets the certified values of %s (NIST StRD)', (_name, set) => {
    const fit = fitOf(pointsOf(set.columns, set.response));
    const ours = [fit.intercept, ...fit.slopes];
    for (const [place, [value = '', deviation = '']] of set.coefficients.entries()) {
      // Pontius’ intercept is what is left of numbers a thousand times as large.
      expectRelative(ours[place]?.value ?? 0, Number(value), 1e-11);
      expectRelative(ours[place]?.deviation ?? 0, Number(deviation), 1e-11);
    }
    expectRelative(fit.residual ** 2 * fit.degrees, Number(set.residualSquares), 1e-11);
  });
  test('meets the certified R² of Norris (NIST StRD)', () => {
    const set = strd.linear.Norris;
    const { determination } = fitOf(pointsOf(set.columns, set.response));
    expectRelative(determination ?? 0, Number(set.determination), 1e-14);
  });
  test.each(CASES)('of %s is R’s lm', (_name, points, row) => {
    const fit = fitOf(points);
    const ours = [fit.intercept, ...fit.slopes];
    for (const [place, coefficient] of ours.entries()) {
      expectRelative(coefficient.value, row.coefficients[place] ?? 0, 1e-12);
      expectRelative(coefficient.deviation, row.deviations[place] ?? 0, 1e-12);
    }
    expectRelative(fit.residual, row.residual, 1e-12);
    expectRelative(fit.determination ?? 0, row.determination, 1e-12);
    expectRelative(fit.chance ?? 0, row.fTail, 1e-11);
  });
  test('finds a plane that the points lie on', () => {
    const places = [
      [1, 2],
      [4, -1],
      [0, 7],
      [3, 3],
      [-2, 5],
    ];
    const fit = fitOf(places.map(([x = 0, z = 0]) => ({ predictors: [x, z], response: 3 + 2 * x - 5 * z })));
    expectRelative(fit.intercept.value, 3, 1e-13);
    expectRelative(fit.slopes[1]?.value ?? 0, -5, 1e-13);
    expect(fit.residual).toBeLessThan(1e-13);
  });
  test('is finite for any points', () => {
    const some = fc.array(fc.tuple(fc.integer({ min: 150, max: 300 }), fc.integer({ min: 0, max: 900 })), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(some, (list) => {
        const found = linearRegression(list.map(([x, response]) => ({ predictors: [x], response })));
        expect(notFinite(found)).toEqual([]);
      }),
    );
  });
  test('leaves R² away where the response has no spread', () => {
    const fit = fitOf([1, 2, 4].map((x) => ({ predictors: [x], response: 8 })));
    expect(fit).not.toHaveProperty('determination');
    expect(fit.slopes[0]?.value).toBe(0);
  });
  test('refuses too few points', () => {
    const points = [1, 2, 5].map((x) => ({ predictors: [x, x * x], response: x }));
    expect(linearRegression(points)).toEqual({
      kind: 'refused',
      code: 'too-few-points',
      points: 3,
      least: 4,
    });
    expect(linearRegression([])).toMatchObject({ code: 'too-few-points', least: 3 });
  });
  test('refuses a predictor that was never varied, and says which', () => {
    const points = [1, 2, 5, 9].map((x) => ({ predictors: [x, 230], response: x }));
    expect(linearRegression(points)).toEqual({ kind: 'refused', code: 'no-spread', predictor: 1 });
  });
  test('refuses predictors of which one follows from the other', () => {
    const points = [1, 2, 5, 9].map((x) => ({ predictors: [x, 0.1 * x + 3], response: x * x }));
    expect(linearRegression(points)).toEqual({ kind: 'refused', code: 'collinear', predictor: 1 });
  });
});

describe('regressionBand', () => {
  test.each(CASES)('of %s is R’s predict', (_name, points, row) => {
    const band = regressionBand(fitOf(points), {
      predictors: [row.at].flat(),
      confidence: row.level,
      units: { response: 'N', predictor: 'mm', slope: 'N/mm' },
    });
    const mean = [band.expected, band.mean.low, band.mean.high].map(({ value }) => value);
    const next = [band.expected, band.next.low, band.next.high].map(({ value }) => value);
    for (const place of [0, 1, 2]) {
      expectRelative(mean[place] ?? 0, row.mean[place] ?? 0, 1e-12);
      expectRelative(next[place] ?? 0, row.nextOne[place] ?? 0, 1e-12);
    }
  });
});

describe('leverageAt', () => {
  test('sums over the points to the number of coefficients', () => {
    const points = CASES[1][1];
    const fit = fitOf(points);
    const sum = points.reduce((total, { predictors }) => total + leverageAt(fit, predictors), 0);
    expectRelative(sum, 3, 1e-12);
  });
});
