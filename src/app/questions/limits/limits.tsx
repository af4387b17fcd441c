import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { QuestionSection } from '../question-section.tsx';

export interface LimitsProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

export function Limits({ assessment }: LimitsProps) {
  return (
    <QuestionSection id="fails" question="What fails first?">
      {assessment.insertId}
    </QuestionSection>
  );
}
