import type { ReactNode } from 'react';
import { useStaleness } from '../state/use-staleness.ts';
import styles from './stale-frame.module.css';
import { StaleTag } from './stale-tag.tsx';

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
      {isStale ? <StaleTag waiting={staleness.waiting} /> : null}
      {children}
    </div>
  );
}
