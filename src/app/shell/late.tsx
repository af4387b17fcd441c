import { type ReactNode, useDeferredValue } from 'react';
import { FindingsContext, useFindings } from '../state/sheet-context.ts';
import styles from './sheet.module.css';

/** Parts that follow an edit right after the answers and the drawing, so that these show it first; busy until then. */
export function Late({ children }: { readonly children: ReactNode }) {
  const latest = useFindings();
  const findings = useDeferredValue(latest);
  return (
    <div className={styles.late} aria-busy={findings !== latest || undefined}>
      <FindingsContext value={findings}>{children}</FindingsContext>
    </div>
  );
}
