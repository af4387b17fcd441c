import { describe, expect, test } from 'vitest';
import { carefulMean, orthogonalFit, solvedDownwards } from '../../../src/core/numerics/orthogonal-fit.ts';
import strd from '../../fixtures/nist-strd/sets.json';
import { expectRelative } from '../../support/published.ts';

/** Intercept and slopes with their standard deviations. */
function coefficients(columns: readonly (readonly number[])[], response: readonly number[]) {
  const fit = orthogonalFit(columns, response);
  const variance = fit.residualSquares / (response.length - columns.length - 1);
  const unit = (place: number) => columns.map((_, other) => (other === place ? 1 : 0));
  const lengthSquare = (difference: readonly number[]) =>
    solvedDownwards(fit.triangle, difference).reduce((sum, u) => sum + u * u, 0);
  // The covariance of the slopes is R⁻¹·R⁻ᵀ: a slope is the response's change for one unit of its column.
  return [
    {
      value: fit.slopes.reduce(
        (sum, slope, place) => sum - slope * (fit.means[place] ?? 0),
        fit.meanResponse,
      ),
      deviation: Math.sqrt(variance * (1 / response.length + lengthSquare(fit.means))),
    },
    ...fit.slopes.map((value, place) => ({
      value,
      deviation: Math.sqrt(variance * lengthSquare(unit(place))),
    })),
  ];
}

describe('orthogonalFit', () => {
  // Residuals lose what the response has in common with the fit: 3 digits for Pontius, 4 in the columns of Longley.
  test.each(Object.entries(strd.linear))('meets the certified values of %s (NIST StRD)', (_name, set) => {
    const ours = coefficients(set.columns, set.response);
    expect(ours).toHaveLength(set.coefficients.length);
    for (const [place, [value = '', deviation = '']] of set.coefficients.entries()) {
      expectRelative(ours[place]?.value ?? 0, Number(value), 1e-11);
      expectRelative(ours[place]?.deviation ?? 0, Number(deviation), 1e-11);
    }
    expectRelative(
      orthogonalFit(set.columns, set.response).residualSquares,
      Number(set.residualSquares),
      1e-11,
    );
  });
  test.each([
    ['Wampler1', 1],
    ['Wampler2', 0.1],
  ])(
    'finds the polynomial of %s, y = Σ(c·x)^k, with no residual (NIST StRD, by definition)',
    (_name, base) => {
      const x = Array.from({ length: 21 }, (_, place) => place);
      const powers = [1, 2, 3, 4, 5];
      const columns = powers.map((power) => x.map((one) => one ** power));
      const response = x.map((one) => powers.reduce((sum, power) => sum + (base * one) ** power, 1));
      const ours = coefficients(columns, response);
      for (const power of [0, ...powers]) expectRelative(ours[power]?.value ?? 0, base ** power, 1e-7);
      expect(orthogonalFit(columns, response).residualSquares).toBeLessThan(1e-16 * response.length);
    },
  );
  test('shows by its shares that one column is another one', () => {
    const x = [1.5, 2.25, 7, 9.5];
    const { ownShares } = orthogonalFit([x, x.map((one) => 3 - 2 * one)], [1, 2, 4, 3]);
    expect(ownShares[0]).toBe(1);
    expect(ownShares[1]).toBeLessThan(1e-14);
  });
  test('gives a column without spread no slope and no share', () => {
    const { slopes, ownShares } = orthogonalFit([[4, 4, 4]], [1, 2, 6]);
    expect(slopes).toEqual([0]);
    expect(ownShares).toEqual([0]);
  });
});

describe('carefulMean', () => {
  test('keeps the last digit of large numbers with a small spread', () => {
    const values = Array.from({ length: 1000 }, (_, place) => 1e9 + place / 1000);
    expectRelative(carefulMean(values) - 1e9, 0.4995, 1e-6);
  });
});
