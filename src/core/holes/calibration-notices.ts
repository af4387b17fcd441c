import type { HoleCalibration } from './calibrate-holes.ts';
import { FITTED_DIAMETERS } from './print-error.ts';

/** Holes from which on a printer counts as read, [-]. */
export const ENOUGH_READINGS = 3;

export type CalibrationNotice =
  | {
      readonly code: 'diameter-extrapolated';
      readonly drawn: number;
      readonly least: number;
      readonly greatest: number;
      /** Whose diameters these are: those read on this printer, or those of the published fit. */
      readonly of: 'readings' | 'published-fit';
    }
  | { readonly code: 'one-diameter'; readonly diameter: number; readonly count: number }
  | { readonly code: 'few-readings'; readonly count: number; readonly enough: number }
  | { readonly code: 'outliers-named'; readonly outliers: number; readonly count: number };

/**
 * What to know of a calibration where it is asked for a drawn diameter, the gravest first.
 *
 * diameter-extrapolated: outside the diameters read, or outside those of the published fit when none was.
 * one-diameter: all readings at one diameter, so that the slope is all but the assumed one.
 * few-readings: fewer than three. outliers-named: some lie far from the others.
 *
 * @param calibration - of the printer
 * @param drawn - diameter the slicer sees [mm], > 0
 * @returns codes with their facts; each code at most once
 */
export function calibrationNotices(
  calibration: HoleCalibration,
  drawn: number,
): readonly CalibrationNotice[] {
  const { range, points, count, spreads } = calibration;
  const { least, greatest } = range ?? FITTED_DIAMETERS;
  const outliers = points.filter(({ outlier }) => outlier).length;
  const notices: CalibrationNotice[] = [];
  if (drawn < least || drawn > greatest) {
    const of = range === undefined ? 'published-fit' : 'readings';
    notices.push({ code: 'diameter-extrapolated', drawn, least, greatest, of });
  }
  if (count < ENOUGH_READINGS) notices.push({ code: 'few-readings', count, enough: ENOUGH_READINGS });
  if (spreads === 'one-diameter') {
    notices.push({ code: 'one-diameter', diameter: (least + greatest) / 2, count });
  }
  if (outliers > 0) notices.push({ code: 'outliers-named', outliers, count });
  return notices;
}
