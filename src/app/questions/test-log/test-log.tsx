import { lazy, Suspense, useState } from 'react';
import type { JointDocument } from '../../../storage/document.ts';
import { capitalised, countWord } from '../../../wording/amount.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { documentFileName, saveText } from '../../state/document-file.ts';
import { useFindings, useSheet } from '../../state/sheet-context.ts';
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
  const { document, edit } = useSheet();
  const { shown, drawer } = useFindings();
  const [open, setOpen] = useState<string | null>(null);
  const [isReading, setReading] = useState(false);
  const { tests } = document;
  const inserts = drawer.map((insert) => ({ value: insert.id, label: insertName(insert) }));
  const insert = shown?.insert.id ?? document.drawer[0]?.id ?? '';
  const add = () => {
    const { id, edit: added } = withNextTest(document, { insert, date: today() });
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
      <TestRows inserts={inserts} open={open} onOpen={setOpen} />
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
            <button type="button" className="press" onClick={() => void saveTable(document)}>
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
