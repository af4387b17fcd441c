import type { Joint } from '../../core/joint/joint.ts';
import { admit } from '../../core/joint/stop.ts';
import { askedTorque, type Hold, holdOf } from '../../core/service/hold.ts';
import type { Shown } from './findings.ts';

/** Worked out once for all who show it; the parts that do are not in the first load, and neither is this. */
const found = new WeakMap<Shown, Hold>();

/** The shown joint through its life, dialled or at the most; undefined where no torque at all is allowed. */
export function holdOfShown(joint: Joint, shown: Shown): Hold | undefined {
  const known = found.get(shown);
  if (known !== undefined) return known;
  const admission = admit(joint);
  const torque = askedTorque(shown.assessment.torque);
  if (admission.kind === 'stopped' || torque === undefined) return undefined;
  const hold = holdOf(admission.joint, shown.insert, torque);
  found.set(shown, hold);
  return hold;
}

/** Whether there is a setting, and the joint holds at it through its life. */
export const isHeld = ({ assessment }: Shown, hold: Hold | undefined): hold is Hold =>
  assessment.torque.kind === 'window' && hold?.verdict === 'holds';
