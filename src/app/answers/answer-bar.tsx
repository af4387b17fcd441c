import type { RefObject } from 'react';
import { diameterNumber, torqueNumber } from '../../wording/amount.ts';
import { sizeOfInsert } from '../../wording/names.ts';
import type { Findings } from '../state/findings.ts';
import { useFindings } from '../state/sheet-context.ts';
import { QUESTIONS, type QuestionId } from './answer.tsx';
import styles from './answer-bar.module.css';
import { useHasLeft } from './use-has-left.ts';

interface AnswerBarProps {
  /** The answers in full; the bar stands in while they are out of view. */
  readonly of: RefObject<HTMLElement | null>;
  readonly now: QuestionId | null;
  readonly isStale: boolean;
}

/** The answers reduced to question and value, at the top while the full ones have left. */
export function AnswerBar({ of, now, isStale }: AnswerBarProps) {
  const hasLeft = useHasLeft(of);
  const findings = useFindings();
  if (!hasLeft) return null;
  return (
    <nav className={styles.bar} aria-label="Answers in short" data-stale={isStale || undefined}>
      <ol>
        {QUESTIONS.map(({ id, question }) => (
          <li key={id} data-now={now === id || undefined}>
            <a href={`#${id}`} aria-current={now === id ? 'true' : undefined}>
              <span className={styles.question}>{question}</span>
              <span className={styles.value}>{shortAnswer(id, findings)}</span>
            </a>
          </li>
        ))}
      </ol>
      {isStale ? <span className={styles.stale}>Stale</span> : null}
    </nav>
  );
}

/** The value alone, as it fits in a line. */
export function shortAnswer(id: QuestionId, { stop, shown }: Findings): string {
  if (stop) return 'withheld';
  if (!shown) return 'none';
  const { dimensions, hole, torque } = shown.assessment;
  switch (id) {
    case 'insert':
      return `${shown.insert.thread.designation} ${sizeOfInsert(dimensions)}`;
    case 'hole':
      return `⌀ ${diameterNumber(hole.drawn.value)} mm`;
    case 'tight':
      return torque.kind === 'window' ? `${torqueNumber(torque.dial.value)} N·m` : 'none fits';
  }
}
