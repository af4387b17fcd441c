import { useId } from 'react';
import {
  type ColumnKey,
  type Columns,
  FURTHER_COLUMNS,
  USUAL_COLUMNS,
} from '../../../storage/tests-table/columns.ts';
import { COLUMN_NAMES } from '../../../wording/tests-table.ts';
import styles from './table-import.module.css';

const NONE = '';

/** Which column of a table holds what. */
export function ColumnChooser({
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
