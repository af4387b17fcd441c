import type { Insert } from '../inserts/insert.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Derived } from '../sources/derived.ts';
import { isAnswered } from './answered.ts';
import { holdOf } from './hold.ts';
import { type Lever, type LeverId, type Subject, sizeOfMove } from './lever.ts';
import { LEVERS } from './levers.ts';
import { movedMargin } from './moved-margin.ts';

/** How much one step of an input moves the smallest margin, the torque kept. */
export interface Sensitivity {
  readonly lever: LeverId;
  readonly unit: Lever['unit'];
  /** Size of the step that helps more, with its sign, in the unit of the lever. */
  readonly step: number;
  /** Smallest margin after that step, [-]. */
  readonly margin: number;
  /** Change of the smallest margin, [-]; 0 where nothing helps or hurts. */
  readonly gain: number;
  /** That margin with the way to it, worked out when it is asked for. */
  readonly derivedMargin: () => Derived;
}

/** Steps that are compared. */
const BOTH_WAYS = [1, -1] as const;

/** The smallest margin of a subject at a torque, or undefined where it is no longer answered. */
export const marginOf = (subject: Subject, torque: Derived): number | undefined =>
  isAnswered(subject) ? holdOf(subject.joint, subject.insert, torque).worst.margin : undefined;

/**
 * Which input moves the smallest margin most: every one moved alone by one step, the torque kept.
 *
 * Of the two directions the one that helps is given; where neither does, the one that hurts less.
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @param torque - torque dialled [N·mm]
 * @returns inputs with their gains, the greatest first; those that move nothing are left out
 * @source own-model one input at a time
 */
export function sensitivities(
  joint: AnswerableJoint,
  insert: Insert,
  torque: Derived,
): readonly Sensitivity[] {
  const subject: Subject = { joint, insert };
  const given = holdOf(joint, insert, torque).worst.margin;
  return LEVERS.flatMap((lever) => sensitivityOf(lever, subject, torque, given) ?? []).sort(
    (one, other) => other.gain - one.gain,
  );
}

function sensitivityOf(
  lever: Lever,
  subject: Subject,
  torque: Derived,
  given: number,
): Sensitivity | undefined {
  const moves = BOTH_WAYS.flatMap((steps) => {
    const moved = lever.move(subject, steps);
    const margin = moved === undefined ? undefined : marginOf(moved, torque);
    if (moved === undefined || margin === undefined) return [];
    const derivedMargin = () => movedMargin(moved, torque);
    return [{ step: sizeOfMove(lever, subject, steps), margin, gain: margin - given, derivedMargin }];
  });
  const [first, ...others] = moves.filter(({ gain }) => gain !== 0);
  if (first === undefined) return undefined;
  const best = others.reduce((one, other) => (other.gain > one.gain ? other : one), first);
  return { lever: lever.id, unit: lever.unit, ...best };
}
