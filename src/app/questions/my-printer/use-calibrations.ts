import { useMemo } from 'react';
import type { HoleAxis } from '../../../core/holes/hole-reading.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { type AxisCalibration, calibrationAlong } from './printer-findings.ts';

/** The calibrations of a printer, worked out anew when it or the caliper is another one. */
export const useCalibrations = (
  printer: PrinterRecord | undefined,
  permissibleError: number,
): Readonly<Record<HoleAxis, AxisCalibration>> =>
  useMemo(
    () => ({
      vertical: calibrationAlong('vertical', printer, permissibleError),
      horizontal: calibrationAlong('horizontal', printer, permissibleError),
    }),
    [printer, permissibleError],
  );
