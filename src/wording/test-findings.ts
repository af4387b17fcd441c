import type { TestFinding } from '../core/bench/evidence.ts';
import { decimalText } from './amount.ts';

/** A bond factor: two places are more than coupons can tell. */
export const bondText = (bond: number): string => decimalText(bond, 2);

/** What a test says in the answers, in a few words; undefined where it is left out. */
export function wordsOfFinding({ says, bond }: Pick<TestFinding, 'says' | 'bond'>): string | undefined {
  if (says === 'left-out') return undefined;
  if (says === 'other' || bond === undefined) return 'says nothing of the bond';
  return says === 'broke' ? `bond ${bondText(bond.value)}` : `held: bond at least ${bondText(bond.value)}`;
}
