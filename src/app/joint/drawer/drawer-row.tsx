import { memo, useEffect, useRef } from 'react';
import type { InsertRecord } from '../../../storage/document.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { useDocumentAtPress, useFindingsValue, useSheetActions } from '../../state/sheet-context.ts';
import styles from './drawer.module.css';
import { duplicated, removed } from './drawer-edits.ts';
import { DrawerInsert } from './drawer-insert.tsx';
import { insertName, readingsLine } from './insert-name.ts';

interface DrawerRowProps {
  readonly index: number;
  readonly record: InsertRecord;
  /** Whether no other one is in the drawer. */
  readonly isAlone: boolean;
  readonly isShown: boolean;
  readonly isOpen: boolean;
  /** Tells the id too: a copy is opened as soon as it is made. */
  readonly onOpen: (id: string, open: boolean) => void;
}

/** One insert of the drawer: its name, what it was measured to, and what can be done with it. */
export const DrawerRow = memo(function DrawerRow(props: DrawerRowProps) {
  const { index, record, isAlone, isShown, isOpen, onOpen } = props;
  const { edit } = useSheetActions();
  const documentAtPress = useDocumentAtPress();
  const insert = useFindingsValue(({ drawer }) => drawer[index]);
  const fields = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isOpen) fields.current?.querySelector<HTMLElement>('input, textarea, select')?.focus();
  }, [isOpen]);
  if (insert === undefined) return null;
  const name = insertName(insert);
  const duplicate = () => {
    const copy = duplicated(documentAtPress(), index);
    edit('drawer', copy.edit);
    onOpen(copy.id, true);
  };
  const slot = `drawer ${record.id}`;
  return (
    <li className={styles.insert} data-shown={isShown || undefined}>
      <DerivationRow slot={slot}>
        <div className={styles.head}>
          <span className={styles.name}>
            {name}
            {record.label ? <span className={styles.label}>{record.label}</span> : null}
          </span>
          <span className={styles.readings}>
            <Told sentence={readingsLine(record, insert)} of={name} />
          </span>
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
              onClick={() => onOpen(record.id, !isOpen)}
            >
              {isOpen ? 'Close' : 'Edit'}
            </button>
            <Press label="Duplicate" of={name} onPress={duplicate} />
            {isAlone ? null : (
              <Press
                label="Take out"
                of={name}
                onPress={() => edit('drawer', ...removed(documentAtPress(), index))}
              />
            )}
          </span>
        </div>
        <DerivationSlot name={slot} />
      </DerivationRow>
      {isOpen ? (
        <div ref={fields}>
          <DrawerInsert index={index} />
        </div>
      ) : null}
    </li>
  );
});

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
