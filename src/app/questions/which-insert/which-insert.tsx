import { lazy, Suspense } from 'react';
import type { Insert } from '../../../core/inserts/insert.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Recommendation } from '../../../core/recommend/recommendation.ts';
import { insertCountSentence } from '../../../wording/reasons.ts';
import { QuestionSection } from '../question-section.tsx';
import { RankTable } from './rank-table.tsx';
import styles from './which-insert.module.css';

export interface WhichInsertProps {
  readonly joint: Joint;
  /** Every insert of the drawer. */
  readonly drawer: readonly Insert[];
  readonly recommendation: Extract<Recommendation, { readonly kind: 'answered' }>;
  /** The insert that the page answers for; one of the ranked or the rejected. */
  readonly chosenInsertId: string;
  readonly onChoose: (insertId: string) => void;
}

const LengthCharts = lazy(() => import('../../charts/length-charts.tsx'));

/** Every insert of the drawer, ranked for this joint or out with its reason; then what length buys. */
export function WhichInsert({ joint, drawer, recommendation, chosenInsertId, onChoose }: WhichInsertProps) {
  const count = insertCountSentence(drawer.length, recommendation.ranked.length);
  return (
    <QuestionSection
      id="insert"
      question="Which insert?"
      aside={`${count} Ranked by the margin of the whole joint, not by pull-out alone.`}
    >
      <RankTable
        joint={joint}
        drawer={drawer}
        recommendation={recommendation}
        chosenInsertId={chosenInsertId}
        onChoose={onChoose}
      />
      <Suspense fallback={<p className={styles['waiting']}>The charts are being drawn.</p>}>
        <LengthCharts
          joint={joint}
          drawer={drawer}
          recommendation={recommendation}
          chosenInsertId={chosenInsertId}
        />
      </Suspense>
    </QuestionSection>
  );
}
