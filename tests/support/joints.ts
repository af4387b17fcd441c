import type { Insert } from '../../src/core/inserts/insert.ts';
import { assess } from '../../src/core/joint/assess.ts';
import type { JointAssessment, Notice } from '../../src/core/joint/assessment.ts';
import type { Joint } from '../../src/core/joint/joint.ts';
import { noticesOf } from '../../src/core/joint/notices.ts';
import { situationOf, surroundingsOf } from '../../src/core/joint/situation-of.ts';
import { type AnswerableJoint, admit } from '../../src/core/joint/stop.ts';
import { tighten } from '../../src/core/joint/tightening.ts';
import type { Situation } from '../../src/core/pull-out/situation.ts';
import { recommend } from '../../src/core/recommend/recommend.ts';
import type { Recommendation } from '../../src/core/recommend/recommendation.ts';
import { type CoreUnit, type Derived, entry } from '../../src/core/sources/derived.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import { CENTRED_LOAD } from '../../src/storage/centred-load.ts';
import { DOCUMENT_FORMAT, type InsertRecord, type JointDocument } from '../../src/storage/document.ts';
import { openDocument } from '../../src/storage/open-document.ts';
import { type ResolvedDocument, resolveDocument } from '../../src/storage/resolve.ts';

type GivenJoint = JointDocument['joint'];
type Section = 'clamped' | 'host' | 'holes' | 'screw' | 'loads' | 'tool' | 'factors';

/** What a test wants different from the usual joint; a section is merged, everything else replaced. */
export type Changes = { readonly [S in Section]?: Partial<GivenJoint[S]> } & Partial<
  Omit<GivenJoint, Section>
> & { readonly drawer?: readonly InsertRecord[]; readonly permissibleError_mm?: number };

const USUAL_JOINT: GivenJoint = {
  clamped: { material: 'aluminium', thickness_mm: 2.7, clearanceHole_mm: 3.4 },
  gap_mm: 0,
  sunk_mm: 0,
  insertSide: 'near-side',
  seat: 'from-geometry',
  host: {
    material: 'petg',
    axis: 'along-build',
    wall: { kind: 'lines', count: 5, lineWidth_mm: 0.43, convention: 'rounded-beads' },
    layerHeight_mm: 0.2,
    infill: { pattern: 'grid', density_percent: 37 },
    topSkin_mm: 0.9,
    thickness_mm: 11.3,
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
  loads: { pull_N: 83, shear_N: 19, serviceTemperature_degC: 31, duration_h: 8760, ...CENTRED_LOAD },
  use: 'general',
  tool: { kind: 'torque-driver', settings_Nm: [], step_Nm: 0.05 },
  factors: { limits: 1.15, closed: 1.25 },
};

/** An insert of a drawer: M3, measured once each, unless told otherwise. */
export const insertRecord = (changes: Partial<InsertRecord> = {}): InsertRecord => ({
  id: 'usual',
  thread: 'M3',
  knurlDiameter_mm: [4.93],
  pilotDiameter_mm: [4.21],
  length_mm: [5.3],
  ...changes,
});

/** A joint document that the door takes, with what a test wants different. */
export function jointDocument(changes: Changes = {}): JointDocument {
  const { drawer, permissibleError_mm, ...joint } = changes;
  return {
    format: DOCUMENT_FORMAT,
    version: 3,
    name: 'Joint of a test',
    scenario: '',
    joint: {
      ...USUAL_JOINT,
      ...joint,
      clamped: { ...USUAL_JOINT.clamped, ...changes.clamped },
      host: { ...USUAL_JOINT.host, ...changes.host },
      holes: { ...USUAL_JOINT.holes, ...changes.holes },
      screw: { ...USUAL_JOINT.screw, ...changes.screw },
      loads: { ...USUAL_JOINT.loads, ...changes.loads },
      tool: { ...USUAL_JOINT.tool, ...changes.tool },
      factors: { ...USUAL_JOINT.factors, ...changes.factors },
    },
    caliper: { permissibleError_mm: permissibleError_mm ?? 0.03 },
    drawer: drawer === undefined ? [insertRecord()] : [...drawer],
    printers: [],
    tests: [],
    evidence: 'used',
  };
}

/** Through the door and the tables; a refusal is a fault of the test. */
export function resolved(document: JointDocument): ResolvedDocument {
  const opened = openDocument(document);
  if (opened.kind === 'refused') throw new Error(`refused: ${JSON.stringify(opened.refusals)}`);
  const found = resolveDocument(opened.document, CATALOGUE);
  if (found.kind === 'refused') throw new Error(`not resolved: ${JSON.stringify(found.refusals)}`);
  return found.value;
}

/** A joint as the core takes it, before it is known whether it may be answered. */
export const givenJoint = (changes: Changes = {}): Joint => resolved(jointDocument(changes)).joint;

/** A joint that may be answered. */
export function answerableJoint(changes: Changes = {}): AnswerableJoint {
  const admission = admit(givenJoint(changes));
  if (admission.kind === 'stopped') throw new Error(`stopped: ${JSON.stringify(admission.stop)}`);
  return admission.joint;
}

/** The one insert of the drawer, resolved. */
export function theInsert(record: Partial<InsertRecord> = {}, permissibleError_mm = 0.03): Insert {
  const { drawer } = resolved(jointDocument({ drawer: [insertRecord(record)], permissibleError_mm }));
  const [insert] = drawer;
  if (insert === undefined) throw new Error('the drawer is empty');
  return insert;
}

/** One joint with one insert, assessed. */
export const assessed = (changes: Changes = {}, record: Partial<InsertRecord> = {}): JointAssessment =>
  assess(answerableJoint(changes), theInsert(record));

/** What to know beside the answers of one joint with one insert. */
export const noticed = (changes: Changes = {}, record: Partial<InsertRecord> = {}): readonly Notice[] =>
  noticesOf(answerableJoint(changes), theInsert(record), assessed(changes, record));

/** The whole drawer for one joint. */
export function recommended(changes: Changes = {}): Recommendation {
  const { joint, drawer } = resolved(jointDocument(changes));
  return recommend(joint, drawer);
}

/** What a failure mode is asked with. */
export function situationWith(changes: Changes = {}, record: Partial<InsertRecord> = {}): Situation {
  const joint = answerableJoint(changes);
  return situationOf(surroundingsOf(joint), tighten(joint, theInsert(record)).found);
}

/** A number with no derivation of its own, to put into a formula. */
export const given = (symbol: string, value: number, unit: CoreUnit): Derived => ({
  symbol,
  value,
  unit,
  formula: symbol,
  entries: [entry(symbol, value, unit)],
  source: 'your-measurement',
  standing: 'measured',
});
