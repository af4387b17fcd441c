import { lazy, Suspense, useRef, useState } from 'react';
import { useFindings, useFindingsValue, useSheetValue } from '../state/sheet-context.ts';
import styles from './sheet.module.css';

const CalculationSheet = lazy(() =>
  import('../calculation-sheet/calculation-sheet.tsx').then((module) => ({
    default: module.CalculationSheet,
  })),
);

/** Opens every step behind the answers as one sheet to print; it is loaded when it is asked for. */
export function CalculationLink() {
  const isShown = useFindingsValue(({ shown }) => shown !== undefined);
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  if (!isShown) return null;
  return (
    <div className={styles.calculation}>
      <button ref={button} type="button" className="go" onClick={() => setOpen(true)}>
        The whole calculation
      </button>
      {isOpen ? (
        <Suspense fallback={null}>
          <Calculation
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

function Calculation({ onClose }: { readonly onClose: () => void }) {
  const { name, scenario, version } = useSheetValue(({ journal }) => journal.present);
  const { joint, shown } = useFindings();
  if (!shown) return null;
  const { insert, assessment } = shown;
  const heads = { name, scenario, documentVersion: version };
  return (
    <CalculationSheet {...heads} joint={joint} insert={insert} assessment={assessment} onClose={onClose} />
  );
}
