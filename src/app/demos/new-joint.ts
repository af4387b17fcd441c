import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';
import { SENSOR_LID } from './sensor-lid.ts';

/** Where a joint of one's own begins: usual values, no load, one insert to measure over. */
export const NEW_JOINT: JointDocument = {
  ...SENSOR_LID,
  name: 'New joint',
  scenario: '',
  joint: {
    ...SENSOR_LID.joint,
    host: { ...SENSOR_LID.joint.host, material: 'pla', thickness_mm: 12 },
    loads: { pull_N: 0, shear_N: 0, serviceTemperature_degC: 25, duration_h: 8760, ...CENTRED_LOAD },
    tool: { kind: 'torque-driver', settings_Nm: [], step_Nm: 0.05 },
  },
  drawer: [demoInsert('insert-1', 'M3', { knurl: [5], pilot: [4.25], length: [5] })],
};
