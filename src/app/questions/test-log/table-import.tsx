import { useId, useState } from 'react';
import { LIMITS } from '../../../storage/limits.ts';
import {
  type ColumnKey,
  type Columns,
  FURTHER_COLUMNS,
  proposedColumns,
  USUAL_COLUMNS,
} from '../../../storage/tests-table/columns.ts';
import { type Imported, importTests } from '../../../storage/tests-table/import-tests.ts';
import { readTable, type Table } from '../../../storage/tests-table/table.ts';
import { countWord } from '../../../wording/amount.ts';
import { COLUMN_NAMES, sentenceOfCell, sentenceOfTable } from '../../../wording/tests-table.ts';
import type { Choice } from '../../fields/field-props.ts';
import { useSheet } from '../../state/sheet-context.ts';
import { importFrame } from './import-frame.ts';
import styles from './table-import.module.css';

/** Lines that are not taken are named up to this many; the others are counted. */
const MOST_NAMED = 20;

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
  const show = (typed: string) => {
    setText(typed);
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
  const take = ({ taken }: Imported) => {
    edit('tests', { path: 'tests', value: [...document.tests, ...taken.map(({ test }) => test)] });
    onDone();
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
        {found && found.taken.length > 0 && found.taken.length <= room ? (
          <button type="button" className="press" onClick={() => take(found)}>
            Take {found.taken.length === 1 ? 'the test' : `${countWord(found.taken.length)} tests`}
          </button>
        ) : null}
        <button type="button" className="press" onClick={onDone}>
          Leave it
        </button>
      </p>
    </div>
  );
}

const NONE = '';

function ColumnChooser({
  header,
  columns,
  onChoose,
}: {
  readonly header: readonly string[];
  readonly columns: Columns;
  readonly onChoose: (columns: Columns) => void;
}) {
  const id = useId();
  const choices = header.map((name, at) => ({ at, label: name === '' ? `column ${at + 1}` : name }));
  const choose = (key: ColumnKey, text: string) => {
    const { [key]: _before, ...others } = columns;
    onChoose(text === NONE ? others : { ...others, [key]: Number(text) });
  };
  const chooser = (key: ColumnKey) => (
    <div key={key}>
      <label htmlFor={`${id}-${key}`}>{COLUMN_NAMES[key]}</label>
      <select
        id={`${id}-${key}`}
        value={columns[key] ?? NONE}
        onChange={(event) => choose(key, event.target.value)}
      >
        <option value={NONE}>no column</option>
        {choices.map(({ at, label }) => (
          <option key={at} value={at}>
            {label}
          </option>
        ))}
      </select>
    </div>
  );
  return (
    <fieldset className={styles.columns}>
      <legend>Which column is what; what none says comes from the set-up of the next test</legend>
      {USUAL_COLUMNS.map(chooser)}
      <details className={styles.further} open={FURTHER_COLUMNS.some((key) => columns[key] !== undefined)}>
        <summary>Columns that fewer tables have</summary>
        <div className={styles.columns}>{FURTHER_COLUMNS.map(chooser)}</div>
      </details>
    </fieldset>
  );
}

function LineReport({ found: { taken, refused } }: { readonly found: Imported }) {
  const [one, ...others] = refused;
  return (
    <div role="status">
      <p>
        {taken.length === 1 ? 'One line becomes a test' : `${taken.length} lines become tests`}
        {one === undefined ? '.' : `; ${others.length === 0 ? 'one is' : `${refused.length} are`} not taken:`}
      </p>
      {one === undefined ? null : (
        <ul>
          {refused.slice(0, MOST_NAMED).map(({ line, column, fault }) => (
            <li key={line}>
              Line {line}, {COLUMN_NAMES[column]}: {sentenceOfCell(fault)}
            </li>
          ))}
          {refused.length > MOST_NAMED ? <li>and {refused.length - MOST_NAMED} more</li> : null}
        </ul>
      )}
    </div>
  );
}
