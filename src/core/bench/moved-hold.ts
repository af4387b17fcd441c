import type { Insert } from '../inserts/insert.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { tighten } from '../joint/tightening.ts';
import type { TestedSetup } from '../pull-out/bond.ts';
import type { Capacity } from '../pull-out/limit.ts';

/** Pull-out of one insert as the tests found it, and as it is estimated without them. */
export interface MovedHold {
  readonly before: Capacity;
  readonly after: Capacity;
}

/**
 * What the tests of a joint's set-up make of the knurl shear of one insert.
 *
 *     before: F with η and its scatter as estimated        after: with those that the coupons left
 *
 * Whether the tests speak in the answers does not matter here. Knurl shear is given whatever loads it in this joint: on
 * the far side of the part nothing does.
 *
 * @param joint - a joint that may be answered, in the set-up of the tests
 * @param insert - an insert with the screw's thread
 * @param tested - what the tests of this set-up left
 * @returns knurl shear [N], half of all joints and 19 of 20 hold it
 * @source own-model bond factor of a set-up
 */
export function movedHold(joint: AnswerableJoint, insert: Insert, tested: TestedSetup): MovedHold {
  const { tested: _, ...untested } = joint;
  return { before: knurlShearOf(untested, insert), after: knurlShearOf({ ...untested, tested }, insert) };
}

/** Knurl shear of one insert, whatever loads it: half of all joints and 19 of 20 hold it, N. */
export function knurlShearOf(joint: AnswerableJoint, insert: Insert): Capacity {
  const { actives } = tighten(
    { ...joint, insertSide: 'near-side', gap: 0, sunk: 0, seatOverride: 'on-insert' },
    insert,
  );
  const knurl = actives.find(({ mode }) => mode === 'knurl-shear');
  if (knurl === undefined) throw new Error('knurl shear is always there on the near side');
  return knurl.capacity;
}
