import type { HoleVerdict } from '../holes/hole-verdict.ts';
import type { Insert } from '../inserts/insert.ts';
import { verdictIn } from '../joint/existing-verdict.ts';
import { noRoomAtAll, tooLittleRoom } from '../joint/room-for-insert.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { type Tightening, tighten } from '../joint/tightening.ts';
import { weakestHold } from '../joint/weakest-hold.ts';
import type { Gain } from './rescue.ts';

/** An insert tried in a changed joint. */
export interface TriedInsert {
  readonly verdict: HoleVerdict;
  readonly gain: Gain;
  readonly tightening: Tightening;
}

/** What the joint's hole holds an insert with; undefined where there is no room for it. */
export function tryInsert(joint: AnswerableJoint, insert: Insert): TriedInsert | undefined {
  if (noRoomAtAll(joint, insert)) return undefined;
  const tightening = tighten(joint, insert);
  const { found, bore, actives, dial } = tightening;
  if (tooLittleRoom(joint, found)) return undefined;
  const holds = weakestHold(actives).capacity.characteristic;
  return {
    verdict: verdictIn(joint, found.insert, bore),
    gain: {
      holds,
      isEnough: isEnough(joint, holds.value) && dial !== undefined && found.screw.kind === 'chosen',
    },
    tightening,
  };
}

/** Whether a force is what the joint asks of its fastening. */
export const isEnough = ({ factors, loads }: AnswerableJoint, force: number): boolean =>
  force > 0 && force >= factors.limits * loads.pull;

/** Whether an insert cannot be set into a hole with this verdict. */
export const isHopelessVerdict = (verdict: HoleVerdict): boolean =>
  verdict === 'no-bite' || verdict === 'too-small' || verdict === 'too-shallow';
