import type { CharacteristicValue } from '../core/evidence/characteristic-value.ts';
import type { GroupComparison } from '../core/evidence/compare-groups.ts';
import type { ExtremeValue } from '../core/evidence/outlier.ts';
import type { ProbabilityPlot } from '../core/evidence/probability-plot.ts';
import type { TestsNeeded } from '../core/evidence/sample-size.ts';
import { decimalText } from './amount.ts';

type Refused<Answer> = Extract<Answer, { readonly kind: 'refused' }>;

/** Why a sample gives no characteristic value, as it fits in a table. */
export function wordsOfNoValue(refused: Refused<CharacteristicValue>): string {
  switch (refused.code) {
    case 'too-few-values':
      return 'takes two';
    case 'no-scatter':
      return 'all are equal';
    case 'nothing-above-zero':
      return 'nothing above zero';
  }
}

/** Why a sample is not looked through for a far value, and has no probability plot, as it fits in a table. */
export function wordsOfNoPlot(refused: Refused<ProbabilityPlot> | Refused<ExtremeValue>): string {
  switch (refused.code) {
    case 'too-few-values':
      return 'takes three';
    case 'no-scatter':
      return 'all are equal';
  }
}

/** Why two ways are not compared, as it fits in a table. */
export function wordsOfNoComparison(refused: Refused<GroupComparison>): string {
  switch (refused.code) {
    case 'too-few-values':
      return 'takes two of each';
    case 'no-scatter':
      return 'neither scatters';
  }
}

/** Why no number of coupons is named, as it fits in a table. */
export const wordsOfTooMany = ({ most }: Refused<TestsNeeded>): string => `more than ${decimalText(most, 0)}`;
