import type { Insert } from '../inserts/insert.ts';
import type { JointAssessment, Notice } from './assessment.ts';
import type { AnswerableJoint } from './stop.ts';

/** What a notice may look at. */
export interface Look {
  readonly joint: AnswerableJoint;
  readonly insert: Insert;
  readonly found: JointAssessment;
}

/** Facts of the notice, or undefined where there is nothing to say. */
export type NoticeRule = (look: Look) => Notice['facts'] | undefined;
