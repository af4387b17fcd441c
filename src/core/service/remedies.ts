import type { Insert } from '../inserts/insert.ts';
import { hopelessHole } from '../joint/existing-verdict.ts';
import { tooLittleRoom } from '../joint/room-for-insert.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { tighten } from '../joint/tightening.ts';
import { weakestHold } from '../joint/weakest-hold.ts';
import type { Derived } from '../sources/derived.ts';
import { isAnswered } from './answered.ts';
import { holdOf } from './hold.ts';
import { type Lever, type LeverId, type Subject, sizeOfMove } from './lever.ts';
import { LEVERS } from './levers.ts';
import { movedDial, movedMargin } from './moved-margin.ts';

/** The smallest move of one input that lets a failing joint hold, with the torque that then goes with it. */
export interface Remedy {
  readonly lever: LeverId;
  readonly unit: Lever['unit'];
  /** Size of the move with its sign, in the unit of the lever. */
  readonly move: number;
  /** Smallest margin after it, [-]. */
  readonly margin: number;
  /** Setting to dial then, N·mm. */
  readonly dial: number;
  /** Both with the way to them, worked out when they are asked for. */
  readonly derivedMargin: () => Derived;
  readonly derivedDial: () => Derived;
}

/**
 * The smallest single changes that let a failing joint hold.
 *
 * Each input that can be designed is moved step by step until hole, screw, torque window and every margin pass, up to
 * its greatest move; the torque is chosen anew. Loads and temperature are not moved: they are asked for.
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @returns remedies, the simplest first; empty where the joint holds as it is, and where no single change is enough
 * @source own-model one input at a time
 */
export function remediesFor(joint: AnswerableJoint, insert: Insert): readonly Remedy[] {
  const subject = { joint, insert };
  if (passing(subject)) return [];
  return LEVERS.flatMap((lever) => remedyBy(lever, subject) ?? []);
}

function remedyBy(lever: Lever, subject: Subject): Remedy | undefined {
  for (let steps = 1; steps <= lever.remedySteps; steps += 1) {
    const moved = lever.move(subject, steps);
    if (moved === undefined) return undefined;
    const passed = passing(moved);
    if (passed === undefined) continue;
    return {
      lever: lever.id,
      unit: lever.unit,
      move: sizeOfMove(lever, subject, steps),
      ...passed,
      derivedMargin: () => movedMargin(moved, movedDial(moved)),
      derivedDial: () => movedDial(moved),
    };
  }
  return undefined;
}

/** Margin and setting of a subject that would be ranked and holds, or undefined. */
function passing(subject: Subject): { readonly margin: number; readonly dial: number } | undefined {
  if (!isAnswered(subject)) return undefined;
  const { joint, insert } = subject;
  const { dial, found, bore, actives } = tighten(joint, insert);
  if (dial === undefined || found.screw.kind === 'refused' || tooLittleRoom(joint, found)) return undefined;
  if (hopelessHole(joint, found.insert, bore)) return undefined;
  const holds = weakestHold(actives).capacity.characteristic.value;
  if (holds < joint.factors.limits * joint.loads.pull) return undefined;
  const hold = holdOf(joint, insert, settingOf(dial));
  return hold.verdict === 'holds' ? { margin: hold.worst.margin, dial } : undefined;
}

const settingOf = (dial: number): Derived => ({
  symbol: 'T',
  value: dial,
  unit: 'N·mm',
  formula: 'largest setting between T_least and T_most',
  entries: [],
  source: 'own-model',
  standing: 'estimate',
});
