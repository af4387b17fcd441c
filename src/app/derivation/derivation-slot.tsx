import { type ReactNode, useCallback } from 'react';
import { RowSlotContext, useDerivations } from './derivation-context.ts';
import styles from './slot.module.css';

export interface DerivationSlotProps {
  /** The name that the numbers of the row give as their slot; unique on the page. */
  readonly name: string;
  /** Given inside a table body: the slot is a row that spans so many columns. */
  readonly columns?: number;
}

/** The empty place below a row; the derivation of one of its numbers opens here. */
export function DerivationSlot({ name, columns }: DerivationSlotProps) {
  const { setPlace } = useDerivations();
  const keep = useCallback(
    (element: HTMLElement | null) => {
      setPlace(name, element);
      return () => setPlace(name, null);
    },
    [name, setPlace],
  );
  if (columns === undefined) return <div ref={keep} className={styles['slot']} />;
  return (
    <tr className={styles['slotRow']}>
      <td colSpan={columns} ref={keep} />
    </tr>
  );
}

/** All numbers within open in the slot of this name. */
export function DerivationRow({ slot, children }: { readonly slot: string; readonly children: ReactNode }) {
  return <RowSlotContext value={slot}>{children}</RowSlotContext>;
}
