import type { Insert } from '../inserts/insert.ts';
import { hopelessHole } from '../joint/existing-verdict.ts';
import type { Joint } from '../joint/joint.ts';
import { limitingMode } from '../joint/load-reserve.ts';
import { noRoomAtAll, tooLittleRoom } from '../joint/room-for-insert.ts';
import { type AnswerableJoint, admit } from '../joint/stop.ts';
import { frameOf, type Tightening, tighten } from '../joint/tightening.ts';
import { weakestHold } from '../joint/weakest-hold.ts';
import { RankedInsert, RejectedInsert } from './assessed-late.ts';
import type { Recommendation, RejectedCandidate, Rejection } from './recommendation.ts';

/** Merits within this share of each other are equal: the metal limits of two inserts differ by rounding only. */
const EQUAL_MERIT_STEP = 0.01;

/** What the order of the ranking asks of an insert that fits. */
interface Fitting {
  readonly insert: Insert;
  /** Class of the load reserve, or of what the insert holds where no load is given: equal merits share one. */
  readonly meritClass: number;
  /** Characteristic force, N. */
  readonly holds: number;
  /** Length over all, mm. */
  readonly length: number;
}

/**
 * Every insert of a drawer for one joint: ranked, or out with one reason.
 *
 * Rank: the largest multiple of the given loads that the joint still answers (`loadReserve`); without loads, the
 * characteristic force that the insert holds. Of equals the stronger, then the shorter.
 * Out: another thread; a part too thin or a boss too small for its hole; a hole that is there and takes no
 * such insert; no screw length; it holds less than the
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
  const frame = frameOf(joint);
  const fitting: Fitting[] = [];
  const rejected: RejectedCandidate[] = [];
  for (const insert of drawer) {
    const impossible = impossibilityOf(joint, insert);
    if (impossible) {
      rejected.push({ rejection: impossible });
      continue;
    }
    const tightening = tighten(joint, insert, frame);
    const holds = weakestHold(tightening.actives).capacity.characteristic.value;
    const rejection = rejectionOf(joint, insert, tightening, holds);
    if (rejection) rejected.push(new RejectedInsert(joint, insert, rejection));
    else fitting.push(fittingOf(joint, insert, tightening, holds));
  }
  return {
    kind: 'answered',
    ranked: fitting.sort(better).map(({ insert }, index) => new RankedInsert(joint, insert, index + 1)),
    rejected,
  };
}

/** Why an insert cannot be set into this joint at all, so that nothing about it can be computed. */
function impossibilityOf(joint: AnswerableJoint, insert: Insert): Rejection | undefined {
  const { thread } = joint.screw;
  if (insert.thread.id !== thread.id) {
    return {
      insertId: insert.id,
      code: 'other-thread',
      insertThread: insert.thread.designation,
      screwThread: thread.designation,
    };
  }
  const noRoom = noRoomAtAll(joint, insert);
  return noRoom && { insertId: insert.id, ...noRoom };
}

/** Why a computed insert is out for this joint, or undefined. */
function rejectionOf(
  joint: AnswerableJoint,
  insert: Insert,
  { found, bore, least, most, dial }: Tightening,
  holds: number,
): Rejection | undefined {
  const insertId = insert.id;
  const { screw } = found;
  const noRoom = tooLittleRoom(joint, found);
  if (noRoom) return { insertId, ...noRoom };
  const hopeless = hopelessHole(joint, found.insert, bore);
  if (hopeless) return { insertId, ...hopeless };
  if (screw.kind === 'refused') {
    return { insertId, code: 'no-screw-length', least: screw.leastLength, greatest: screw.greatestLength };
  }
  const asked = joint.factors.limits * joint.loads.pull;
  if (holds < asked) return { insertId, code: 'holds-too-little', holds, asked };
  if (dial === undefined) {
    return { insertId, code: 'no-torque', least: least.value, most: most.torque.value };
  }
  return undefined;
}

function fittingOf(joint: AnswerableJoint, insert: Insert, tightening: Tightening, holds: number): Fitting {
  const { actives, conversion, least, found } = tightening;
  const merit = limitingMode(actives, joint, conversion, least.value)?.multiple ?? holds;
  return {
    insert,
    meritClass: Math.round(Math.log(Math.max(merit, Number.MIN_VALUE)) / EQUAL_MERIT_STEP),
    holds,
    length: found.insert.length.estimate.value,
  };
}

const better = (one: Fitting, other: Fitting): number =>
  other.meritClass - one.meritClass || other.holds - one.holds || one.length - other.length;
