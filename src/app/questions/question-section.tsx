import type { ReactNode } from 'react';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import styles from './question-section.module.css';

export interface QuestionSectionProps {
  /** Anchor that the answers lead to. */
  readonly id: string;
  readonly question: string;
  /** What stands under the question in the margin; its numbers open at the top of the answer. */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** One question of the sheet: the question in the margin, what answers it beside. */
export function QuestionSection({ id, question, aside, children }: QuestionSectionProps) {
  return (
    <section id={id} className={styles['section']} aria-labelledby={`${id}-question`}>
      <div className={styles['side']}>
        <h2 id={`${id}-question`} tabIndex={-1}>
          {question}
        </h2>
        {aside === undefined ? null : (
          <DerivationRow slot={`${id} aside`}>
            <p>{aside}</p>
          </DerivationRow>
        )}
      </div>
      <div className={styles['answer']}>
        <DerivationSlot name={`${id} aside`} />
        {children}
      </div>
    </section>
  );
}
