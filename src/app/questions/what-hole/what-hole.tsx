import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { QuestionSection } from '../question-section.tsx';

export interface WhatHoleProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

export function WhatHole({ assessment }: WhatHoleProps) {
  return (
    <QuestionSection id="hole" question="What hole?">
      {assessment.insertId}
    </QuestionSection>
  );
}
