import { type ReactNode, useState } from 'react';
import styles from './charts.module.css';

interface TwinProps {
  /** What is pressed to see it, as "The picture as a table". */
  readonly summary: string;
  /** The tables; drawn only while they are open, since they hold many numbers and few readers ask. */
  readonly children: ReactNode;
}

/** The content of a picture as tables, folded away below it. */
export function Twin({ summary, children }: TwinProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details
      className={styles['details']}
      open={isOpen}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary className="go">{summary}</summary>
      {isOpen ? children : null}
    </details>
  );
}
