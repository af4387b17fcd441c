import { answeringWords } from '../state/path-words.ts';
import { useSheetValue } from '../state/sheet-context.ts';
import styles from './stale-frame.module.css';

interface StaleTagProps {
  /** Paths of the fields that wait. */
  readonly waiting: readonly string[];
  readonly isAbove?: boolean;
}

/** Which joint is answered while a field waits. */
export function StaleTag({ waiting, isAbove = false }: StaleTagProps) {
  const document = useSheetValue(({ journal }) => journal.present);
  return (
    <p className={isAbove ? `${styles.tag} ${styles.above}` : styles.tag}>
      Stale: answers the last valid joint, {answeringWords(document, waiting)}
    </p>
  );
}
