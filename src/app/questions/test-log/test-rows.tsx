import { useEffect, useRef, useState } from 'react';
import { capitalised, countWord } from '../../../wording/amount.ts';
import type { Choice } from '../../fields/field-props.ts';
import { useFindingsValue, useSheetValue } from '../../state/sheet-context.ts';
import styles from './test-log.module.css';
import { TestRow } from './test-row.tsx';

/** So many tests stand in the log at once, the latest; the others come when they are asked for. */
const MOST_ROWS = 100;

/** The reading of the test that is open. */
const READING = '[data-fields] input[inputmode="decimal"]';

interface TestRowsProps {
  /** The inserts of the drawer by name. */
  readonly inserts: readonly Choice<string>[];
  /** The test whose fields are open; null: none. */
  readonly open: string | null;
  readonly onOpen: (id: string, isOpen: boolean) => void;
}

/** The tests that are kept, one under the other; of very many the latest, and whatever is left out of the answers. */
export function TestRows({ inserts, open, onOpen }: TestRowsProps) {
  const epoch = useSheetValue((sheet) => sheet.epoch);
  const tests = useSheetValue(({ journal }) => journal.present.tests);
  const evidence = useFindingsValue((findings) => findings.evidence);
  const [isWhole, setWhole] = useState(false);
  const list = useRef<HTMLOListElement>(null);
  // Here and not in the row: an undo lays the rows anew, and must not take the focus with it.
  useEffect(() => {
    if (open !== null) list.current?.querySelector<HTMLElement>(READING)?.focus();
  }, [open]);
  const findings = new Map(evidence?.findings.map((finding) => [finding.test.id, finding]));
  const first = isWhole ? 0 : tests.length - MOST_ROWS;
  const rows = tests
    .map((test, index) => ({ test, index, finding: findings.get(test.id) }))
    .filter(({ test, index, finding }) => index >= first || finding?.fault !== undefined || test.id === open);
  const hidden = tests.length - rows.length;
  if (tests.length === 0) return null;
  return (
    <>
      {hidden === 0 ? null : (
        <p className={styles.earlier}>
          {capitalised(countWord(hidden))} earlier {hidden === 1 ? 'one is' : 'ones are'} not shown.{' '}
          <button type="button" className="go" onClick={() => setWhole(true)}>
            Show them
          </button>
        </p>
      )}
      <ol className={styles.tests} key={epoch} ref={list}>
        {rows.map(({ test, index, finding }) => (
          <TestRow
            key={test.id}
            index={index}
            test={test}
            inserts={inserts}
            finding={finding}
            isOpen={open === test.id}
            onOpen={onOpen}
          />
        ))}
      </ol>
    </>
  );
}
