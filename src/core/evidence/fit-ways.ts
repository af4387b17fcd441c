import { shareBelowUpperEnd, studentQuantileWay } from '../numerics/quantile-ways.ts';
import { type CoreUnit, type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import type { LinearFit } from './linear-regression.ts';
import { countEntry, deviationOfSample, meanOfSample, type Sample } from './sample.ts';

const MEASURED = { source: 'nist-handbook', standing: 'measured' } as const;

/** What came out, test by test. */
const responsesOf = ({ data }: LinearFit, unit: CoreUnit): Sample => ({
  values: data.map(({ response }) => response),
  unit,
  from: data.map(({ from }) => from?.response),
});

/** What was varied, test by test. */
const predictorsOf = ({ data }: LinearFit, place: number, unit: CoreUnit): Sample => ({
  values: data.map(({ predictors }) => predictors[place] ?? 0),
  unit,
  from: data.map(({ from }) => from?.predictors[place]),
});

/** Mean of what came out, over the tests. */
export const responseMean = (fitted: LinearFit, unit: CoreUnit): Derived => ({
  ...meanOfSample(responsesOf(fitted, unit)),
  symbol: 'm_Y',
});

/** Mean of what was varied, over the tests. */
export const predictorMean = (fitted: LinearFit, place: number, unit: CoreUnit): Derived => ({
  ...meanOfSample(predictorsOf(fitted, place, unit)),
  symbol: place === 0 ? 'm_v1' : 'm_v2',
});

/** Standard deviation of what came out, over the tests. */
export const responseSpread = (fitted: LinearFit, unit: CoreUnit): Derived => ({
  ...deviationOfSample(responsesOf(fitted, unit), spreadOf(fitted.fit.totalSquares, fitted)),
  symbol: 's_Y',
});

/** Standard deviation of what was varied, over the tests. */
export const predictorSpread = (fitted: LinearFit, unit: CoreUnit): Derived => ({
  ...deviationOfSample(
    predictorsOf(fitted, 0, unit),
    spreadOf((fitted.fit.triangle[0]?.[0] ?? 0) ** 2, fitted),
  ),
  symbol: 's_V',
});

const spreadOf = (squares: number, { points }: LinearFit): number => Math.sqrt(squares / (points - 1));

/** How many things were varied. */
export const variedEntry = ({ slopes }: LinearFit): Entry => entry('k_p', slopes.length, '-');

/** All that a fit is made from: what was varied and what came out, each with its tests. */
export const fittedEntries = (
  fitted: LinearFit,
  units: { readonly response: CoreUnit; readonly predictor: CoreUnit },
): readonly Entry[] => [
  ...fitted.slopes.map((_, place) => entryFrom(predictorMean(fitted, place, units.predictor))),
  entryFrom(responseMean(fitted, units.response)),
];

/**
 * Quantile that the ends of a fit are reached with.
 *
 *     t = t((1 + γ)/2, n − 1 − k)
 *
 * @param fitted - of linearRegression, n points and k predictors
 * @param confidence - two-sided γ [-], 0 < γ < 1
 * @returns t [-]
 * @source nist-handbook linear least squares
 */
export function quantileOfFit(fitted: LinearFit, confidence: number): Derived {
  const freedom: Derived = {
    ...MEASURED,
    symbol: 'ν_f',
    value: fitted.degrees,
    unit: '-',
    formula: 'n_t − 1 − k_p',
    entries: [countEntry(fitted.points), variedEntry(fitted)],
  };
  return studentQuantileWay('t_q', {
    share: entryFrom(shareBelowUpperEnd(confidence)),
    freedom: entryFrom(freedom),
  });
}
