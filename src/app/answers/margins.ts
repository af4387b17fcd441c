import type { JointAssessment, Limit } from '../../core/joint/assessment.ts';

/** What the insert holds beside what asks for it; absent where nothing does. */
export function holdingLimit({ limits, holdsMode }: JointAssessment): Limit | undefined {
  return limits.find((limit) => limit.mode === holdsMode && limit.factor !== undefined);
}
