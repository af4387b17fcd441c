import type { Insert } from '../inserts/insert.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Derived } from '../sources/derived.ts';
import type { ServiceState, StateId } from './service-state.ts';
import { serviceState } from './states.ts';

/** Times at which a joint is asked, in the order in which they come. */
export const STATES: readonly StateId[] = ['assembly', 'in-service', 'after'];

/** Whether a joint holds through its life at a dialled torque, and what ends it first. */
export interface Hold {
  readonly verdict: 'holds' | 'fails';
  readonly torque: Derived;
  readonly states: readonly ServiceState[];
  /** The state with the smallest margin. */
  readonly worst: ServiceState;
}

/**
 * Whether a joint holds: while it is tightened, warm and loaded, and after the time.
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @param torque - torque dialled [N·mm]
 * @returns every state with its margins; holds when the smallest is at least 1
 * @source own-model the joint through its life
 */
export function holdOf(joint: AnswerableJoint, insert: Insert, torque: Derived): Hold {
  const states = STATES.map((id) => serviceState(joint, insert, torque, id));
  const worst = states.reduce((one, other) => (other.margin < one.margin ? other : one));
  return { verdict: worst.margin >= 1 ? 'holds' : 'fails', torque, states, worst };
}
