import { useId, useState } from 'react';
import { useSheetActions, useSheetValue } from '../state/sheet-context.ts';
import { valueIn } from '../state/value-in.ts';
import styles from './document-text.module.css';

interface DocumentTextProps {
  readonly path: string;
  readonly label: string;
  readonly greatest: number;
  /** An emptied text is left out of the document, stays in it as an empty one, or is what it was before. */
  readonly emptied?: 'left-out' | 'kept' | 'taken-back';
}

/** A short text of the document. */
export function DocumentText({ path, label, greatest, emptied = 'left-out' }: DocumentTextProps) {
  const id = useId();
  const { edit } = useSheetActions();
  const value = useSheetValue(({ journal }) => valueIn(journal.present, path));
  const kept = typeof value === 'string' ? value : '';
  const [typed, setTyped] = useState<string | null>(null);
  const leave = () => {
    const text = typed === null ? kept : typed.trim();
    if (text !== kept && !(text === '' && emptied === 'taken-back')) {
      edit(path, { path, value: text === '' && emptied === 'left-out' ? undefined : text });
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
