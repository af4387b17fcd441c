import { studentQuantile } from '../numerics/student-t.ts';
import { type CoreUnit, type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { Estimated } from './compare-groups.ts';
import type { LinearFit } from './linear-regression.ts';
import { countEntry } from './sample.ts';

/** Units of a fit: what comes out, what is varied, and the one over the other. */
export interface FitUnits {
  readonly response: CoreUnit;
  readonly predictor: CoreUnit;
  readonly slope: CoreUnit;
}

/** Which slope is asked for, and how sure its ends are to be. */
export interface SlopeQuestion {
  /** Place of its predictor in the points. */
  readonly place: number;
  readonly units: FitUnits;
  /** Two-sided, [-], 0 < confidence < 1. */
  readonly confidence: number;
}

const measured = (of: Omit<Derived, 'source' | 'standing'>): Derived => ({
  ...of,
  source: 'nist-handbook',
  standing: 'measured',
});

/** Standard deviation of the response and of the predictors over the points, s_Y and s_V. */
const spreadOf = (squares: number, { points }: LinearFit): number => Math.sqrt(squares / (points - 1));
const ownLength = ({ fit }: LinearFit, place: number): number => fit.triangle[place]?.[place] ?? 0;

/**
 * Standard deviation of the residuals of a fit.
 *
 *     s = √(Σe²/(n − 1 − predictors))
 *
 * @param fitted - of linearRegression
 * @param unit - of the response
 * @returns s_e in the unit of the response [N, N·mm or -]
 * @source nist-handbook linear least squares
 */
export const residualOf = (fitted: LinearFit, unit: CoreUnit): Derived =>
  measured({
    symbol: 's_e',
    value: fitted.residual,
    unit,
    formula: 'root of the squared distances from the fit over n_t − 1 − k_p',
    entries: [countEntry(fitted.points), entry('k_p', fitted.slopes.length, '-')],
  });

/**
 * Share of the response's squares that a fit explains.
 *
 *     R² = 1 − Σe²/Σ(y − ȳ)²
 *
 * @param fitted - of linearRegression
 * @param unit - of the response
 * @returns R² [-]; undefined where the response has no spread
 * @source nist-handbook linear least squares
 */
export function determinationOf(fitted: LinearFit, unit: CoreUnit): Derived | undefined {
  const { determination, fit, points } = fitted;
  if (determination === undefined) return undefined;
  return measured({
    symbol: 'R_2',
    value: determination,
    unit: '-',
    formula: '1 − (n_t − 1 − k_p) · s_e²/((n_t − 1) · s_Y²)',
    entries: [
      countEntry(points),
      entry('k_p', fitted.slopes.length, '-'),
      entryFrom(residualOf(fitted, unit)),
      entry('s_Y', spreadOf(fit.totalSquares, fitted), unit),
    ],
  });
}

/**
 * Slope of a fit with its confidence interval.
 *
 *     b ± t·u        one predictor: b = r·s_Y/s_V,   u = s_e/(s_V·√(n − 1))
 *
 * t is the quantile of Student’s t at n − 1 − predictors degrees of freedom. With two predictors each slope is the one at
 * the other’s value kept.
 *
 * @param fitted - of linearRegression
 * @param question - which slope, units, confidence [-]
 * @returns b and its ends, in the unit of the slope
 * @source nist-handbook linear least squares
 */
export function slopeOf(fitted: LinearFit, { place, units, confidence }: SlopeQuestion): Estimated {
  const { value = 0, deviation = 0 } = fitted.slopes[place] ?? {};
  const alone = fitted.slopes.length === 1;
  const predictorSpread = entry(
    's_V',
    ownLength(fitted, place) / Math.sqrt(fitted.points - 1),
    units.predictor,
  );
  const n = countEntry(fitted.points);
  const correlation = Math.sign(value) * Math.sqrt(fitted.determination ?? 0);
  const slope = measured({
    symbol: 'b_v',
    value,
    unit: units.slope,
    formula: alone ? 'r_e · s_Y/s_V' : 'slope by least squares, the other predictor kept',
    entries: alone
      ? [
          entry('r_e', correlation, '-'),
          entry('s_Y', spreadOf(fitted.fit.totalSquares, fitted), units.response),
          predictorSpread,
        ]
      : [n],
  });
  const uncertainty = measured({
    symbol: 'u_bs',
    value: deviation,
    unit: units.slope,
    formula: alone ? 's_e/(s_V · √(n_t − 1))' : 'standard deviation of a slope by least squares',
    entries: alone ? [entryFrom(residualOf(fitted, units.response)), predictorSpread, n] : [n],
  });
  const t = studentQuantile((1 + confidence) / 2, fitted.degrees);
  const entries = [
    entryFrom(slope),
    entry('t_q', t, '-'),
    entryFrom(uncertainty),
    entry('γ', confidence, '-'),
  ];
  const end = (symbol: 'b_low' | 'b_high', sign: 1 | -1): Derived =>
    measured({
      symbol,
      value: value + sign * t * deviation,
      unit: units.slope,
      formula: sign === 1 ? 'b_v + t_q · u_bs' : 'b_v − t_q · u_bs',
      entries,
    });
  return { value: slope, low: end('b_low', -1), high: end('b_high', 1) };
}
