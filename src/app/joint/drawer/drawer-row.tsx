import { useEffect, useRef } from 'react';
import type { InsertRecord } from '../../../storage/document.ts';
import { useFindings, useSheet } from '../../state/sheet-context.ts';
import styles from './drawer.module.css';
import { duplicated, removed } from './drawer-edits.ts';
import { DrawerInsert } from './drawer-insert.tsx';
import { insertName, readingsLine } from './insert-name.ts';

interface DrawerRowProps {
  readonly index: number;
  readonly record: InsertRecord;
  readonly isOpen: boolean;
  readonly onOpen: (open: boolean) => void;
  /** Tells the id of the copy, so that it can be opened. */
  readonly onDuplicated: (id: string) => void;
}

/** One insert of the drawer: its name, what it was measured to, and what can be done with it. */
export function DrawerRow({ index, record, isOpen, onOpen, onDuplicated }: DrawerRowProps) {
  const { document, edit } = useSheet();
  const { shown, drawer } = useFindings();
  const insert = drawer[index];
  const fields = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isOpen) fields.current?.querySelector<HTMLElement>('input, textarea, select')?.focus();
  }, [isOpen]);
  if (insert === undefined) return null;
  const name = insertName(insert);
  const isShown = shown?.insert.id === record.id;
  const duplicate = () => {
    const copy = duplicated(document, index);
    edit('drawer', copy.edit);
    onDuplicated(copy.id);
  };
  return (
    <li className={styles.insert} data-shown={isShown || undefined}>
      <div className={styles.head}>
        <span className={styles.name}>
          {name}
          {record.label ? <span className={styles.label}>{record.label}</span> : null}
        </span>
        <span className={styles.readings}>{readingsLine(record, insert)}</span>
        <span className={styles.presses}>
          {isShown ? (
            <span className="line">on the sheet</span>
          ) : (
            <Press
              label="Use"
              of={name}
              onPress={() => edit('chosenInsert', { path: 'chosenInsert', value: record.id })}
            />
          )}
          <button
            type="button"
            className="go"
            aria-expanded={isOpen}
            aria-label={`${isOpen ? 'Close' : 'Edit'} ${name}`}
            onClick={() => onOpen(!isOpen)}
          >
            {isOpen ? 'Close' : 'Edit'}
          </button>
          <Press label="Duplicate" of={name} onPress={duplicate} />
          {document.drawer.length > 1 ? (
            <Press label="Take out" of={name} onPress={() => edit('drawer', ...removed(document, index))} />
          ) : null}
        </span>
      </div>
      {isOpen ? (
        <div ref={fields}>
          <DrawerInsert index={index} />
        </div>
      ) : null}
    </li>
  );
}

interface PressProps {
  readonly label: string;
  readonly of: string;
  readonly onPress: () => void;
}

const Press = ({ label, of, onPress }: PressProps) => (
  <button type="button" className="press" aria-label={`${label} ${of}`} onClick={onPress}>
    {label}
  </button>
);
