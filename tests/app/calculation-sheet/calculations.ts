import {
  calculationSteps,
  type Step,
  type StepGroup,
} from '../../../src/app/calculation-sheet/calculation-steps.ts';
import { DEMOS } from '../../../src/app/demos/demos.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import type { JointAssessment, Notice } from '../../../src/core/joint/assessment.ts';
import { noticesOf } from '../../../src/core/joint/notices.ts';
import { admit } from '../../../src/core/joint/stop.ts';
import { recommend } from '../../../src/core/recommend/recommend.ts';
import { type Hold, holdOf } from '../../../src/core/service/hold.ts';
import type { InsertRecord, JointDocument } from '../../../src/storage/document.ts';
import { type Changes, insertRecord, jointDocument, resolved } from '../../support/joints.ts';

/** A joint with all that is calculated about it with one insert. */
export interface Calculated {
  readonly name: string;
  readonly assessment: JointAssessment;
  readonly notices: readonly Notice[];
  readonly hold?: Hold;
  readonly groups: readonly StepGroup[];
}

/** Every insert of a document that can be computed. */
export function calculatedOf(document: JointDocument, name = document.name): readonly Calculated[] {
  const { joint: given, drawer } = resolved(document);
  const admission = admit(given);
  if (admission.kind === 'stopped') throw new Error(`stopped: ${name}`);
  const { joint } = admission;
  const recommendation = recommend(given, drawer);
  if (recommendation.kind === 'stopped') throw new Error(`stopped: ${name}`);
  const ids = [
    ...recommendation.ranked.map(({ insertId }) => insertId),
    ...recommendation.rejected.flatMap(({ assessment }) => assessment?.insertId ?? []),
  ];
  return drawer
    .filter(({ id }) => ids.includes(id))
    .map((insert) => {
      const assessment = assess(joint, insert);
      const { torque } = assessment;
      const hold = torque.kind === 'window' ? holdOf(joint, insert, torque.dial) : undefined;
      const life = hold === undefined ? {} : { hold };
      const remarks = { notices: noticesOf(joint, insert, assessment) };
      const groups = calculationSteps({ joint, assessment, ...remarks, ...life });
      return { name: `${name}, ${insert.id}`, assessment, groups, ...remarks, ...life };
    });
}

const varied = (name: string, changes: Changes, record: Partial<InsertRecord> = {}): readonly Calculated[] =>
  calculatedOf(jointDocument({ ...changes, drawer: [insertRecord(record)] }), name);

/** Joints that between them use every formula: all seats, settings, heads, materials and ways to load. */
export const CALCULATED: readonly Calculated[] = [
  ...DEMOS.filter(({ joint }) => joint.use === 'general').flatMap((demo) => calculatedOf(demo)),
  ...varied(
    'several readings, knurl measured',
    {},
    {
      knurlDiameter_mm: [4.93, 4.95, 4.9],
      pilotDiameter_mm: [4.21, 4.18],
      knurledLength_mm: [3.71, 3.69],
    },
  ),
  ...varied('over a gap, hammered, in a boss', {
    gap_mm: 0.6,
    setting: 'hammered',
    host: { bossDiameter_mm: 9.7 },
  }),
  ...varied('countersunk in a printed lid', {
    clamped: { material: 'pla', thickness_mm: 3.1 },
    screw: { head: 'ISO 10642' },
    host: { axis: 'across-build', infill: { pattern: 'gyroid', density_percent: 21 } },
  }),
  ...varied('far side, printed lid with washer', {
    insertSide: 'far-side',
    clamped: { material: 'petg', thickness_mm: 2.9 },
    screw: { washer: 'plain' },
  }),
  ...varied('sunk, solid, cold-pressed, walls measured', {
    sunk_mm: 0.4,
    setting: 'cold-pressed',
    host: {
      wall: { kind: 'measured', thickness_mm: 1.93, lineWidth_mm: 0.44 },
      infill: { pattern: 'grid', density_percent: 100 },
    },
    holes: { compensation: 'in-slicer' },
  }),
  ...varied('plain beads, no load', {
    host: { wall: { kind: 'lines', count: 4, lineWidth_mm: 0.42, convention: 'plain-beads' } },
    loads: { pull_N: 0, shear_N: 0 },
  }),
  ...varied('no torque', { gap_mm: 1.1, loads: { pull_N: 290 } }),
  ...varied('screw too short', { screw: { length_mm: 4 } }),
  ...varied('in a hole as drawn', {
    holes: { existing: { diameter_mm: 4.7, known: 'as-drawn', depth_mm: 7.9 } },
  }),
  ...varied('in a hole as measured, below the pilot, over a gap', {
    gap_mm: 0.3,
    holes: { existing: { diameter_mm: 4.17, known: 'as-measured' } },
  }),
  ...varied('in a hole that goes through', {
    holes: { existing: { diameter_mm: 4.41, known: 'as-measured', depth_mm: 11.3 } },
  }),
  ...varied('short time, shear only', { loads: { pull_N: 0, shear_N: 23, duration_h: 17 } }),
];

export const stepsOf = ({ groups }: Calculated): readonly Step[] => groups.flatMap(({ steps }) => steps);
