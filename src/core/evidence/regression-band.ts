import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { predictorMean, predictorSpread, quantileOfFit, responseMean } from './fit-ways.ts';
import { type LinearFit, leverageAt } from './linear-regression.ts';
import { countEntry } from './sample.ts';
import { type FitUnits, residualOf, slopeWay } from './slope.ts';

/** What a fit says at one place. */
export interface RegressionBand {
  readonly expected: Derived;
  /** Ends for the mean of many tests there. */
  readonly mean: { readonly low: Derived; readonly high: Derived };
  /** Ends for the next single test there. */
  readonly next: { readonly low: Derived; readonly high: Derived };
  /** Whether the place lies outside of the predictors' own range in the points is for the caller to say. */
  readonly leverage: Derived;
}

/** Where a fit is asked, and how sure the ends are to be. */
export interface BandQuestion {
  /** As many as the fit has. */
  readonly predictors: readonly number[];
  /** The way to each; absent: they are only asked for. */
  readonly from?: readonly Derived[];
  /** Two-sided, [-], 0 < confidence < 1. */
  readonly confidence: number;
  readonly units: FitUnits;
}

/**
 * Value, confidence band and prediction band of a fit at one place.
 *
 *     ŷ = a + b·x        mean: ŷ ± t·s·√h        next test: ŷ ± t·s·√(1 + h)
 *
 * Each place for itself; a band that is to hold everywhere at once is wider.
 *
 * @param fitted - of linearRegression
 * @param question - place, confidence [-], units
 * @returns each end with its derivation
 * @source nist-handbook linear least squares, confidence and prediction bands
 */
export function regressionBand(fitted: LinearFit, question: BandQuestion): RegressionBand {
  const { predictors, confidence, units } = question;
  const { fit, residual } = fitted;
  const unit = units.response;
  // From the mean of the points outward: an intercept far away would only bring rounding.
  const value = predictors.reduce(
    (sum, x, place) => sum + (fit.slopes[place] ?? 0) * (x - (fit.means[place] ?? 0)),
    fit.meanResponse,
  );
  const common = { source: 'nist-handbook', standing: 'measured' } as const;
  const leverage: Derived = {
    ...common,
    symbol: 'h_x',
    value: leverageAt(fitted, predictors),
    unit: '-',
    ...leverageWay(fitted, question),
  };
  const expected: Derived = {
    ...common,
    symbol: 'y_e',
    value,
    unit,
    formula:
      predictors.length === 1 ? 'm_Y + b_1 · (v_1 − m_v1)' : 'm_Y + b_1 · (v_1 − m_v1) + b_2 · (v_2 − m_v2)',
    entries: [
      entryFrom(responseMean(fitted, unit)),
      ...fit.slopes.map((_, place) =>
        entryAs(place === 0 ? 'b_1' : 'b_2', entryFrom(slopeWay(fitted, { place, units }))),
      ),
      ...placeEntries(fitted, question),
    ],
  };
  const quantile = quantileOfFit(fitted, confidence);
  const t = quantile.value;
  const entries = [
    entryFrom(expected),
    entryFrom(quantile),
    entryFrom(residualOf(fitted, units)),
    entryFrom(leverage),
  ];
  const h = leverage.value;
  const end = (
    symbol: 'y_m1' | 'y_m2' | 'y_n1' | 'y_n2',
    sign: 1 | -1,
    spread: number,
    formula: string,
  ): Derived => ({
    ...common,
    symbol,
    value: value + sign * t * residual * Math.sqrt(spread),
    unit,
    formula,
    entries,
  });
  return {
    expected,
    mean: {
      low: end('y_m1', -1, h, 'y_e − t_q · s_e · √h_x'),
      high: end('y_m2', 1, h, 'y_e + t_q · s_e · √h_x'),
    },
    next: {
      low: end('y_n1', -1, 1 + h, 'y_e − t_q · s_e · √(1 + h_x)'),
      high: end('y_n2', 1, 1 + h, 'y_e + t_q · s_e · √(1 + h_x)'),
    },
    leverage,
  };
}

/** With one thing varied a formula; with two the triangle of the fit, which a line cannot show. */
function leverageWay(fitted: LinearFit, question: BandQuestion): Pick<Derived, 'formula' | 'entries'> {
  const n = countEntry(fitted.points);
  return fitted.slopes.length === 1
    ? {
        formula: '1/n_t + (v_1 − m_v1)²/((n_t − 1) · s_V²)',
        entries: [
          n,
          ...placeEntries(fitted, question),
          entryFrom(predictorSpread(fitted, question.units.predictor)),
        ],
      }
    : {
        formula: 'distance from the middle of the points in their own spread',
        entries: [n, ...placeEntries(fitted, question)],
      };
}

/** Where the fit is asked, beside the middle of its points. */
const placeEntries = (fitted: LinearFit, { predictors, from, units }: BandQuestion): readonly Entry[] =>
  predictors.flatMap((at, place) => {
    const symbol = place === 0 ? 'v_1' : 'v_2';
    const way = from?.[place];
    return [
      way === undefined ? entry(symbol, at, units.predictor) : entryAs(symbol, entryFrom(way)),
      entryFrom(predictorMean(fitted, place, units.predictor)),
    ];
  });
