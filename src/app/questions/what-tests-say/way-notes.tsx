import { ASSUMED_SCATTER, type WayComparison } from '../../../core/bench/compare-ways.ts';
import { SAME_BORE } from '../../../core/bench/made-alike.ts';
import type { ComparedBy, Way, WaysOfSetup } from '../../../core/bench/ways.ts';
import { decimalText, lengthText } from '../../../wording/amount.ts';
import { type NamesOfWays, sentenceOfAssumedScatter, sentenceOfDifferences } from '../../../wording/ways.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import styles from './what-tests-say.module.css';

interface WayNotesProps {
  readonly setup: WaysOfSetup;
  readonly compared: readonly WayComparison[];
  readonly by: ComparedBy;
  readonly names: NamesOfWays;
  readonly nameOf: (way: Way) => string;
  readonly slot: string;
}

/** What else differs, what is not among the values, and what the numbers rest on. */
export function WayNotes({ setup, compared, by, names, nameOf, slot }: WayNotesProps) {
  const { held, unnamed } = setup;
  const differing = compared.filter(({ differences }) => differences.length > 0);
  return (
    <ul className={styles['notes']}>
      {differing.map(({ way, differences }) => (
        <li key={nameOf(way)}>
          <b>{nameOf(way)}:</b> {sentenceOfDifferences(differences, names)}
        </li>
      ))}
      {differing.length === 0 ? <li>All else that the log holds is the same in both.</li> : null}
      {by === 'bore' ? <li>Bores within {lengthText(SAME_BORE)} count as one.</li> : null}
      {unnamed === 0 ? null : (
        <li>Left out: {couponsText(unnamed)} of which nothing of this is written down.</li>
      )}
      {held === 0 ? null : (
        <li>
          Not among the values: {couponsText(held)} that held, or broke elsewhere.{' '}
          {held === 1 ? 'Its' : 'Their'} way may be stronger than it looks.
        </li>
      )}
      {compared.some(({ scatter }) => scatter === 'assumed') ? (
        <DerivationRow slot={slot}>
          <li>
            <Told sentence={sentenceOfAssumedScatter(ASSUMED_SCATTER)} />
            <DerivationSlot name={slot} />
          </li>
        </DerivationRow>
      ) : null}
      {compared.length > 1 ? (
        <li>Each interval stands for itself: of twenty such rows about one misses the truth.</li>
      ) : null}
    </ul>
  );
}

export const couponsText = (count: number): string =>
  count === 1 ? '1 coupon' : `${decimalText(count, 0)} coupons`;
