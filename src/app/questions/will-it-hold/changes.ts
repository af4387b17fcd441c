import type { Sensitivity } from '../../../core/service/sensitivity.ts';
import { factorText } from '../../../wording/amount.ts';

const MOST_BETTER = 6;
const MOST_WORSE = 3;

/** Steps worth telling of: those that a reader sees in the margin; the greatest help first, the greatest harm first. */
export function changesOf(given: number, moves: readonly Sensitivity[]) {
  const seen = moves.filter(({ margin }) => factorText(margin) !== factorText(given));
  return {
    better: seen.filter(({ gain }) => gain > 0).slice(0, MOST_BETTER),
    worse: seen
      .filter(({ gain }) => gain < 0)
      .toReversed()
      .slice(0, MOST_WORSE),
  };
}
