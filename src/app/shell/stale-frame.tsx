import type { ReactNode } from 'react';
import { useStaleness } from '../state/use-staleness.ts';
import styles from './stale-frame.module.css';

interface StaleFrameProps {
  readonly of: 'answers' | 'ranking';
  readonly children: ReactNode;
}

/** Marks what answers the last valid joint while a field waits to be put right. */
export function StaleFrame({ of, children }: StaleFrameProps) {
  const staleness = useStaleness();
  const isStale = staleness[of];
  return (
    <div className={isStale ? styles.stale : styles.fresh} data-stale={isStale || undefined}>
      {isStale ? <StaleTag answering={staleness.answering} /> : null}
      {children}
    </div>
  );
}

interface StaleTagProps {
  readonly answering: string;
  readonly isAbove?: boolean;
}

export function StaleTag({ answering, isAbove = false }: StaleTagProps) {
  return (
    <p className={isAbove ? `${styles.tag} ${styles.above}` : styles.tag}>
      Stale: answers the last valid joint, {answering}
    </p>
  );
}
