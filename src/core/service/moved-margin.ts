import { assess } from '../joint/assess.ts';
import type { Derived } from '../sources/derived.ts';
import { holdOf } from './hold.ts';
import type { Subject } from './lever.ts';
import { smallestMargin } from './margins.ts';

/**
 * Smallest margin of a subject through its life, with the way to it: what a step of one input comes to.
 *
 *     ψ = R_k/(S · demand)        closed: ψ = left/needed; see marginsOf
 *
 * @param subject - a joint that may be answered, with its insert
 * @param torque - torque dialled [N·mm], above 0
 * @returns ψ [-], as of the worst state of holdOf
 * @source own-model the joint through its life
 */
export const movedMargin = ({ joint, insert }: Subject, torque: Derived): Derived =>
  smallestMargin(holdOf(joint, insert, torque).worst, joint.factors);

/**
 * Setting that a subject is dialled at, with the way to it: what goes with a remedy.
 *
 *     T: largest setting between T_least and T_most
 *
 * @param subject - a joint that may be answered, with its insert; a setting fits, as with every remedy
 * @returns T [N·mm]
 * @source own-model largest setting inside
 */
export function movedDial({ joint, insert }: Subject): Derived {
  const { torque } = assess(joint, insert);
  if (torque.kind === 'refused') throw new Error('a remedy has a setting');
  return torque.dial;
}
