import type { Derived } from '../../../core/sources/derived.ts';
import { derivedText, factorText } from '../../../wording/amount.ts';
import { nameOfMode } from '../../../wording/names.ts';
import { standingOf } from '../../../wording/standing.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { LimitBar } from './limit-bar.tsx';
import type { LimitRow } from './limit-groups.ts';
import styles from './limits.module.css';

export const LIMIT_COLUMNS = 6;

/** One limit: its name, how it is known, its bar, its two values and its factor. */
export function LimitTableRow({ row, greatest }: { readonly row: LimitRow; readonly greatest: number }) {
  const { limit } = row;
  const { mode, capacity, factor, governs } = limit;
  const standing = standingOf(capacity.characteristic);
  const slot = `limit-${mode}`;
  return (
    <DerivationRow slot={slot}>
      <tr className={`${styles['row']} ${governs ? styles['governs'] : ''}`}>
        <th scope="row" className={styles['name']}>
          {nameOfMode(mode)}
        </th>
        <td className={styles['standing']}>
          <span aria-hidden="true">{standing.sign}</span> {standing.words}
        </td>
        <td className={styles['scale']}>
          <LimitBar row={row} greatest={greatest} />
        </td>
        <td className={styles['number']} data-name="19 of 20 hold">
          <Value derived={capacity.characteristic} label={`${nameOfMode(mode)}, 19 of 20 hold`} />
        </td>
        <td className={styles['number']} data-name="half hold">
          <Value derived={capacity.median} label={`${nameOfMode(mode)}, half hold`} />
        </td>
        <td className={styles['factor']}>
          {governs && <em>governs</em>} <span>{factor === undefined ? 'no load' : factorText(factor)}</span>
        </td>
      </tr>
      <DerivationSlot name={slot} columns={LIMIT_COLUMNS} />
    </DerivationRow>
  );
}

function Value({ derived, label }: { readonly derived: Derived; readonly label: string }) {
  const text = derivedText(derived);
  return <ComputedValue derived={derived} text={text} label={`${label} ${text}`} />;
}
