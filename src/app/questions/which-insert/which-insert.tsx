import type { Insert } from '../../../core/inserts/insert.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Recommendation } from '../../../core/recommend/recommendation.ts';
import { QuestionSection } from '../question-section.tsx';

export interface WhichInsertProps {
  readonly joint: Joint;
  /** Every insert of the drawer. */
  readonly drawer: readonly Insert[];
  readonly recommendation: Extract<Recommendation, { readonly kind: 'answered' }>;
  /** The insert that the page answers for; one of the ranked or the rejected. */
  readonly chosenInsertId: string;
  readonly onChoose: (insertId: string) => void;
}

/** Every insert of the drawer, ranked for this joint or out with its reason. */
export function WhichInsert({ recommendation }: WhichInsertProps) {
  return (
    <QuestionSection id="insert" question="Which insert?">
      {recommendation.ranked.length}
    </QuestionSection>
  );
}
