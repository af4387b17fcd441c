import type { ReactNode } from 'react';
import { NO_BREAK_SPACE } from '../../wording/amount.ts';
import styles from './answers.module.css';
import type { QuestionId } from './questions.ts';

interface AnswerProps {
  readonly id: QuestionId;
  readonly question: string;
  /** Whether its section is in view. */
  readonly isNow: boolean;
  readonly children: ReactNode;
}

/** One question, which is the way to its section, and its answer below. */
export function Answer({ id, question, isNow, children }: AnswerProps) {
  return (
    <li className={styles.answer} data-now={isNow || undefined}>
      <a className={styles.question} href={`#${id}`} aria-current={isNow ? 'true' : undefined}>
        {question}
      </a>
      {children}
    </li>
  );
}

export const Margin = ({ children }: { readonly children: ReactNode }) => (
  <p className={styles.margin}>{children}</p>
);

export const Why = ({ children }: { readonly children: ReactNode }) => (
  <p className={styles.why}>{children}</p>
);

/** The unit of a large answer, apart from its number where it is copied too. */
export const AnswerUnit = ({ unit }: { readonly unit: string }) => (
  <small>
    {NO_BREAK_SPACE}
    {unit}
  </small>
);
