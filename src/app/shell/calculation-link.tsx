import { lazy, Suspense, useRef, useState } from 'react';
import type { Shown } from '../state/findings.ts';
import { useFindings, useSheet } from '../state/sheet-context.ts';
import styles from './sheet.module.css';

const CalculationSheet = lazy(() =>
  import('../calculation-sheet/calculation-sheet.tsx').then((module) => ({
    default: module.CalculationSheet,
  })),
);

/** Opens every step behind the answers as one sheet to print; it is loaded when it is asked for. */
export function CalculationLink({ shown }: { readonly shown: Shown }) {
  const { document } = useSheet();
  const { joint } = useFindings();
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  return (
    <div className={styles.calculation}>
      <button ref={button} type="button" className="go" onClick={() => setOpen(true)}>
        The whole calculation
      </button>
      {isOpen ? (
        <Suspense fallback={null}>
          <CalculationSheet
            name={document.name}
            scenario={document.scenario}
            documentVersion={document.version}
            joint={joint}
            insert={shown.insert}
            assessment={shown.assessment}
            onClose={() => {
              setOpen(false);
              // The dialog has given the focus back without scrolling; the page may have grown meanwhile.
              button.current?.blur();
              button.current?.focus();
            }}
          />
        </Suspense>
      ) : null}
    </div>
  );
}
