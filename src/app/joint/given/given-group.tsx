import type { ReactNode } from 'react';
import styles from './given.module.css';

interface GivenGroupProps {
  readonly name: string;
  readonly children: ReactNode;
}

/** Inputs that belong together, under a plain heading. */
export function GivenGroup({ name, children }: GivenGroupProps) {
  return (
    <fieldset className={styles.group}>
      <legend>{name}</legend>
      <div className={styles.rows}>{children}</div>
    </fieldset>
  );
}
