import type { RefObject } from 'react';
import { useFindings } from '../state/sheet-context.ts';
import styles from './answer-bar.module.css';
import { LazyShortHold } from './lazy-hold.tsx';
import { LazyShortTests } from './lazy-tests.tsx';
import { QUESTIONS, type QuestionId } from './questions.ts';
import { shortAnswer } from './short-answer.ts';
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
  if (!hasLeft) return null;
  return (
    <nav className={styles.bar} aria-label="Answers in short" data-stale={isStale || undefined}>
      <ol>
        {QUESTIONS.map(({ id, question }) => (
          <li key={id} data-now={now === id || undefined}>
            <a href={`#${id}`} aria-current={now === id ? 'true' : undefined}>
              <span className={styles.question}>{question}</span>
              <span className={styles.value}>
                <ShortAnswer id={id} />
              </span>
            </a>
          </li>
        ))}
      </ol>
      {isStale ? <span className={styles.stale}>Stale</span> : null}
    </nav>
  );
}

function ShortAnswer({ id }: { readonly id: QuestionId }) {
  const findings = useFindings();
  const { joint, shown, stop } = findings;
  if (id !== 'hold' && id !== 'tests') return shortAnswer(id, findings);
  if (stop) return 'withheld';
  if (id === 'tests') return <LazyShortTests />;
  return shown ? <LazyShortHold joint={joint} shown={shown} /> : 'none';
}
