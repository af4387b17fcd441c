import type { Insert } from '../inserts/insert.ts';
import type { TorqueWindow } from '../joint/assessment.ts';
import { jointAt } from '../joint/joint-at.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Derived } from '../sources/derived.ts';
import { momentsOf } from './moments.ts';
import type { ServiceState } from './service-state.ts';
import { serviceState } from './states.ts';

/** Whether a joint holds through its life at a dialled torque, and what ends it first. */
export interface Hold {
  readonly verdict: 'holds' | 'fails';
  readonly torque: Derived;
  /** Assembly, in service, after. */
  readonly states: readonly ServiceState[];
  /** The state with the smallest margin. */
  readonly worst: ServiceState;
}

/** A setting at the very end of its window gives a margin of 1, give or take the dust of its rounding. */
const HOLDS_FROM = 1 - 1e-8;

/**
 * Torque at which a joint is asked whether it holds: the setting, or without one the largest that the limits allow.
 *
 * @param torque - what the torque question came to
 * @returns the torque [N·mm], above 0; undefined where no torque at all is allowed
 * @source own-model the torque that the answers show
 */
export function askedTorque(torque: TorqueWindow): Derived | undefined {
  if (torque.kind === 'window') return torque.dial;
  return torque.most.value > 0 ? torque.most : undefined;
}

/**
 * Whether a joint holds: while it is tightened, warm and loaded, and after the time.
 *
 * @param joint - a joint that may be answered, with room for its insert
 * @param insert - its insert
 * @param torque - torque dialled [N·mm], above 0
 * @returns every state with its margins; holds when the smallest is at least 1
 * @source own-model the joint through its life
 */
export function holdOf(joint: AnswerableJoint, insert: Insert, torque: Derived): Hold {
  const states = momentsOf(joint, insert).map((moment) => serviceState(moment, torque));
  const worst = states.reduce((one, other) => (other.margin < one.margin ? other : one));
  return { verdict: worst.margin >= HOLDS_FROM ? 'holds' : 'fails', torque, states, worst };
}

/**
 * Whether a joint that fails would hold if its polymers were as good as they may be in warmth and creep.
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @param hold - what it was found to be, at the careful end
 * @returns true where the verdict hangs on what is little known; false for a joint that holds anyway
 * @source own-model the low end of what is left is the careful one
 */
export const holdsAtBest = (joint: AnswerableJoint, insert: Insert, { verdict, torque }: Hold): boolean =>
  verdict === 'fails' && holdOf(jointAt(joint, 'high'), insert, torque).verdict === 'holds';
