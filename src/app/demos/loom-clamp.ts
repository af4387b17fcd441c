import { CENTRED_LOAD } from '../../storage/centred-load.ts';
import type { JointDocument, TestRecord } from '../../storage/document.ts';
import { demoInsert } from './demo-insert.ts';

/** Set hot, pulled by a hanging scale to the end; what a coupon has different is given with it. */
const pulled = (
  coupon: number,
  insert: string,
  value: number,
  changes: Partial<TestRecord> = {},
): TestRecord => ({
  id: `coupon-${coupon}`,
  coupon,
  date: '2026-09-12',
  insert,
  material: 'petg',
  axis: 'along-build',
  wallLines: 4,
  infill_percent: 40,
  setting: 'heat-set',
  kind: 'pull-out',
  value,
  unit: 'kgf',
  leverRatio: 5,
  resolution: 0.05,
  greatest: 50,
  result: 'insert-out-with-plastic',
  ironTemperature_degC: 250,
  note: '',
  ...changes,
});

/** Driven in cold, pulled without the lever. */
function hammered(coupon: number, insert: string, value: number): TestRecord {
  const { ironTemperature_degC: _, ...cold } = pulled(coupon, insert, value, { date: '2026-09-13' });
  return { ...cold, setting: 'hammered', leverRatio: 1, result: 'insert-out-clean' };
}

/** Turned out by a torque driver on a locked screw. */
function turned(coupon: number, insert: string, value: number): TestRecord {
  const { resolution: _, greatest: __, ...driven } = pulled(coupon, insert, value, { date: '2026-09-13' });
  return { ...driven, kind: 'torque-out', unit: 'N·m', leverRatio: 1, result: 'insert-turned' };
}

export const LOOM_CLAMP: JointDocument = {
  format: 'knurlwright-joint',
  version: 3,
  name: 'Loom clamp',
  scenario:
    'An aluminium batten that holds the warp of a table loom, over a felt strip on a PETG end piece. Coupons were pulled first: four sizes set hot, one of them also hammered in.',
  joint: {
    clamped: { material: 'aluminium', thickness_mm: 4, clearanceHole_mm: 4.5 },
    gap_mm: 1,
    sunk_mm: 0,
    insertSide: 'near-side',
    seat: 'from-geometry',
    host: {
      material: 'petg',
      axis: 'along-build',
      wall: { kind: 'lines', count: 4, lineWidth_mm: 0.45, convention: 'rounded-beads' },
      layerHeight_mm: 0.2,
      infill: { pattern: 'gyroid', density_percent: 40 },
      topSkin_mm: 1,
      thickness_mm: 16,
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
    loads: { pull_N: 35, shear_N: 5, serviceTemperature_degC: 25, duration_h: 2160, ...CENTRED_LOAD },
    use: 'general',
    tool: { kind: 'torque-driver', settings_Nm: [], step_Nm: 0.05 },
    factors: { limits: 1.1, closed: 1.2 },
  },
  caliper: { permissibleError_mm: 0.03 },
  drawer: [
    demoInsert('tall-four', 'M4', { knurl: [5.9, 5.91], pilot: [5.2], length: [8.0] }, 40),
    demoInsert('slim-four', 'M4', { knurl: [5.6, 5.61], pilot: [5.1], length: [6.0] }, 30),
    demoInsert('low-four', 'M4', { knurl: [5.9], pilot: [5.2], length: [4.0] }, 55),
    demoInsert('wide-four', 'M4', { knurl: [6.3], pilot: [5.5], length: [6.0] }, 24),
    demoInsert('low-three', 'M3', { knurl: [4.6], pilot: [4.0], length: [3.0] }, 100),
  ],
  printers: [],
  tests: [
    pulled(1, 'tall-four', 43.6),
    pulled(2, 'tall-four', 41.9),
    pulled(3, 'slim-four', 28.55),
    pulled(4, 'slim-four', 27.5),
    pulled(5, 'slim-four', 29.6),
    pulled(6, 'low-four', 16.35),
    pulled(7, 'low-four', 14.9),
    pulled(8, 'low-four', 15.9, { result: 'insert-out-clean' }),
    hammered(9, 'slim-four', 46.5),
    hammered(10, 'slim-four', 42.2),
    hammered(11, 'slim-four', 49.3),
    pulled(12, 'wide-four', 50, {
      kind: 'proof-pull',
      leverRatio: 2,
      result: 'held',
      note: 'End of the scale.',
    }),
    turned(13, 'low-four', 2.3),
    turned(14, 'low-four', 2.45),
  ],
  evidence: 'used',
};
