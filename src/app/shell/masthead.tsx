import { useSheetActions, useSheetValue } from '../state/sheet-context.ts';
import { THEMES } from '../theme/theme.ts';
import { useTheme } from '../theme/use-theme.ts';
import styles from './masthead.module.css';
import { Title } from './title.tsx';

/** Imprint, ways back and forth, paper; then the joint's name and its scenario. */
export function Masthead() {
  return (
    <header className={styles.masthead}>
      <div className={styles.imprint}>
        <strong>Knurlwright</strong>
        <div className={styles.line}>
          <span className={styles.units}>All lengths in mm</span>
          <History />
          <Paper />
        </div>
      </div>
      <Title />
    </header>
  );
}

/** With nothing left to go to they do nothing, but keep the focus: the keys may be on their way from one to the other. */
function History() {
  const { undo, redo } = useSheetActions();
  const hasPast = useSheetValue(({ journal }) => journal.past.length > 0);
  const hasFuture = useSheetValue(({ journal }) => journal.future.length > 0);
  return (
    <span className={styles.history}>
      <button type="button" className="go" aria-disabled={!hasPast} onClick={hasPast ? undo : undefined}>
        Undo
      </button>
      <button type="button" className="go" aria-disabled={!hasFuture} onClick={hasFuture ? redo : undefined}>
        Redo
      </button>
    </span>
  );
}

function Paper() {
  const [theme, choose] = useTheme();
  return (
    <fieldset className={styles.theme}>
      <legend className="out-of-sight">Paper</legend>
      {THEMES.map(({ value, label }) => (
        <label key={value}>
          <input
            type="radio"
            name="theme"
            value={value}
            checked={theme === value}
            onChange={() => choose(value)}
          />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}
