import type { HoleAxis } from '../../../core/holes/hole-reading.ts';
import { CATALOGUE } from '../../../data/catalogue.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { type AxisCalibration, calibrationAlong } from '../../../storage/printer-calibration.ts';

/** What the readings of a printer say along both axes of its holes. */
export function calibrationsOf(
  printer: PrinterRecord | undefined,
  permissibleError: number,
): Readonly<Record<HoleAxis, AxisCalibration>> {
  const from = { prior: CATALOGUE.uncalibratedHoles, permissibleError };
  return {
    vertical: calibrationAlong('vertical', printer, from),
    horizontal: calibrationAlong('horizontal', printer, from),
  };
}
