import { type CoreUnit, type Derived, entryFrom } from '../sources/derived.ts';
import type { Estimated } from './compare-groups.ts';
import { fittedEntries, predictorSpread, quantileOfFit, responseSpread, variedEntry } from './fit-ways.ts';
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

/**
 * Standard deviation of the residuals of a fit.
 *
 *     s = √(Σe²/(n − 1 − predictors))
 *
 * @param fitted - of linearRegression
 * @param units - of the response and of the predictors
 * @returns s_e in the unit of the response [N, N·mm or -]
 * @source nist-handbook linear least squares
 */
export const residualOf = (fitted: LinearFit, units: Omit<FitUnits, 'slope'>): Derived =>
  measured({
    symbol: 's_e',
    value: fitted.residual,
    unit: units.response,
    formula: 'root of the squared distances from the fit over n_t − 1 − k_p',
    entries: [countEntry(fitted.points), variedEntry(fitted), ...fittedEntries(fitted, units)],
  });

/**
 * Share of the response's squares that a fit explains.
 *
 *     R² = 1 − Σe²/Σ(y − ȳ)²
 *
 * @param fitted - of linearRegression
 * @param units - of the response and of the predictors
 * @returns R² [-]; undefined where the response has no spread
 * @source nist-handbook linear least squares
 */
export function determinationOf(fitted: LinearFit, units: Omit<FitUnits, 'slope'>): Derived | undefined {
  const { determination, points } = fitted;
  if (determination === undefined) return undefined;
  return measured({
    symbol: 'R_2',
    value: determination,
    unit: '-',
    formula: '1 − (n_t − 1 − k_p) · s_e²/((n_t − 1) · s_Y²)',
    entries: [
      countEntry(points),
      variedEntry(fitted),
      entryFrom(residualOf(fitted, units)),
      entryFrom(responseSpread(fitted, units.response)),
    ],
  });
}

/**
 * Slope of a fit.
 *
 *     b = r·s_Y/s_V        of two predictors each at the other’s value kept, by least squares
 *
 * @param fitted - of linearRegression
 * @param question - which slope, units
 * @returns b in the unit of the slope [N/mm, N or -]
 * @source nist-handbook linear least squares
 */
export function slopeWay(fitted: LinearFit, { place, units }: Omit<SlopeQuestion, 'confidence'>): Derived {
  const common = { symbol: 'b_v', value: fitted.slopes[place]?.value ?? 0, unit: units.slope } as const;
  if (fitted.slopes.length > 1) {
    return measured({
      ...common,
      formula: 'slope by least squares, the other predictor kept',
      entries: [countEntry(fitted.points), ...fittedEntries(fitted, units)],
    });
  }
  const correlation = measured({
    symbol: 'r_e',
    value: Math.sign(common.value) * Math.sqrt(fitted.determination ?? 0),
    unit: '-',
    formula: 'correlation of what was varied and what came out',
    entries: fittedEntries(fitted, units),
  });
  return measured({
    ...common,
    formula: 'r_e · s_Y/s_V',
    entries: [
      entryFrom(correlation),
      entryFrom(responseSpread(fitted, units.response)),
      entryFrom(predictorSpread(fitted, units.predictor)),
    ],
  });
}

function slopeDeviation(fitted: LinearFit, { place, units }: SlopeQuestion): Derived {
  const residual = entryFrom(residualOf(fitted, units));
  const n = countEntry(fitted.points);
  const common = {
    symbol: 'u_bs',
    value: fitted.slopes[place]?.deviation ?? 0,
    unit: units.slope,
  } as const;
  return fitted.slopes.length === 1
    ? measured({
        ...common,
        formula: 's_e/(s_V · √(n_t − 1))',
        entries: [residual, entryFrom(predictorSpread(fitted, units.predictor)), n],
      })
    : measured({
        ...common,
        formula: 'standard deviation of a slope by least squares',
        entries: [residual, n, ...fittedEntries(fitted, units)],
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
export function slopeOf(fitted: LinearFit, question: SlopeQuestion): Estimated {
  const slope = slopeWay(fitted, question);
  const uncertainty = slopeDeviation(fitted, question);
  const t = quantileOfFit(fitted, question.confidence);
  const entries = [entryFrom(slope), entryFrom(t), entryFrom(uncertainty)];
  const end = (symbol: 'b_low' | 'b_high', sign: 1 | -1): Derived =>
    measured({
      symbol,
      value: slope.value + sign * t.value * uncertainty.value,
      unit: question.units.slope,
      formula: sign === 1 ? 'b_v + t_q · u_bs' : 'b_v − t_q · u_bs',
      entries,
    });
  return { value: slope, low: end('b_low', -1), high: end('b_high', 1) };
}
