import type { Insert } from '../../core/inserts/insert.ts';
import type { JointAssessment, Notice } from '../../core/joint/assessment.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { noticesOf } from '../../core/joint/notices.ts';
import { admit } from '../../core/joint/stop.ts';

/** What to know beside the answers about a joint with an insert; nothing about a joint that is stopped. */
export function shownNotices(joint: Joint, insert: Insert, assessment: JointAssessment): readonly Notice[] {
  const admission = admit(joint);
  return admission.kind === 'stopped' ? [] : noticesOf(admission.joint, insert, assessment);
}
