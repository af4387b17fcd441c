import type { JointDocument } from '../../storage/document.ts';
import { SENSOR_LID } from './sensor-lid.ts';

/** On the sheet on the first visit. */
export const FIRST_JOINT: JointDocument = SENSOR_LID;

/** The demonstration joints by name; they are loaded when one is asked for. */
export const DEMO_NAMES: readonly string[] = [
  SENSOR_LID.name,
  'Camera bracket',
  'Motor plate',
  'Far-side mount',
  'Parts box',
  'Meter cover',
  'Loom clamp',
];

export async function loadDemo(name: string): Promise<JointDocument> {
  const { DEMOS } = await import('./demos.ts');
  return DEMOS.find((demo) => demo.name === name) ?? FIRST_JOINT;
}

export const loadNewJoint = (): Promise<JointDocument> =>
  import('./new-joint.ts').then(({ NEW_JOINT }) => NEW_JOINT);
