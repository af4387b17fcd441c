import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';

export const MOTOR_PLATE: JointDocument = {
  format: 'knurlwright-joint',
  version: 2,
  name: 'Motor plate',
  scenario:
    'A steel plate with a small gear motor on an ABS housing that runs warm: four M4 screws, this is the one that is loaded most.',
  joint: {
    clamped: { material: 'steel', thickness_mm: 4, clearanceHole_mm: 4.5 },
    gap_mm: 0,
    sunk_mm: 0,
    insertSide: 'near-side',
    seat: 'from-geometry',
    host: {
      material: 'abs',
      axis: 'along-build',
      wall: { kind: 'lines', count: 6, lineWidth_mm: 0.45, convention: 'rounded-beads' },
      layerHeight_mm: 0.2,
      infill: { pattern: 'cubic', density_percent: 40 },
      topSkin_mm: 1.2,
      thickness_mm: 20,
      bossDiameter_mm: 16,
    },
    setting: 'heat-set',
    holes: { compensation: 'in-cad', fit_mm: 0.05, step_mm: 0.05 },
    screw: {
      thread: 'M4',
      head: 'ISO 4762',
      propertyClass: '8.8',
      friction: 'oiled',
      washer: 'plain',
      threadLocking: 'none',
    },
    pattern: { kind: 'single' },
    loads: { pull_N: 160, shear_N: 60, serviceTemperature_degC: 60, duration_h: 17_520, ...CENTRED_LOAD },
    use: 'general',
    tool: { kind: 'torque-driver', settings_Nm: [0.5, 0.8, 1, 1.2, 1.5, 2, 2.5], step_Nm: 0.1 },
    factors: { limits: 1.2, closed: 1.3 },
  },
  caliper: { permissibleError_mm: 0.03 },
  drawer: [
    demoInsert('tall-four', 'M4', { knurl: [5.9, 5.92, 5.89], pilot: [5.2, 5.21], length: [8.0, 8.03] }, 40),
    demoInsert('wide-four', 'M4', { knurl: [6.3, 6.31], pilot: [5.5], length: [6.0] }, 24),
    demoInsert('slim-four', 'M4', { knurl: [5.6], pilot: [5.1], length: [6.0] }, 30),
    demoInsert('low-four', 'M4', { knurl: [5.9], pilot: [5.2], length: [4.0] }, 55),
    demoInsert('deep-twelve', 'M4', { knurl: [6.3], pilot: [5.5], length: [12.0], knurled: [9.4] }, 8),
    demoInsert('low-three', 'M3', { knurl: [4.6], pilot: [4.0], length: [3.0] }, 100),
    demoInsert('inch-eight', 'UNC-8-32', { knurl: [6.2], pilot: [5.6], length: [6.35] }, 15),
  ],
};
