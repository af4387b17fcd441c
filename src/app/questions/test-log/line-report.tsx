import { useState } from 'react';
import type { Imported } from '../../../storage/tests-table/import-tests.ts';
import { COLUMN_NAMES, sentenceOfCell } from '../../../wording/tests-table.ts';
import styles from './table-import.module.css';

/** Lines that are not taken are named up to this many; the others when they are asked for. */
const MOST_NAMED = 20;

const Refused = ({ lines }: { readonly lines: Imported['refused'] }) => (
  <ul>
    {lines.map(({ line, column, fault }) => (
      <li key={line}>
        Line {line}, {COLUMN_NAMES[column]}: {sentenceOfCell(fault)}
      </li>
    ))}
  </ul>
);

/** What becomes of each line of a table. */
export function LineReport({ found: { taken, refused } }: { readonly found: Imported }) {
  const [one, ...others] = refused;
  const [isOpen, setOpen] = useState(false);
  return (
    <div role="status">
      <p>
        {taken.length === 1 ? 'One line becomes a test' : `${taken.length} lines become tests`}
        {one === undefined ? '.' : `; ${others.length === 0 ? 'one is' : `${refused.length} are`} not taken:`}
      </p>
      {one === undefined ? null : <Refused lines={refused.slice(0, MOST_NAMED)} />}
      {refused.length > MOST_NAMED ? (
        <details className={styles.further} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
          <summary>and {refused.length - MOST_NAMED} more</summary>
          {isOpen ? <Refused lines={refused.slice(MOST_NAMED)} /> : null}
        </details>
      ) : null}
    </div>
  );
}
