import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { diameterNumber, lengthNumber } from '../../../wording/amount.ts';
import { nameOfGivenHole, reasonForHole } from '../../../wording/reasons.ts';
import { figure, said } from '../../../wording/sentence.ts';
import { Derivation } from '../../derivation/derivation.tsx';
import { Told } from '../../derivation/told.tsx';
import { QuestionSection } from '../question-section.tsx';
import { DrawingTable } from './drawing-table.tsx';
import { SensitivityTable } from './sensitivity-table.tsx';

export interface WhatHoleProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

/** The hole: why it is drawn as it is, open from the start; then all that the drawing needs. */
export function WhatHole({ joint, assessment }: WhatHoleProps) {
  const { existing, boreAsPrinted, printError, drawn, depth, chamfer, bossDiameter } = assessment.hole;
  const inSlicer = joint.holes.compensation === 'in-slicer';
  const proposal = said`Draw ⌀ ${figure(drawn, diameterNumber(drawn.value))}, ${figure(depth, lengthNumber(depth.value))} deep, mouth ${figure(chamfer, lengthNumber(chamfer.value))} × 45°, boss at least ${figure(bossDiameter, lengthNumber(bossDiameter.value))}. `;
  const aside = <Told sentence={said`${existing ? '' : proposal}${reasonForHole(assessment)}`} />;
  if (existing) {
    return (
      <QuestionSection id="hole" question="What hole?" aside={aside}>
        <Derivation
          label={nameOfGivenHole(existing)}
          steps={existing.known === 'as-drawn' ? [printError, boreAsPrinted] : [boreAsPrinted]}
        />
        <DrawingTable joint={joint} assessment={assessment} />
        <SensitivityTable assessment={assessment} />
      </QuestionSection>
    );
  }
  return (
    <QuestionSection id="hole" question="What hole?" aside={aside}>
      <Derivation
        label="hole to draw"
        steps={inSlicer ? [boreAsPrinted, drawn] : [boreAsPrinted, printError, drawn]}
      />
      <DrawingTable joint={joint} assessment={assessment} />
      <SensitivityTable assessment={assessment} />
    </QuestionSection>
  );
}
