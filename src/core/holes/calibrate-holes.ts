import { type AssumedFigures, assumedFigures, movedFigures } from './curve-figures.ts';
import { abscissaOf, type LineBelief, lineOf } from './hole-line.ts';
import { outliersOf } from './hole-outliers.ts';
import { type HolePoint, holePoint } from './hole-point.ts';
import type { HoleReading } from './hole-reading.ts';
import { lineWithScatter, SCATTER_FREEDOM } from './hole-scatter.ts';
import { type HoleBehaviour, printErrorOf } from './print-error.ts';
import { scatterFreedomOf } from './scatter-freedom.ts';

/** Drawn diameters that are no farther apart than this say nothing of the slope, mm. */
const SAME_DIAMETER = 0.1;

/** A hole beside the curve. */
export interface CalibrationPoint extends HolePoint {
  /** Error less that of the curve, mm. */
  readonly residual: number;
  /** Far from what the others say; it counts all the same. */
  readonly outlier: boolean;
}

/** What the readings of one printer say of its holes. */
export interface HoleCalibration {
  readonly behaviour: HoleBehaviour;
  readonly prior: HoleBehaviour;
  readonly count: number;
  /** Drawn diameters that were read, mm; absent without readings. */
  readonly range?: { readonly least: number; readonly greatest: number };
  /** In the order of the readings. */
  readonly points: readonly CalibrationPoint[];
  /** Degrees of freedom of the repeatability, [-], ≥ 4. */
  readonly freedom: number;
  readonly spreads: 'none' | 'one-diameter' | 'spread';
  /** The numbers of the curve before the readings, and with what the readings moved them by. */
  readonly assumed: AssumedFigures;
  readonly figures: AssumedFigures;
}

/**
 * How a printer closes holes, from what is assumed of every printer and the holes read on this one.
 *
 *     printed − drawn = a + b·ln(drawn/4 mm) + ε        ε ~ N(0, σ² + u²)
 *
 * Bayesian linear regression: a and b normal before the readings, σ about the repeatability s0 with 4 degrees of freedom,
 * u each reading's own. One hole moves the curve a part of the way, many leave least squares; without a reading it is the
 * prior itself. Readings at one diameter move offset and slope along together by what the prior allows each.
 * Repeatability 1/√E[σ⁻²]; its degrees of freedom 4 + Σ[s²/(s² + u²)]², so that a reading that is itself unsure teaches less.
 * The ceiling stays the prior's, raised to the greatest error read: it then limits no hole that was seen, and moves
 * without a jump as a reading does. Not in it: hole axis (calibrate vertical and horizontal holes apart), and that the
 * line is held at the ceiling while it is fitted.
 *
 * @param prior - curve before the readings, repeatability s0 > 0
 * @param readings - of one printer, material and hole axis, in any number, each without a fault (holeReadingFaults)
 * @returns curve, points beside it, scatter and what to know of them
 * @source own-model Bayesian regression
 * @source jcgm-100 uncertainty of each reading
 */
export function calibrateHoles(prior: HoleBehaviour, readings: readonly HoleReading[]): HoleCalibration {
  const points = readings.map(holePoint);
  const assumed = assumedFigures(prior);
  if (points.length === 0) {
    return {
      behaviour: prior,
      prior,
      count: 0,
      points: [],
      freedom: SCATTER_FREEDOM,
      spreads: 'none',
      assumed,
      figures: movedFigures(assumed, prior, []),
    };
  }
  const after = behaviourAfter(prior, points);
  const figures = movedFigures(assumed, after, points);
  const behaviour: HoleBehaviour = { ...after, figures };
  const range = rangeOf(points);
  const named = outliersOf(lineOf(prior), prior.repeatability, linePointsOf(points));
  return {
    behaviour,
    prior,
    count: points.length,
    range,
    points: points.map((point, index) => ({
      ...point,
      residual: point.error - printErrorOf(behaviour, point.drawn),
      outlier: named[index] ?? false,
    })),
    freedom: scatterFreedomOf(behaviour.repeatability, points),
    spreads: range.greatest - range.least > SAME_DIAMETER ? 'spread' : 'one-diameter',
    assumed,
    figures,
  };
}

const linePointsOf = (points: readonly HolePoint[]) =>
  points.map(({ drawn, error, standardUncertainty }) => ({
    x: abscissaOf(drawn),
    y: error,
    standardUncertainty,
  }));

function behaviourAfter(prior: HoleBehaviour, points: readonly HolePoint[]): HoleBehaviour {
  const { line, scatter } = lineWithScatter(lineOf(prior), prior.repeatability, linePointsOf(points));
  const { ceiling } = prior;
  return {
    ...coefficientsOf(line),
    ...(ceiling === undefined
      ? {}
      : { ceiling: points.reduce((most, { error }) => Math.max(most, error), ceiling) }),
    repeatability: scatter,
    standing: 'measured',
  };
}

/** A line as the coefficients of a curve of errors. */
export const coefficientsOf = (
  line: LineBelief,
): Pick<HoleBehaviour, 'offset' | 'slope'> & { readonly covariance: number } => ({
  offset: { value: line.offset, standardUncertainty: Math.sqrt(line.offsetVariance) },
  slope: { value: line.slope, standardUncertainty: Math.sqrt(line.slopeVariance) },
  covariance: line.covariance,
});

function rangeOf(points: readonly HolePoint[]): { readonly least: number; readonly greatest: number } {
  let least = Infinity;
  let greatest = 0;
  for (const { drawn } of points) {
    least = Math.min(least, drawn);
    greatest = Math.max(greatest, drawn);
  }
  return { least, greatest };
}
