import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';

export const CAMERA_BRACKET: JointDocument = {
  format: 'knurlwright-joint',
  version: 3,
  name: 'Camera bracket',
  scenario:
    'A bent steel bracket for a bench camera, held to a PLA arm with an M3 across a sealing strip that keeps a gap of half a millimetre.',
  joint: {
    clamped: { material: 'steel', thickness_mm: 2, clearanceHole_mm: 3.4 },
    gap_mm: 0.5,
    sunk_mm: 0,
    insertSide: 'near-side',
    seat: 'from-geometry',
    host: {
      material: 'pla',
      axis: 'along-build',
      wall: { kind: 'lines', count: 4, lineWidth_mm: 0.42, convention: 'rounded-beads' },
      layerHeight_mm: 0.2,
      infill: { pattern: 'grid', density_percent: 30 },
      topSkin_mm: 1,
      thickness_mm: 12,
    },
    setting: 'heat-set',
    holes: { compensation: 'in-cad', fit_mm: 0.05, step_mm: 0.05 },
    screw: {
      thread: 'M3',
      head: 'ISO 7380-1',
      propertyClass: '10.9',
      friction: 'oiled',
      washer: 'none',
      threadLocking: 'none',
    },
    pattern: { kind: 'single' },
    loads: { pull_N: 25, shear_N: 8, serviceTemperature_degC: 30, duration_h: 4380, ...CENTRED_LOAD },
    use: 'general',
    tool: { kind: 'torque-driver', settings_Nm: [], step_Nm: 0.05 },
    factors: { limits: 1.1, closed: 1.2 },
  },
  caliper: { permissibleError_mm: 0.03 },
  drawer: [
    demoInsert('long-slim', 'M3', { knurl: [4.62, 4.6, 4.59], pilot: [3.98, 4.01], length: [5.7, 5.72] }, 50),
    demoInsert('long-wide', 'M3', { knurl: [5.3, 5.29], pilot: [4.6], length: [6.5] }, 18),
    demoInsert('even-four', 'M3', { knurl: [4.6], pilot: [4.0], length: [4.0] }, 70),
    demoInsert('low-three', 'M3', { knurl: [4.62], pilot: [4.02], length: [3.0] }, 100),
    demoInsert('small-half', 'M2.5', { knurl: [4.05], pilot: [3.5], length: [4.5] }, 20),
  ],
  printers: [],
  tests: [],
  evidence: 'used',
};
