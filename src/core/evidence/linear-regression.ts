import { varianceRatioTail } from '../numerics/f-distribution.ts';
import { type OrthogonalFit, orthogonalFit, solvedDownwards } from '../numerics/orthogonal-fit.ts';
import type { Derived } from '../sources/derived.ts';

/** One test: what was varied, and what came out. */
export interface FitPoint {
  /** One or two numbers, as many in every point. */
  readonly predictors: readonly number[];
  readonly response: number;
  /** The way to each of its numbers; absent: they were read as they stand. */
  readonly from?: { readonly predictors: readonly Derived[]; readonly response: Derived };
}

/** A coefficient with its standard deviation, in the unit of the response over that of the predictor. */
export interface Coefficient {
  readonly value: number;
  readonly deviation: number;
}

/** A plane or line through points, with what its bands are computed from. */
export interface LinearFit {
  readonly kind: 'fitted';
  readonly intercept: Coefficient;
  readonly slopes: readonly Coefficient[];
  readonly points: number;
  /** The points themselves. */
  readonly data: readonly FitPoint[];
  /** n − 1 − number of predictors. */
  readonly degrees: number;
  /** Standard deviation of the residuals. */
  readonly residual: number;
  /** Share of the response's squares that the predictors explain, R²; absent where the response has no spread. */
  readonly determination?: number;
  /** Chance of so good a fit where no predictor tells anything; absent as R² is, and for residuals of zero. */
  readonly chance?: number;
  readonly fit: OrthogonalFit;
}

export type LinearRegression =
  | LinearFit
  | {
      readonly kind: 'refused';
      readonly code: 'too-few-points';
      readonly points: number;
      readonly least: number;
    }
  | { readonly kind: 'refused'; readonly code: 'no-spread'; readonly predictor: number }
  | { readonly kind: 'refused'; readonly code: 'collinear'; readonly predictor: number };

/** Least share of a predictor that the others do not explain: below it eight of sixteen digits are rounding. */
export const LEAST_OWN_SHARE = 1e-7;

/**
 * Least squares with an intercept and one or two predictors.
 *
 *     y = a + b1·x1 + b2·x2 + e        s² = Σe²/(n − 1 − predictors)        R² = 1 − Σe²/Σ(y − ȳ)²
 *
 * By orthogonal columns. Takes the scatter as the same everywhere, and the predictors as known exactly.
 *
 * @param points - with one or two predictors each
 * @returns coefficients with standard deviations, s, R²; or a refusal: too-few-points below predictors + 2, no-spread
 *   for a predictor with one value, collinear for one that the other explains
 * @source nist-handbook linear least squares
 */
export function linearRegression(points: readonly FitPoint[]): LinearRegression {
  const predictors = points[0]?.predictors.length ?? 1;
  const least = predictors + 2;
  if (points.length < least) return { kind: 'refused', code: 'too-few-points', points: points.length, least };
  const columns = Array.from({ length: predictors }, (_, place) =>
    points.map((point) => point.predictors[place] ?? 0),
  );
  const still = columns.findIndex((column) => column.every((value) => value === column[0]));
  if (still >= 0) return { kind: 'refused', code: 'no-spread', predictor: still };
  const fit = orthogonalFit(
    columns,
    points.map(({ response }) => response),
  );
  const explained = fit.ownShares.findIndex((share) => share < LEAST_OWN_SHARE);
  if (explained >= 0) return { kind: 'refused', code: 'collinear', predictor: explained };
  return fittedOf(fit, points);
}

function fittedOf(fit: OrthogonalFit, data: readonly FitPoint[]): LinearFit {
  const points = data.length;
  const { slopes, means, meanResponse, residualSquares, totalSquares } = fit;
  const degrees = points - 1 - slopes.length;
  const residual = Math.sqrt(residualSquares / degrees);
  const fitted: LinearFit = {
    kind: 'fitted',
    intercept: {
      value: slopes.reduce((rest, slope, place) => rest - slope * (means[place] ?? 0), meanResponse),
      deviation: residual * Math.sqrt(1 / points + distanceSquare(fit, means)),
    },
    slopes: slopes.map((value, place) => ({
      value,
      deviation:
        residual *
        Math.sqrt(
          distanceSquare(
            fit,
            slopes.map((_, other) => (other === place ? 1 : 0)),
          ),
        ),
    })),
    points,
    data,
    degrees,
    residual,
    fit,
  };
  if (totalSquares === 0) return fitted;
  const determination = Math.max(0, 1 - residualSquares / totalSquares);
  if (residualSquares === 0) return { ...fitted, determination };
  const ratio = Math.max(0, totalSquares - residualSquares) / slopes.length / (residualSquares / degrees);
  return {
    ...fitted,
    determination,
    chance: varianceRatioTail(ratio, { numerator: slopes.length, denominator: degrees }),
  };
}

/** dᵀ·(XᵀX)⁻¹·d of the centred columns. */
const distanceSquare = ({ triangle }: OrthogonalFit, difference: readonly number[]): number =>
  solvedDownwards(triangle, difference).reduce((sum, u) => sum + u * u, 0);

/**
 * How much a point of the fit leans on the points it was made from.
 *
 *     h = 1/n + (x − x̄)ᵀ·(XᵀX)⁻¹·(x − x̄)
 *
 * @param fitted - fit with its columns
 * @param predictors - place x, as many as the fit has
 * @returns leverage h [-], ≥ 1/n
 * @source nist-handbook linear least squares
 */
export const leverageAt = (fitted: LinearFit, predictors: readonly number[]): number =>
  1 / fitted.points +
  distanceSquare(
    fitted.fit,
    predictors.map((value, place) => value - (fitted.fit.means[place] ?? 0)),
  );
