import { lazy, type ReactNode, Suspense, useRef } from 'react';
import { DerivationSlot } from '../derivation/derivation-slot.tsx';
import { insertName } from '../joint/drawer/insert-name.ts';
import { PanelBoundary } from '../shell/panel-boundary.tsx';
import { useFindings } from '../state/sheet-context.ts';
import { useStaleness } from '../state/use-staleness.ts';
import { Answer, Why } from './answer.tsx';
import { AnswerBar } from './answer-bar.tsx';
import styles from './answers.module.css';
import { HoleAnswer } from './hole-answer.tsx';
import { InsertAnswer } from './insert-answer.tsx';
import { LazyHoldAnswer } from './lazy-hold.tsx';
import { LazyTestsAnswer } from './lazy-tests.tsx';
import { QUESTIONS, type QuestionId } from './questions.ts';
import { RejectionAnswer } from './told-answer.tsx';
import { TorqueAnswer } from './torque-answer.tsx';
import { useSectionInView } from './use-section-in-view.ts';

/** Its words for every field come only when a field waits. */
const StaleTag = lazy(() =>
  import('../shell/stale-tag.tsx').then((module) => ({ default: module.StaleTag })),
);

const IDS = QUESTIONS.map(({ id }) => id);

/** The questions of the sheet with their answers; each question is the link to its section. */
export function Answers() {
  const nav = useRef<HTMLElement>(null);
  const now = useSectionInView(IDS);
  const staleness = useStaleness();
  const { stop } = useFindings();
  const isStale = staleness.answers && !stop;
  return (
    <>
      <nav
        ref={nav}
        className={styles.answers}
        aria-label="Questions and answers"
        data-stale={isStale || undefined}
      >
        {isStale ? (
          <Suspense fallback={null}>
            <StaleTag waiting={staleness.waiting} isAbove />
          </Suspense>
        ) : null}
        <ol>
          {QUESTIONS.map(({ id, question }) => (
            <Answer key={id} id={id} question={question} isNow={now === id}>
              <PanelBoundary name="This answer">
                <AnswerTo id={id} />
              </PanelBoundary>
            </Answer>
          ))}
        </ol>
      </nav>
      <AnswerBar of={nav} now={now} isStale={isStale} />
      <DerivationSlot name="answers" />
    </>
  );
}

const Words = ({ children }: { readonly children: ReactNode }) => (
  <div className={`${styles.big} ${styles.lesser}`}>{children}</div>
);

function AnswerTo({ id }: { readonly id: QuestionId }) {
  const { shown, stop, passedOver, recommendation, drawer, joint } = useFindings();
  if (stop) return <Words>withheld</Words>;
  if (id === 'tests') return <LazyTestsAnswer />;
  if (!shown || recommendation.kind !== 'answered') {
    return id === 'insert' ? (
      <>
        <Words>none</Words>
        <Why>No insert of the drawer has the thread of the screw, {joint.screw.thread.designation}.</Why>
      </>
    ) : (
      <Words>none without an insert</Words>
    );
  }
  const { assessment } = shown;
  if (id === 'hole') return <HoleAnswer assessment={assessment} />;
  if (id === 'tight') return <TorqueAnswer assessment={assessment} />;
  if (id === 'hold') return <LazyHoldAnswer joint={joint} shown={shown} />;
  return (
    <>
      <InsertAnswer shown={shown} rankedCount={recommendation.ranked.length} drawerCount={drawer.length} />
      {passedOver ? (
        <Why>
          You chose {insertName(passedOver.insert)}, which is out:{' '}
          <RejectionAnswer joint={joint} {...passedOver} />
        </Why>
      ) : null}
    </>
  );
}
