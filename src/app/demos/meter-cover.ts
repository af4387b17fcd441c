import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';

export const METER_COVER: JointDocument = {
  format: 'knurlwright-joint',
  version: 3,
  name: 'Meter cover',
  scenario:
    'A thin stainless cover over the dial of a pocket meter, held by M2 screws in slim posts printed in ASA.',
  joint: {
    clamped: { material: 'stainless', thickness_mm: 1, clearanceHole_mm: 2.4 },
    gap_mm: 0,
    sunk_mm: 0,
    insertSide: 'near-side',
    seat: 'from-geometry',
    host: {
      material: 'asa',
      axis: 'along-build',
      wall: { kind: 'lines', count: 4, lineWidth_mm: 0.4, convention: 'rounded-beads' },
      layerHeight_mm: 0.15,
      infill: { pattern: 'rectilinear', density_percent: 50 },
      topSkin_mm: 0.6,
      thickness_mm: 8,
      bossDiameter_mm: 7,
    },
    setting: 'heat-set',
    holes: { compensation: 'in-cad', fit_mm: 0.04, step_mm: 0.05 },
    screw: {
      thread: 'M2',
      head: 'ISO 4762',
      propertyClass: 'A2-70',
      friction: 'as-delivered',
      washer: 'none',
      threadLocking: 'none',
    },
    pattern: { kind: 'single' },
    loads: { pull_N: 8, shear_N: 2, serviceTemperature_degC: 50, duration_h: 26_280, ...CENTRED_LOAD },
    use: 'general',
    tool: { kind: 'torque-driver', settings_Nm: [], step_Nm: 0.01 },
    factors: { limits: 1.1, closed: 1.2 },
  },
  caliper: { permissibleError_mm: 0.02 },
  drawer: [
    demoInsert('tall-two', 'M2', { knurl: [3.5, 3.51, 3.49], pilot: [3.0, 3.01], length: [4.0] }, 60),
    demoInsert('even-two', 'M2', { knurl: [3.5], pilot: [3.0], length: [3.0] }, 60),
    demoInsert('slim-two', 'M2', { knurl: [3.2], pilot: [2.8], length: [2.5] }, 25),
    demoInsert('low-three', 'M3', { knurl: [4.6], pilot: [4.0], length: [3.0] }, 100),
    demoInsert('small-half', 'M2.5', { knurl: [4.05], pilot: [3.5], length: [4.5] }, 20),
  ],
  printers: [],
  tests: [],
  evidence: 'used',
};
