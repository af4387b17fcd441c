import type { CharacteristicValue } from '../core/evidence/characteristic-value.ts';
import type { GroupComparison } from '../core/evidence/compare-groups.ts';

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

/** Why two batches are not compared. */
export function sentenceOfNoComparison(refused: Refused<GroupComparison>): string {
  return refused.code === 'too-few-values'
    ? 'A comparison takes two coupons of each.'
    : 'Neither batch scatters, which tells of the scale’s steps.';
}
