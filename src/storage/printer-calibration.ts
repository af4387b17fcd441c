import { calibrateHoles, type HoleCalibration } from '../core/holes/calibrate-holes.ts';
import type { HoleAxis, HoleReading } from '../core/holes/hole-reading.ts';
import type { HoleBehaviour } from '../core/holes/print-error.ts';
import type { HoleReadingRecord, PrinterRecord } from './document.ts';

/** A reading of a hole with the instrument that it was made with. */
const holeReading = (
  record: HoleReadingRecord,
  printer: PrinterRecord,
  permissibleError: number,
): HoleReading => ({
  drawn: record.drawn_mm,
  measured: record.measured_mm,
  instrument: record.instrument,
  axis: record.axis,
  ...(record.facets === undefined ? {} : { facets: record.facets }),
  permissibleError,
  jawFlat: printer.jawFlat_mm,
  gaugeStep: printer.gaugeStep_mm,
});

/** Readings of a printer along one axis, with the place of each in its list. */
export const readingsAlong = (
  axis: HoleAxis,
  printer: PrinterRecord,
  permissibleError: number,
): readonly { readonly place: number; readonly reading: HoleReading }[] =>
  printer.holes.flatMap((hole, place) =>
    hole.axis === axis ? [{ place, reading: holeReading(hole, printer, permissibleError) }] : [],
  );

/** The calibration of one printer along one axis of its holes. */
export interface AxisCalibration {
  readonly axis: HoleAxis;
  readonly calibration: HoleCalibration;
  /** Place in the printer's list of each point. */
  readonly places: readonly number[];
}

/** What was worked out last: most edits change nothing that a calibration depends on. */
const kept = new Map<string, AxisCalibration>();
const MOST_KEPT = 8;

/**
 * What the readings of a printer along one axis say; without a printer what is assumed of every one. The same readings
 * give the same object, so that nothing is worked out or drawn twice.
 */
export function calibrationAlong(
  axis: HoleAxis,
  printer: PrinterRecord | undefined,
  { prior, permissibleError }: { readonly prior: HoleBehaviour; readonly permissibleError: number },
): AxisCalibration {
  const found = printer ? readingsAlong(axis, printer, permissibleError) : [];
  const key = JSON.stringify([axis, prior, found]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const worked: AxisCalibration = {
    axis,
    calibration: calibrateHoles(
      prior,
      found.map(({ reading }) => reading),
    ),
    places: found.map(({ place }) => place),
  };
  for (const oldest of [...kept.keys()].slice(0, kept.size + 1 - MOST_KEPT)) kept.delete(oldest);
  kept.set(key, worked);
  return worked;
}
