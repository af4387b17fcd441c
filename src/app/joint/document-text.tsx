import { useId, useState } from 'react';
import { useSheetActions, useSheetValue } from '../state/sheet-context.ts';
import { valueIn } from '../state/value-in.ts';
import styles from './document-text.module.css';

interface DocumentTextProps {
  readonly path: string;
  readonly label: string;
  readonly greatest: number;
  /** Given: an emptied text stays in the document as an empty one. */
  readonly keepsEmpty?: boolean;
}

/** A short text of the document that may be left out. */
export function DocumentText({ path, label, greatest, keepsEmpty = false }: DocumentTextProps) {
  const id = useId();
  const { edit } = useSheetActions();
  const value = useSheetValue(({ journal }) => valueIn(journal.present, path));
  const kept = typeof value === 'string' ? value : '';
  const [typed, setTyped] = useState<string | null>(null);
  const leave = () => {
    if (typed !== null && typed.trim() !== kept) {
      edit(path, { path, value: typed.trim() === '' && !keepsEmpty ? undefined : typed.trim() });
    }
    setTyped(null);
  };
  return (
    <div className={styles.row}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        maxLength={greatest}
        value={typed ?? kept}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={leave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') leave();
          if (event.key === 'Escape') setTyped(null);
        }}
      />
    </div>
  );
}
