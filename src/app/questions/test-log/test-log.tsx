import { lazy, Suspense, useCallback, useMemo, useState } from 'react';
import type { JointDocument } from '../../../storage/document.ts';
import { capitalised, countWord } from '../../../wording/amount.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { documentFileName, saveText } from '../../state/document-file.ts';
import {
  useDocumentAtPress,
  useFindingsValue,
  useSheetActions,
  useSheetValue,
} from '../../state/sheet-context.ts';
import { QuestionSection } from '../question-section.tsx';
import { nextNumber, withNextTest } from './test-edits.ts';
import styles from './test-log.module.css';
import { TestRows } from './test-rows.tsx';

/** Comes with what reads tables. */
const TableImport = lazy(() => import('./table-import.tsx'));

/** The day on this device's calendar, as a document writes it. */
function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

async function saveTable({ name, tests }: JointDocument): Promise<void> {
  const { testsTable } = await import('../../../storage/tests-table/export-tests.ts');
  saveText(testsTable(tests), documentFileName(name).replace(/\.joint\.json$/, '.tests.csv'), 'text/csv');
}

/** Tests at the bench: entered one after the other, kept with the joint. */
export default function TestLog() {
  const { edit } = useSheetActions();
  const documentAtPress = useDocumentAtPress();
  const tests = useSheetValue(({ journal }) => journal.present.tests);
  const first = useSheetValue(({ journal }) => journal.present.drawer[0]?.id);
  const shownId = useFindingsValue(({ shown }) => shown?.insert.id);
  const drawer = useFindingsValue((findings) => findings.drawer);
  const [open, setOpen] = useState<string | null>(null);
  const [isReading, setReading] = useState(false);
  const inserts = useMemo(
    () => drawer.map((insert) => ({ value: insert.id, label: insertName(insert) })),
    [drawer],
  );
  const insert = shownId ?? first ?? '';
  const onOpen = useCallback((id: string, isOpen: boolean) => setOpen(isOpen ? id : null), []);
  const add = () => {
    const { id, edit: added } = withNextTest(documentAtPress(), { insert, date: today() });
    edit('tests', added);
    setOpen(id);
  };
  return (
    <QuestionSection
      id="log"
      question="Tests at the bench"
      aside={
        <>
          {tests.length === 0
            ? 'None yet. Pull one coupon of each size that you have: even one moves the numbers.'
            : `${tests.length === 1 ? 'One test' : `${capitalised(countWord(tests.length))} tests`} kept with this joint.`}{' '}
          Shield the coupon, wear eye protection and stand out of the line of the pull. Your workshop’s own
          rules come first.
        </>
      }
    >
      <TestRows inserts={inserts} open={open} onOpen={onOpen} />
      <p className={styles.add}>
        <button type="button" className="press" onClick={add}>
          Enter test {nextNumber(tests)}
        </button>{' '}
        <span className="line">
          {tests.length === 0
            ? 'begins with the set-up of this joint'
            : 'begins with the set-up of the last one'}
        </span>
      </p>
      <p className={styles.add}>
        <button
          type="button"
          className="press"
          aria-expanded={isReading}
          onClick={() => setReading(!isReading)}
        >
          Read a table of tests
        </button>
        {tests.length === 0 ? null : (
          <>
            {' '}
            <button type="button" className="press" onClick={() => void saveTable(documentAtPress())}>
              Save the tests as a table
            </button>
          </>
        )}
      </p>
      {isReading ? (
        <Suspense fallback={null}>
          <TableImport insert={insert} date={today()} inserts={inserts} onDone={() => setReading(false)} />
        </Suspense>
      ) : null}
    </QuestionSection>
  );
}
