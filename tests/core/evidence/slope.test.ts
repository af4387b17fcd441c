import { describe, expect, test } from 'vitest';
import { type LinearFit, linearRegression } from '../../../src/core/evidence/linear-regression.ts';
import { determinationOf, residualOf, slopeOf } from '../../../src/core/evidence/slope.ts';
import strd from '../../fixtures/nist-strd/sets.json';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const UNITS = { response: 'N', predictor: 'mm', slope: 'N/mm' } as const;
const fitOf = (rows: readonly (readonly number[])[]): LinearFit => {
  const found = linearRegression(
    rows.map(([response = 0, ...predictors]) => ({ predictors: predictors, response })),
  );
  if (found.kind !== 'fitted') throw new Error(found.code);
  return found;
};
const norris = strd.linear.Norris;
const NORRIS = fitOf(norris.response.map((response, place) => [response, norris.columns[0]?.[place] ?? 0]));

describe('slopeOf', () => {
  test('is the certified slope of Norris between its ends by t 2.0322 of 34 degrees (NIST StRD; tables of t)', () => {
    const { value, low, high } = slopeOf(NORRIS, { place: 0, units: UNITS, confidence: 0.95 });
    const [, [slope = '', deviation = ''] = []] = norris.coefficients;
    expectRelative(value.value, Number(slope), 1e-11);
    expectPublished((high.value - value.value) / Number(deviation), '2.0322');
    expectPublished((value.value - low.value) / Number(deviation), '2.0322');
  });
  test('leads to correlation, spreads and the quantile of 2 degrees of freedom', () => {
    const { value, high } = slopeOf(
      fitOf([
        [7.1, 1],
        [9.3, 2.2],
        [8.8, 3.1],
        [11.9, 4],
      ]),
      {
        place: 0,
        units: UNITS,
        confidence: 0.95,
      },
    );
    expectWays([value, high]);
    // t of 0.975 with 4 − 1 − 1 degrees of freedom, printed tables: 4.303
    const quantile = high.entries[1];
    expectPublished(quantile?.value ?? 0, '4.303');
    expect(quantile?.from?.formula).toBe('t(p_γ, ν_f)');
    expect(quantile?.from?.entries[1]?.from?.formula).toBe('n_t − 1 − k_p');
  });
  test('takes the unit of the slope, and is measured', () => {
    const { value } = slopeOf(NORRIS, { place: 0, units: UNITS, confidence: 0.95 });
    expect(value).toMatchObject({ unit: 'N/mm', standing: 'measured', source: 'nist-handbook' });
  });
  test('finds each of two slopes of a plane, and their ends meet where nothing scatters', () => {
    const rows = [
      [1, 2],
      [4, -1],
      [0, 7],
      [3, 3],
    ].map(([x = 0, z = 0]) => [5 + 3 * x - 2 * z, x, z]);
    const [one, other] = [0, 1].map((place) =>
      slopeOf(fitOf(rows), { place, units: UNITS, confidence: 0.9 }),
    );
    expectRelative(one?.value.value ?? 0, 3, 1e-12);
    expectRelative(other?.value.value ?? 0, -2, 1e-12);
    expect((one?.high.value ?? 9) - (one?.low.value ?? 0)).toBeLessThan(1e-12);
  });
  test('lies on both sides of a level line', () => {
    const { low, high } = slopeOf(
      fitOf([
        [7, 1],
        [9, 2],
        [7, 3],
      ]),
      { place: 0, units: UNITS, confidence: 0.95 },
    );
    expect(low.value).toBeLessThan(0);
    expectRelative(high.value, -low.value, 1e-9);
  });
});

describe('determinationOf', () => {
  test('is the certified R² of Norris (NIST StRD)', () => {
    expectRelative(determinationOf(NORRIS, UNITS)?.value ?? 0, Number(norris.determination), 1e-14);
  });
  test('is nothing where all values are equal', () => {
    expect(
      determinationOf(
        fitOf([
          [8, 1],
          [8, 2],
          [8, 4],
        ]),
        UNITS,
      ),
    ).toBeUndefined();
  });
});

describe('residualOf', () => {
  test('is the certified residual standard deviation of Norris (NIST StRD)', () => {
    expectRelative(residualOf(NORRIS, UNITS).value ** 2 * 34, Number(norris.residualSquares), 1e-11);
  });
});
