import { useId, useState } from 'react';
import { LIMITS } from '../../../storage/limits.ts';
import { type Columns, proposedColumns } from '../../../storage/tests-table/columns.ts';
import { type Imported, importTests } from '../../../storage/tests-table/import-tests.ts';
import { readTable, type Table, tableText } from '../../../storage/tests-table/table.ts';
import { countWord } from '../../../wording/amount.ts';
import { sentenceOfTable } from '../../../wording/tests-table.ts';
import type { Choice } from '../../fields/field-props.ts';
import { useSheet } from '../../state/sheet-context.ts';
import { ColumnChooser } from './column-chooser.tsx';
import { importFrame } from './import-frame.ts';
import { LineReport } from './line-report.tsx';
import styles from './table-import.module.css';

interface TableImportProps {
  readonly insert: string;
  readonly date: string;
  readonly inserts: readonly Choice<string>[];
  readonly onDone: () => void;
}

/** A table of tests, pasted or from a file: which column is what, what becomes of each line, and taking the good ones. */
export default function TableImport({ insert, date, inserts, onDone }: TableImportProps) {
  const id = useId();
  const { document, edit } = useSheet();
  const [text, setText] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const [table, setTable] = useState<Table | null>(null);
  const [columns, setColumns] = useState<Columns>({});
  /** Tests that were taken from lines that have left the table. */
  const [taken, setTaken] = useState(0);
  const show = (typed: string) => {
    setText(typed);
    setTaken(0);
    const reading = readTable(typed);
    setFault(reading.kind === 'refused' && typed.trim() !== '' ? sentenceOfTable(reading) : null);
    setTable(reading.kind === 'read' ? reading.table : null);
    if (reading.kind === 'read') setColumns(proposedColumns(reading.table.header));
  };
  const open = (file: File | undefined) => {
    file?.text().then(show, () => setFault(`${file.name} cannot be read.`));
  };
  const found = table && importTests(table, importFrame(document, columns, { insert, date, inserts }));
  const room = LIMITS.tests.greatest - document.tests.length;
  const take = (from: Table, { taken, refused }: Imported) => {
    edit('tests', { path: 'tests', value: [...document.tests, ...taken.map(({ test }) => test)] });
    if (refused.length === 0) {
      onDone();
      return;
    }
    const left = tableText(from.header, rowsAt(from, refused));
    const reading = readTable(left);
    setText(left);
    setTable(reading.kind === 'read' ? reading.table : null);
    setTaken(taken.length);
  };
  return (
    <div className={styles.import}>
      <label htmlFor={id}>A table of tests, its first line naming the columns</label>
      <textarea
        id={id}
        rows={6}
        value={text}
        spellCheck={false}
        onChange={(event) => show(event.target.value)}
        placeholder={'date; insert; reading; how it ended\n2026-03-09; M3 5.0 × 5.0; 41,5 kg; boss split'}
      />
      <p>
        <label htmlFor={`${id}-file`}>or from a file</label>{' '}
        <input
          id={`${id}-file`}
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onChange={(event) => open(event.target.files?.[0])}
        />
      </p>
      {fault === null ? null : (
        <p role="alert">
          <b>Not taken.</b> {fault}
        </p>
      )}
      {table && found ? (
        <>
          <ColumnChooser header={table.header} columns={columns} onChoose={setColumns} />
          {taken === 0 ? null : (
            <p role="status">
              <b>Taken: {taken === 1 ? 'one test' : `${countWord(taken)} tests`}.</b> What was not taken is
              left here to be put right.
            </p>
          )}
          <LineReport found={found} />
          {found.taken.length > room ? (
            <p role="alert">
              <b>Too many.</b> A joint keeps up to {LIMITS.tests.greatest} tests; there is room for {room}{' '}
              more.
            </p>
          ) : null}
        </>
      ) : null}
      <p className={styles.presses}>
        {table && found && found.taken.length > 0 && found.taken.length <= room ? (
          <button type="button" className="press" onClick={() => take(table, found)}>
            Take {found.taken.length === 1 ? 'the test' : `${countWord(found.taken.length)} tests`}
          </button>
        ) : null}
        <button type="button" className="press" onClick={onDone}>
          {taken === 0 ? 'Leave it' : 'Close'}
        </button>
      </p>
    </div>
  );
}

/** The rows that begin at the lines of what was not taken. */
function rowsAt({ rows }: Table, refused: Imported['refused']): readonly (readonly string[])[] {
  const lines = new Set(refused.map(({ line }) => line));
  return rows.filter(({ line }) => lines.has(line)).map(({ cells }) => cells);
}
