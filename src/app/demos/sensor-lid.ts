import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';

export const SENSOR_LID: JointDocument = {
  format: 'knurlwright-joint',
  version: 3,
  name: 'Sensor lid',
  scenario: 'A 3 mm aluminium lid, screwed with an M3 to a PETG boss that carries a heat-set brass insert.',
  joint: {
    clamped: { material: 'aluminium', thickness_mm: 3, clearanceHole_mm: 3.4 },
    gap_mm: 0,
    sunk_mm: 0,
    insertSide: 'near-side',
    seat: 'from-geometry',
    host: {
      material: 'petg',
      axis: 'along-build',
      wall: { kind: 'lines', count: 5, lineWidth_mm: 0.45, convention: 'rounded-beads' },
      layerHeight_mm: 0.2,
      infill: { pattern: 'gyroid', density_percent: 20 },
      topSkin_mm: 0.8,
      thickness_mm: 10,
    },
    setting: 'heat-set',
    holes: { compensation: 'in-cad', fit_mm: 0.05, step_mm: 0.05 },
    screw: {
      thread: 'M3',
      head: 'ISO 4762',
      propertyClass: '8.8',
      friction: 'as-delivered',
      washer: 'none',
      threadLocking: 'none',
    },
    pattern: { kind: 'single' },
    loads: { pull_N: 70, shear_N: 20, serviceTemperature_degC: 40, duration_h: 8760, ...CENTRED_LOAD },
    use: 'general',
    tool: { kind: 'torque-driver', settings_Nm: [0.25, 0.4, 0.6, 0.9], step_Nm: 0.05 },
    factors: { limits: 1.1, closed: 1.2 },
  },
  caliper: { permissibleError_mm: 0.03 },
  drawer: [
    demoInsert('tall-five', 'M3', { knurl: [5.0], pilot: [4.24, 4.26, 4.25, 4.23, 4.27], length: [5.0] }, 40),
    demoInsert('slim-long', 'M3', { knurl: [4.6], pilot: [4.0, 3.99, 4.01, 4.0, 3.98], length: [5.7] }, 25),
    demoInsert('short-five', 'M3', { knurl: [5.0, 4.99], pilot: [4.25], length: [4.0, 4.02] }, 60),
    demoInsert('slim-short', 'M3', { knurl: [4.2], pilot: [3.72], length: [4.0] }, 12),
    demoInsert('low-three', 'M3', { knurl: [4.6], pilot: [4.0], length: [3.0] }, 100),
    demoInsert('wide-four', 'M4', { knurl: [5.6, 5.58], pilot: [5.1], length: [6.0] }, 30),
    demoInsert('deep-eight', 'M3', { knurl: [5.0], pilot: [4.25], length: [8.0], knurled: [6.1] }, 10),
  ],
  printers: [],
  tests: [],
  evidence: 'used',
};
