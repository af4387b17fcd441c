import type { Estimated } from '../evidence/compare-groups.ts';
import { type FitPoint, type LinearFit, linearRegression } from '../evidence/linear-regression.ts';
import { type RegressionBand, regressionBand } from '../evidence/regression-band.ts';
import { determinationOf, type FitUnits, residualOf, slopeOf } from '../evidence/slope.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import type { TestKind } from './bench-test.ts';
import { likeReadings } from './like-readings.ts';
import { CONFIDENCE } from './sample-report.ts';
import { type Dimension, SAME_SIZE, type StrengthPoint } from './strength-points.ts';

/** How strength goes with one dimension, and whether the model's law does as well. */
export interface Growth {
  readonly of: Dimension;
  /** N/mm, or N·mm for each mm. */
  readonly slope: Estimated;
  /** Power of the dimension that strength goes with, by a fit of logarithms; absent where there is none. */
  readonly power?: Estimated;
  /** The model's: 1 or 2. */
  readonly modelPower: Derived;
  /**
   * agrees: the interval holds the model's power and not 0; differs: it does not hold the model's; open: it holds both, so
   * that the coupons do not even tell whether strength grows.
   */
  readonly verdict?: 'agrees' | 'differs' | 'open';
}

export type StrengthFit =
  | {
      readonly kind: 'fitted';
      readonly over: readonly Dimension[];
      readonly growth: readonly Growth[];
      readonly residual: Derived;
      /** R²; absent where all loads are equal. */
      readonly determination?: Derived;
      /** Sizes that are told apart in each dimension, in the order of `over`. */
      readonly sizes: readonly number[];
      readonly fit: LinearFit;
      readonly units: FitUnits;
    }
  | {
      readonly kind: 'refused';
      readonly code: 'too-few-points';
      readonly points: number;
      readonly least: number;
    }
  | { readonly kind: 'refused'; readonly code: 'one-size'; readonly of: Dimension }
  /** The coupons’ lengths and diameters go together, so that nobody can tell which of them counts. */
  | { readonly kind: 'refused'; readonly code: 'goes-with-the-other' };

/**
 * Power of a dimension in the model: shear on the knurl’s cylinder, and for a turned insert its lever.
 *
 *     F = η·τ·π·Dk·Lk·kb        T = F·Dk/2
 *
 * @param dimension - length or diameter
 * @param kind - of the test
 * @returns power [-]: 2 of the diameter that an insert is turned at, else 1
 * @source own-model shear cylinder
 */
export function modelPowerOf(dimension: Dimension, kind: TestKind): Derived {
  const turned = kind === 'torque-out';
  const force = 'η · τ · π · D_k · L_k · k_b';
  return {
    symbol: 'p_m',
    value: dimension === 'diameter' && turned ? 2 : 1,
    unit: '-',
    formula: `power of ${dimension === 'diameter' ? 'D_k' : 'L_k'} in ${turned ? `${force} · D_k/2` : force}`,
    entries: [],
    source: 'own-model',
    standing: 'estimate',
  };
}

/**
 * Regression of strength on length, on diameter, or on both.
 *
 *     F = a + b·Lk        F = a + b·Dk        F = a + b1·Lk + b2·Dk
 *     ln F = a + p·ln L …        p = 1 in the model of the shear cylinder; for a turned insert 2 over the diameter
 *
 * The model takes strength as proportional: a straight line alone does not show that, its power does.
 *
 * @param points - coupons that gave way: knurled length [mm], knurl diameter [mm], load [N or N·mm], all > 0
 * @param question - dimensions, kind of the tests
 * @returns slopes, powers, s and R²; or a refusal: too-few-points below dimensions + 2, one-size where a dimension was not
 *   varied, goes-with-the-other where both were varied together
 * @source nist-handbook linear least squares
 * @source own-model shear cylinder
 */
