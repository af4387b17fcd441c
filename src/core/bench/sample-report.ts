import { type CharacteristicValue, characteristicValue } from '../evidence/characteristic-value.ts';
import { compareGroups, type GroupComparison } from '../evidence/compare-groups.ts';
import { type ExtremeValue, extremeValue } from '../evidence/outlier.ts';
import { type ProbabilityPlot, probabilityPlot } from '../evidence/probability-plot.ts';
import { logarithmsOf, momentsOf, type Sample } from '../evidence/sample.ts';
import { type TestsNeeded, testsNeeded } from '../evidence/sample-size.ts';
import {
  type LogSummary,
  logSummary,
  type SampleSummary,
  sampleSummary,
} from '../evidence/sample-summary.ts';
import type { TestSample } from './test-samples.ts';

/** Confidence of intervals and promises, share that is promised, and chance of a false alarm, [-]. */
export const CONFIDENCE = 0.95;
export const SHARE = 0.95;
const FALSE_ALARM = 1 - CONFIDENCE;
/** Ratio of two batches that is worth seeing, and the chance with which it shall be seen, [-] (estimate). */
export const RATIO_TO_SEE = 1.1;
export const POWER = 0.8;

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

/** One batch beside the first. */
export interface BatchComparison {
  readonly name: string;
  readonly first: string;
  readonly comparison: GroupComparison;
  /** Tests that each batch needs, to see a tenth of difference; absent where the scatter is not known. */
  readonly needed?: TestsNeeded;
}

/**
 * Batches of one sample, each beside the first.
 *
 * The tests needed are worked out with the scatter that both batches share, as if it were known.
 *
 * @param batches - at least two, or none
 * @returns a comparison for each but the first
 * @source welch-1947
 */
export function compareBatches(batches: TestSample['batches']): readonly BatchComparison[] {
  const [first, ...others] = batches;
  if (first === undefined) return [];
  return others.map(({ name, sample }) => {
    const comparison = compareGroups({ first: sample, second: first.sample, confidence: CONFIDENCE });
    const named = { name, first: first.name, comparison };
    if (comparison.kind === 'refused') return named;
    const deviation = sharedDeviation(sample, first.sample);
    return {
      ...named,
      needed: testsNeeded({ ratio: RATIO_TO_SEE, deviation, falseAlarm: FALSE_ALARM }, POWER),
    };
  });
}

/** Deviation of the logarithms within two groups. */
function sharedDeviation(...samples: readonly Sample[]): number {
  const moments = samples.map(({ values }) => momentsOf(logarithmsOf(values)));
  const squares = moments.reduce((sum, { count, deviation = 0 }) => sum + (count - 1) * deviation ** 2, 0);
  return Math.sqrt(squares / moments.reduce((sum, { count }) => sum + count - 1, 0));
}
