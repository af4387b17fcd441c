import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import { type LinearFit, leverageAt } from './linear-regression.ts';
import { countEntry } from './sample.ts';
import { type FitUnits, residualOf } from './slope.ts';

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
  const { fit, degrees, residual } = fitted;
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
    formula: 'distance from the middle of the points in their own spread',
    entries: [countEntry(fitted.points), ...placeEntries(fitted, question)],
  };
  const expected: Derived = {
    ...common,
    symbol: 'y_e',
    value,
    unit,
    formula:
      predictors.length === 1 ? 'm_Y + b_1 · (v_1 − m_v1)' : 'm_Y + b_1 · (v_1 − m_v1) + b_2 · (v_2 − m_v2)',
    entries: [
      entry('m_Y', fit.meanResponse, unit),
      ...fit.slopes.map((slope, place) => entry(place === 0 ? 'b_1' : 'b_2', slope, units.slope)),
      ...placeEntries(fitted, question),
    ],
  };
  const t = studentQuantile((1 + confidence) / 2, degrees);
  const entries = [
    entryFrom(expected),
    entry('t_q', t, '-'),
    entryFrom(residualOf(fitted, unit)),
    entryFrom(leverage),
    entry('γ', confidence, '-'),
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

/** Where the fit is asked, beside the middle of its points. */
const placeEntries = ({ fit }: LinearFit, { predictors, units }: BandQuestion): readonly Entry[] =>
  predictors.flatMap((at, place) => [
    entry(place === 0 ? 'v_1' : 'v_2', at, units.predictor),
    entry(place === 0 ? 'm_v1' : 'm_v2', fit.means[place] ?? 0, units.predictor),
  ]);
