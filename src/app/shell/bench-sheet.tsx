import { type ReactNode, useEffect, useId, useRef } from 'react';
import { createPortal } from 'react-dom';
import styles from './bench-sheet.module.css';

interface BenchSheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** One page to take to the bench: opened over the page, printed alone. */
export function BenchSheet({ title, onClose, children }: BenchSheetProps) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  // Beside the page and not within it, so that print can leave the page out.
  return createPortal(
    <dialog ref={dialog} className={styles.sheet} aria-labelledby={id} onClose={onClose}>
      <div className={styles.bar}>
        <button type="button" className="go" onClick={() => window.print()}>
          Print this sheet
        </button>
        <button type="button" className="go" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <h2 id={id}>{title}</h2>
      {children}
    </dialog>,
    document.body,
  );
}
