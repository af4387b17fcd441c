import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { type PlanInput, planInput } from '../../../src/app/pattern/plan-input.ts';
import { admit } from '../../../src/app/state/admit.ts';
import { withEdits } from '../../../src/app/state/edit.ts';
import type { Joint } from '../../../src/core/joint/joint.ts';
import type { JointDocument } from '../../../src/storage/document.ts';

type Given = JointDocument['joint'];

/** The lid of the first demonstration with other screws and loads, through the door. */
export function jointWith(pattern: Given['pattern'], loads: Partial<Given['loads']> = {}): Joint {
  const changed = withEdits(SENSOR_LID, [
    { path: 'joint.pattern', value: pattern },
    { path: 'joint.loads', value: { ...SENSOR_LID.joint.loads, ...loads } },
  ]);
  const admitted = admit(changed);
  if (admitted.kind === 'refused') throw new Error(JSON.stringify(admitted.refusals));
  return admitted.resolved.joint;
}

export const planOf = (pattern: Given['pattern'], loads: Partial<Given['loads']> = {}): PlanInput =>
  planInput(jointWith(pattern, loads));

/** Two by two, 60 and 34 mm apart. */
export const FOUR = {
  kind: 'rectangular',
  columns: 2,
  rows: 2,
  spacingX_mm: 60,
  spacingY_mm: 34,
} as const;
