import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { Derived } from '../sources/derived.ts';
import { preloadLeft } from './clamp-loop.ts';
import { slipFriction, type TorqueToForce, torqueToForce } from './demand.ts';
import { boreOf, designHole } from './hole-design.ts';
import type { Joint } from './joint.ts';
import { FAILURE_MODES } from './modes.ts';
import { chooseScrew, engagement, gripLength } from './screw-choice.ts';
import { findSeat } from './seat.ts';
import { type Found, situationOf } from './situation-of.ts';
import type { AnswerableJoint } from './stop.ts';
import {
  type ActiveMode,
  dialInside,
  forceToStayClosed,
  leastTorque,
  type ModeTorque,
  torqueAllowedBy,
} from './torque-window.ts';

/** What the torque question comes to before it is asked what would open a closed window. */
export interface Tightening {
  readonly found: Found;
  readonly actives: readonly ActiveMode[];
  readonly conversion: TorqueToForce;
  readonly left: Derived;
  readonly least: Derived;
  readonly most: ModeTorque;
  readonly dial?: number;
}

/**
 * Hole, seat, screw, failure modes and both ends of the torque of one joint with one insert.
 *
 * @param joint - a joint that may be answered
 * @param insert - an insert with the screw's thread
 * @returns what was found; `dial` [N·mm] is absent where no setting fits
 * @source own-model order of the steps
 */
export function tighten(joint: AnswerableJoint, insert: Insert): Tightening {
  const dimensions = insertDimensions(insert);
  const bore = boreOf(joint, dimensions);
  const seat = findSeat(joint, dimensions);
  const screw = chooseScrew(joint, dimensions, bore.meltHeight.value);
  const tip = screw.kind === 'chosen' ? Math.max(0, screw.overrun.value) : 0;
  const hole = designHole(joint, dimensions, bore, tip);
  const found: Found = {
    insert: dimensions,
    hole,
    seat,
    screw,
    engagement:
      screw.kind === 'chosen' ? screw.engagement : wholeInsertEngaged(joint, dimensions.length.estimate),
  };
  const situation = situationOf(joint, found);
  const actives = FAILURE_MODES.flatMap((rule): ActiveMode[] => {
    const path = rule.path(seat.kind);
    const capacity = path === 'none' ? undefined : rule.capacity(situation);
    return path === 'none' || capacity === undefined ? [] : [{ mode: rule.mode, path, capacity }];
  });
  const conversion = torqueToForce(joint, situation);
  const left = preloadLeft(joint, situation, gripLength(joint, dimensions).value);
  const force = forceToStayClosed(joint, slipFriction(joint, situation));
  const least = leastTorque({ force, left }, conversion, joint.tool);
  const most = actives
    .filter((active) => active.path !== 'pull')
    .map((active) => torqueAllowedBy(active, joint, conversion))
    .reduce((one, other) => (other.torque.value < one.torque.value ? other : one));
  const dial = dialInside(joint.tool, least.value, most.torque.value);
  return { found, actives, conversion, left, least, most, ...(dial === undefined ? {} : { dial }) };
}

/** No screw fits: limits are still shown for a screw that would fill the insert. */
const wholeInsertEngaged = (joint: Joint, length: Derived): Derived =>
  engagement(
    length.value + joint.screw.thread.pitch,
    {
      symbol: 'g',
      value: 0,
      unit: 'mm',
      formula: '0',
      entries: [],
      source: 'own-model',
      standing: 'estimate',
    },
    length,
    joint.screw.thread.pitch,
  );
