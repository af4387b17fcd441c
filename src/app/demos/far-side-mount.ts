import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';

export const FAR_SIDE_MOUNT: JointDocument = {
  format: 'knurlwright-joint',
  version: 2,
  name: 'Far-side mount',
  scenario:
    'An aluminium rail foot on a printed polycarbonate console. The M5 insert is set from behind and pulled against a shoulder of plastic.',
  joint: {
    clamped: { material: 'aluminium', thickness_mm: 6, clearanceHole_mm: 5.5 },
    gap_mm: 0,
    sunk_mm: 0,
    insertSide: 'far-side',
    seat: 'from-geometry',
    host: {
      material: 'pc',
      axis: 'along-build',
      wall: { kind: 'lines', count: 6, lineWidth_mm: 0.5, convention: 'rounded-beads' },
      layerHeight_mm: 0.25,
      infill: { pattern: 'rectilinear', density_percent: 100 },
      topSkin_mm: 1.5,
      thickness_mm: 18,
    },
    setting: 'heat-set',
    holes: { compensation: 'in-cad', fit_mm: 0.05, step_mm: 0.05 },
    screw: {
      thread: 'M5',
      head: 'ISO 4762',
      propertyClass: '8.8',
      friction: 'oiled',
      washer: 'plain',
      threadLocking: 'none',
    },
    pattern: { kind: 'single' },
    loads: { pull_N: 60, shear_N: 5, serviceTemperature_degC: 30, duration_h: 8760, ...CENTRED_LOAD },
    use: 'general',
    tool: { kind: 'torque-driver', settings_Nm: [], step_Nm: 0.1 },
    factors: { limits: 1.1, closed: 1.2 },
  },
  caliper: { permissibleError_mm: 0.02 },
  drawer: [
    demoInsert('tall-five', 'M5', { knurl: [7.0, 7.02, 6.99], pilot: [6.3, 6.31], length: [9.5, 9.48] }, 30),
    demoInsert('even-five', 'M5', { knurl: [7.0, 6.98], pilot: [6.3], length: [7.0] }, 45),
    demoInsert('slim-five', 'M5', { knurl: [6.6], pilot: [6.0], length: [6.0] }, 20),
    demoInsert('wide-five', 'M5', { knurl: [8.0], pilot: [7.1], length: [8.0], knurled: [5.9] }, 6),
    demoInsert('slim-four', 'M4', { knurl: [5.6], pilot: [5.1], length: [6.0] }, 30),
    demoInsert('low-three', 'M3', { knurl: [4.6], pilot: [4.0], length: [3.0] }, 100),
  ],
};
