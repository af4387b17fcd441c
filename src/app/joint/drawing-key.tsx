import { memo } from 'react';
import styles from './joint-panel.module.css';

/** What the lines and marks of the drawing mean. */
export const DrawingKey = memo(function DrawingKey() {
  return (
    <ul className={styles.key} aria-label="Key to the drawing">
      <li>
        <span className={styles.yours}>dotted, blue</span> yours to change
      </li>
      <li>
        <span className={styles.follows}>ruled, ink</span> follows; opens its derivation
      </li>
      <li>
        <svg viewBox="0 0 34 8" aria-hidden="true">
          <path className={styles.force} d="M2 4H33" />
        </svg>
        path of the clamp force
      </li>
      <li>
        <svg viewBox="0 0 34 8" aria-hidden="true">
          <path className={styles.phantom} d="M0 4H34" />
        </svg>
        hole as drawn in CAD
      </li>
    </ul>
  );
});
