import type { TestFinding } from '../core/bench/evidence.ts';
import { decimalText } from './amount.ts';
import { figure, type Sentence, said } from './sentence.ts';

/** A bond factor: two places are more than coupons can tell. */
export const bondText = (bond: number): string => decimalText(bond, 2);

/** What a test says in the answers, in a few words; undefined where it is left out. */
export function wordsOfFinding({ says, bond }: Pick<TestFinding, 'says' | 'bond'>): Sentence | undefined {
  if (says === 'left-out') return undefined;
  if (says === 'other' || bond === undefined) return said`says nothing of the bond`;
  const shown = figure(bond, bondText(bond.value));
  return says === 'broke' ? said`bond ${shown}` : said`held: bond at least ${shown}`;
}
