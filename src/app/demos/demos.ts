import type { JointDocument } from '../../storage/document.ts';
import { CAMERA_BRACKET } from './camera-bracket.ts';
import { FAR_SIDE_MOUNT } from './far-side-mount.ts';
import { LOOM_CLAMP } from './loom-clamp.ts';
import { METER_COVER } from './meter-cover.ts';
import { MOTOR_PLATE } from './motor-plate.ts';
import { PARTS_BOX } from './parts-box.ts';
import { SENSOR_LID } from './sensor-lid.ts';

/** Invented joints to begin with; the first is shown on the first visit. */
export const DEMOS: readonly [JointDocument, ...JointDocument[]] = [
  SENSOR_LID,
  CAMERA_BRACKET,
  MOTOR_PLATE,
  FAR_SIDE_MOUNT,
  PARTS_BOX,
  METER_COVER,
  LOOM_CLAMP,
];
