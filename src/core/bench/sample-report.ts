import { type CharacteristicValue, characteristicValue } from '../evidence/characteristic-value.ts';
import { type ExtremeValue, extremeValue } from '../evidence/outlier.ts';
import { type ProbabilityPlot, probabilityPlot } from '../evidence/probability-plot.ts';
import type { Sample } from '../evidence/sample.ts';
import {
  type LogSummary,
  logSummary,
  type SampleSummary,
  sampleSummary,
} from '../evidence/sample-summary.ts';

/** Confidence of intervals and promises, share that is promised, and chance of a false alarm, [-]. */
export const CONFIDENCE = 0.95;
export const SHARE = 0.95;
export const FALSE_ALARM = 1 - CONFIDENCE;

type Scatter = 'normal' | 'lognormal';

/** What a sample says as the statistics in print have it, without a model of the bond. */
export interface SampleReport {
  readonly summary: SampleSummary;
  readonly log: LogSummary;
  /** 95 % hold it, with 95 % confidence. */
  readonly tolerance: Readonly<Record<Scatter, CharacteristicValue>>;
  /** The next one holds it, 19 of 20. */
  readonly prediction: Readonly<Record<Scatter, CharacteristicValue>>;
  readonly extreme: ExtremeValue;
  readonly plot: ProbabilityPlot;
}

/**
 * A sample of loads by the statistics in print, for a normal and for a lognormal scatter.
 *
 * @param sample - loads [N or N·mm], all > 0, at least one
 * @returns numbers with their derivations, or for each the reason why there is none
 * @source iso-16269-6 tolerance factor
 * @source en-1990 prediction factor
 */
export function sampleReport(sample: Sample): SampleReport {
  const found = (distribution: Scatter, kind: 'tolerance' | 'prediction') =>
    characteristicValue(sample, {
      distribution,
      promise:
        kind === 'tolerance'
          ? { share: SHARE, confidence: CONFIDENCE }
          : { kind: 'next-value', share: SHARE },
    });
  const both = (kind: 'tolerance' | 'prediction') => ({
    normal: found('normal', kind),
    lognormal: found('lognormal', kind),
  });
  return {
    summary: sampleSummary(sample, CONFIDENCE),
    log: logSummary(sample),
    tolerance: both('tolerance'),
    prediction: both('prediction'),
    extreme: extremeValue(sample, FALSE_ALARM),
    plot: probabilityPlot(sample),
  };
}
