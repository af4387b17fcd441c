import type { Joint } from '../core/joint/joint.ts';
import { sentenceOfRule } from '../wording/my-printer.ts';
import { rounded } from './rounded.ts';

/** What the holes read on the joint's printer say; null without a printer or without a reading along the hole's axis. */
export function printerReportOf({ holes }: Pick<Joint, 'holes'>) {
  const { printer } = holes;
  if (printer === undefined) return null;
  const { calibration, rule, name } = printer;
  const { offset, slope, repeatability } = calibration.behaviour;
  return {
    name,
    readingsApply: rule.curve === 'readings',
    compensation: { code: rule.code, sentence: sentenceOfRule(rule.code) },
    holesRead: calibration.count,
    leastDrawn_mm: calibration.range ? rounded(calibration.range.least) : null,
    greatestDrawn_mm: calibration.range ? rounded(calibration.range.greatest) : null,
    errorAt4_mm: rounded(offset.value),
    errorAt4Uncertainty_mm: rounded(offset.standardUncertainty),
    slope_mm: rounded(slope.value),
    slopeUncertainty_mm: rounded(slope.standardUncertainty),
    scatter_mm: rounded(repeatability),
    holes: calibration.points.map((point) => ({
      drawnAsSeen_mm: rounded(point.drawn),
      bore_mm: rounded(point.bore.estimate.value),
      boreUncertainty_mm: rounded(point.standardUncertainty),
      error_mm: rounded(point.error),
      residual_mm: rounded(point.residual),
      outlier: point.outlier,
    })),
  };
}
