import type { Insert } from '../inserts/insert.ts';
import { assess } from '../joint/assess.ts';
import type { JointAssessment } from '../joint/assessment.ts';
import type { Joint } from '../joint/joint.ts';
import { LEAST_FLOOR } from '../joint/screw-choice.ts';
import { type AnswerableJoint, admit } from '../joint/stop.ts';
import type { Recommendation, RejectedCandidate, Rejection } from './recommendation.ts';

/**
 * Every insert of a drawer for one joint: ranked, or out with one reason.
 *
 * Rank: the largest multiple of the given loads that the joint still answers (`loadReserve`); without loads, the
 * characteristic force that the insert holds. Of equals the stronger, then the shorter.
 * Out: another thread; a part too thin or a boss too small for its hole; no screw length; it holds less than the
 * pull asks; no torque.
 *
 * @param given - any joint that the door admits
 * @param drawer - inserts of any thread, any number
 * @returns ranked and rejected inserts, or the stop that withholds every answer
 * @source own-model order of the ranking
 */
export function recommend(given: Joint, drawer: readonly Insert[]): Recommendation {
  const admission = admit(given);
  if (admission.kind === 'stopped') return admission;
  const { joint } = admission;
  const ranked: JointAssessment[] = [];
  const rejected: RejectedCandidate[] = [];
  for (const insert of drawer) {
    if (insert.thread.id !== joint.screw.thread.id) {
      rejected.push({ rejection: otherThread(joint, insert) });
      continue;
    }
    const assessment = assess(joint, insert);
    const rejection = rejectionOf(joint, assessment);
    if (rejection) rejected.push({ rejection, assessment });
    else ranked.push(assessment);
  }
  return {
    kind: 'answered',
    ranked: ranked.sort(better).map((assessment, index) => ({ rank: index + 1, assessment })),
    rejected,
  };
}

const otherThread = (joint: AnswerableJoint, insert: Insert): Rejection => ({
  insertId: insert.id,
  code: 'other-thread',
  insertThread: insert.thread.designation,
  screwThread: joint.screw.thread.designation,
});

function rejectionOf(joint: AnswerableJoint, assessment: JointAssessment): Rejection | undefined {
  const { insertId, hole, screw, torque, holds, dimensions } = assessment;
  const boss = joint.host.bossDiameter;
  const leastBoss = dimensions.knurlDiameter.estimate.value + 2 * joint.host.wall.lineWidth;
  if (hole.floor.value < LEAST_FLOOR) {
    return {
      insertId,
      code: 'part-too-thin',
      depth: hole.depth.value,
      thickness: joint.host.thickness,
      floor: LEAST_FLOOR,
    };
  }
  if (boss !== undefined && boss < leastBoss) {
    return { insertId, code: 'boss-too-small', bossDiameter: boss, leastDiameter: leastBoss };
  }
  if (screw.kind === 'refused') {
    return { insertId, code: 'no-screw-length', least: screw.leastLength, greatest: screw.greatestLength };
  }
  const asked = joint.factors.limits * joint.loads.pull;
  if (holds.characteristic.value < asked) {
    return { insertId, code: 'holds-too-little', holds: holds.characteristic.value, asked };
  }
  if (torque.kind === 'refused') {
    return { insertId, code: 'no-torque', least: torque.least.value, most: torque.most.value };
  }
  return undefined;
}

/** The measure of the ranking: the reserve where loads are given, else what the insert holds. */
const meritOf = (assessment: JointAssessment): number =>
  assessment.loadReserve?.value ?? assessment.holds.characteristic.value;

/** Merits within this share of each other are equal: the metal limits of two inserts differ by rounding only. */
const EQUAL_MERIT_STEP = 0.01;

const meritClass = (assessment: JointAssessment): number =>
  Math.round(Math.log(Math.max(meritOf(assessment), Number.MIN_VALUE)) / EQUAL_MERIT_STEP);

const better = (one: JointAssessment, other: JointAssessment): number =>
  meritClass(other) - meritClass(one) ||
  other.holds.characteristic.value - one.holds.characteristic.value ||
  one.dimensions.length.estimate.value - other.dimensions.length.estimate.value;
