import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { QuestionSection } from '../question-section.tsx';

export interface HowTightProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

export function HowTight({ assessment }: HowTightProps) {
  return (
    <QuestionSection id="tight" question="How tight?">
      {assessment.insertId}
    </QuestionSection>
  );
}