export function strengthFit(
  points: readonly StrengthPoint[],
  { over, kind }: { readonly over: readonly Dimension[]; readonly kind: TestKind },
): StrengthFit {
  const least = over.length + 2;
  if (points.length < least) return { kind: 'refused', code: 'too-few-points', points: points.length, least };
  const sizes = over.map((of) => likeReadings(points, (point) => point[of], SAME_SIZE[of]).length);
  const still = over.find((_, place) => sizes[place] === 1);
  if (still !== undefined) return { kind: 'refused', code: 'one-size', of: still };
  const fit = linearRegression(
    points.map(
      (point): FitPoint => ({
        predictors: over.map((of) => point[of]),
        response: point.load,
        ...waysOf(point, over, (way) => way),
      }),
    ),
  );
  if (fit.kind === 'refused') return { kind: 'refused', code: 'goes-with-the-other' };
  const units = unitsOf(kind);
  const powers = linearRegression(
    points.map(
      (point): FitPoint => ({
        predictors: over.map((of) => Math.log(point[of])),
        response: Math.log(point.load),
        ...waysOf(point, over, logarithmOf),
      }),
    ),
  );
  const determination = determinationOf(fit, units);
  return {
    kind: 'fitted',
    over,
    growth: over.map((of, place) => growthOf({ fit, powers, units }, { of, place, kind })),
    residual: residualOf(fit, units),
    ...(determination === undefined ? {} : { determination }),
    sizes,
    fit,
    units,
  };
}

/** The ways to a point's numbers, as they are fitted. */
const waysOf = (
  { from }: StrengthPoint,
  over: readonly Dimension[],
  fitted: (way: Derived) => Derived,
): Pick<FitPoint, 'from'> =>
  from === undefined
    ? {}
    : { from: { predictors: over.map((of) => fitted(from[of])), response: fitted(from.load) } };

const logarithmOf = (way: Derived): Derived => ({
  symbol: 'y_l',
  value: Math.log(way.value),
  unit: '-',
  formula: `ln(${way.symbol})`,
  entries: [entryFrom(way)],
  source: 'nist-handbook',
  standing: way.standing,
});

const unitsOf = (kind: TestKind): FitUnits =>
  kind === 'torque-out' || kind === 'jack-out-torque'
    ? { response: 'N·mm', predictor: 'mm', slope: 'N' }
    : { response: 'N', predictor: 'mm', slope: 'N/mm' };

const OF_LOGARITHMS: FitUnits = { response: '-', predictor: '-', slope: '-' };

function growthOf(
  {
    fit,
    powers,
    units,
  }: {
    readonly fit: LinearFit;
    readonly powers: ReturnType<typeof linearRegression>;
    readonly units: FitUnits;
  },
  { of, place, kind }: { readonly of: Dimension; readonly place: number; readonly kind: TestKind },
): Growth {
  const slope = slopeOf(fit, { place, units, confidence: CONFIDENCE });
  const modelPower = modelPowerOf(of, kind);
  if (powers.kind === 'refused') return { of, slope, modelPower };
  const power = slopeOf(powers, { place, units: OF_LOGARITHMS, confidence: CONFIDENCE });
  const holds = (value: number): boolean => power.low.value <= value && value <= power.high.value;
  const verdict = !holds(modelPower.value) ? 'differs' : holds(0) ? 'open' : 'agrees';
  return { of, slope, power, modelPower, verdict };
}

/**
 * What a regression of strength says of one size.
 *
 * @param found - a fit
 * @param size - knurled length and knurl diameter [mm]
 * @returns the value of the fit with its bands
 * @source nist-handbook linear least squares, confidence and prediction bands
 */
export function strengthBand(
  { fit, over, units }: Extract<StrengthFit, { readonly kind: 'fitted' }>,
  size: Readonly<Record<Dimension, number>> & Pick<StrengthPoint, 'from'>,
): RegressionBand {
  const { from } = size;
  return regressionBand(fit, {
    predictors: over.map((of) => size[of]),
    ...(from === undefined ? {} : { from: over.map((of) => from[of]) }),
    confidence: CONFIDENCE,
    units,
  });
}
