import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';

export const PARTS_BOX: JointDocument = {
  format: 'knurlwright-joint',
  version: 3,
  name: 'Parts box',
  scenario:
    'A printed lid on a printed box, PETG on PETG, opened often and tightened by feel: a steel spacer in the lid stands on the brass of the insert.',
  joint: {
    clamped: {
      material: 'petg',
      thickness_mm: 4,
      clearanceHole_mm: 3.4,
      sleeve: { material: 'steel', outsideDiameter_mm: 5.4 },
    },
    gap_mm: 0,
    sunk_mm: 0,
    insertSide: 'near-side',
    seat: 'from-geometry',
    host: {
      material: 'petg',
      axis: 'across-build',
      wall: { kind: 'lines', count: 4, lineWidth_mm: 0.45, convention: 'rounded-beads' },
      layerHeight_mm: 0.2,
      infill: { pattern: 'gyroid', density_percent: 25 },
      topSkin_mm: 1.2,
      thickness_mm: 14,
    },
    setting: 'heat-set',
    holes: { compensation: 'in-cad', fit_mm: 0.05, step_mm: 0.05 },
    screw: {
      thread: 'M3',
      head: 'ISO 4762',
      propertyClass: 'A2-70',
      friction: 'oiled',
      washer: 'plain',
      threadLocking: 'none',
    },
    pattern: { kind: 'single' },
    loads: { pull_N: 15, shear_N: 4, serviceTemperature_degC: 30, duration_h: 8760, ...CENTRED_LOAD },
    use: 'general',
    tool: { kind: 'hand', settings_Nm: [], step_Nm: 0.05 },
    factors: { limits: 1.1, closed: 1.1 },
  },
  caliper: { permissibleError_mm: 0.03 },
  drawer: [
    demoInsert('even-four', 'M3', { knurl: [4.6, 4.62], pilot: [4.0, 3.99], length: [4.0] }, 80),
    demoInsert('long-slim', 'M3', { knurl: [4.6], pilot: [4.0], length: [5.7] }, 35),
    demoInsert('tall-five', 'M3', { knurl: [5.0], pilot: [4.25], length: [5.0] }, 40),
    demoInsert('low-three', 'M3', { knurl: [4.6], pilot: [4.0], length: [3.0] }, 100),
    demoInsert('inch-four', 'UNC-4-40', { knurl: [4.4], pilot: [3.9], length: [4.78] }, 12),
  ],
  printers: [],
  tests: [],
  evidence: 'used',
};
