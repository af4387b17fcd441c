import type { ReactNode } from 'react';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './what-hole.module.css';

export interface DrawingRowProps {
  readonly id: string;
  readonly name: string;
  /** The values of the row, computed ones as buttons. */
  readonly children: ReactNode;
  readonly remark?: ReactNode;
}

const COLUMNS = 3;

/** One line of what goes on the drawing; derivations open below it. */
export function DrawingRow({ id, name, children, remark }: DrawingRowProps) {
  return (
    <DerivationRow slot={`hole-${id}`}>
      <tr className={styles['row']}>
        <th scope="row">{name}</th>
        <td className={styles['value']}>{children}</td>
        <td className={styles['remark']}>{remark}</td>
      </tr>
      <DerivationSlot name={`hole-${id}`} columns={COLUMNS} />
    </DerivationRow>
  );
}
