import type { HoleCalibration } from '../../core/holes/calibrate-holes.ts';
import { errorBand } from '../../core/holes/error-band.ts';
import type { HolePoint } from '../../core/holes/hole-point.ts';
import { printErrorOf } from '../../core/holes/print-error.ts';
import { niceTicks } from './nice-ticks.ts';

/** Of the next holes so many lie in the band; as many come out larger than smaller. */
export const BAND_SHARE = 0.9;
const SAMPLES = 64;
const X_STEPS = 10;
const Y_STEPS = 6;
/** Diameters that are drawn at least: those that inserts ask for, mm. */
const USUAL = { least: 3, greatest: 8 } as const;
/** The curve runs to minus infinity at 0: it begins at this share of the least diameter of interest. */
const BEGIN_SHARE = 0.7;

/** The curve at one drawn diameter, mm. */
export interface ErrorSample {
  readonly drawn: number;
  readonly expected: number;
  readonly band: readonly [number, number];
  readonly prior: number;
}

export interface ErrorMark {
  /** Number of the hole in its table. */
  readonly number: number;
  readonly drawn: number;
  readonly error: number;
  readonly standardUncertainty: number;
  readonly outlier: boolean;
  /** The reading itself, with the ways to its numbers. */
  readonly point: HolePoint;
}

export interface HoleErrors {
  readonly samples: readonly ErrorSample[];
  readonly marks: readonly ErrorMark[];
  readonly diameters: readonly number[];
  readonly errors: readonly number[];
  /** Decimals that tell one error of the scale from the next. */
  readonly decimals: number;
  /** The curve at round diameters, for the table. */
  readonly rows: readonly ErrorSample[];
}

/** Round numbers from at most the least to at least the greatest value. */
function ticksBetween(least: number, greatest: number, most: number): readonly number[] {
  const [, step = 1] = niceTicks(greatest - least, most);
  const first = Math.floor(least / step + 1e-9);
  const last = Math.ceil(greatest / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

function sampleAt(calibration: HoleCalibration, drawn: number): ErrorSample {
  const { expected, nextHole } = errorBand(calibration, drawn, BAND_SHARE);
  return {
    drawn,
    expected,
    band: [nextHole.low, nextHole.high],
    prior: printErrorOf(calibration.prior, drawn),
  };
}

/** Drawn diameter against error: curve, band, what was assumed before, and every hole that was read. */
export function holeErrors(
  calibration: HoleCalibration,
  { places, wanted }: { readonly places: readonly number[]; readonly wanted?: number | undefined },
): HoleErrors {
  const marks = calibration.points.map(
    (point, index): ErrorMark => ({
      number: (places[index] ?? index) + 1,
      drawn: point.drawn,
      error: point.error,
      standardUncertainty: point.standardUncertainty,
      outlier: point.outlier,
      point,
    }),
  );
  const looked = [USUAL.least, USUAL.greatest, ...marks.map(({ drawn }) => drawn), wanted ?? USUAL.least];
  const smallest = looked.reduce((one, other) => Math.min(one, other));
  const greatest = looked.reduce((one, other) => Math.max(one, other));
  const diameters = ticksBetween(BEGIN_SHARE * smallest, greatest, X_STEPS);
  const begin = Math.max(diameters[0] ?? 0, BEGIN_SHARE * smallest);
  const end = diameters.at(-1) ?? greatest;
  const samples = Array.from({ length: SAMPLES + 1 }, (_, index) =>
    sampleAt(calibration, begin + ((end - begin) * index) / SAMPLES),
  );
  const levels = [
    0,
    ...samples.flatMap(({ band, prior }) => [...band, prior]),
    ...marks.flatMap(({ error, standardUncertainty: u }) => [error - u, error + u]),
  ];
  const errors = ticksBetween(
    levels.reduce((one, other) => Math.min(one, other)),
    levels.reduce((one, other) => Math.max(one, other)),
    Y_STEPS,
  );
  return {
    samples,
    marks,
    diameters,
    errors,
    decimals: errors.some((error) => Number(error.toFixed(1)) !== error) ? 2 : 1,
    rows: diameters.filter((drawn) => drawn >= begin).map((drawn) => sampleAt(calibration, drawn)),
  };
}
