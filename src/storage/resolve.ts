import type { BenchTest } from '../core/bench/bench-test.ts';
import type { Insert, Readings } from '../core/inserts/insert.ts';
import { faultOf } from '../core/inserts/insert-faults.ts';
import type { Catalogue } from '../core/joint/catalogue.ts';
import type { Joint } from '../core/joint/joint.ts';
import type { Thread } from '../core/screws/thread.ts';
import { DRIVER_DEVIATION, HAND_DEVIATION } from '../core/torque/tool-deviation.ts';
import { toCore } from '../core/units/convert.ts';
import type { InsertRecord, JointDocument, PrinterRecord } from './document.ts';
import { LEAST_LOAD_N } from './least-values.ts';
import type { Refusal } from './refusal.ts';
import { resolveExistingHole } from './resolve-existing-hole.ts';
import { resolveHost } from './resolve-host.ts';
import { resolveGroup } from './resolve-loads.ts';
import { resolvePrinter } from './resolve-printers.ts';
import { resolveScrew } from './resolve-screw.ts';
import { resolveSleeve, sleeveAlternative } from './resolve-sleeve.ts';
import { resolveTests } from './resolve-tests.ts';

export interface ResolvedDocument {
  readonly joint: Joint;
  readonly drawer: readonly Insert[];
  readonly chosenInsert?: string;
  /** Every test of the document; what they say is asked of `withEvidence`. */
  readonly bench: readonly BenchTest[];
  /** The printer that the joint names; its holes are asked of `withPrinter`. */
  readonly printer?: PrinterRecord;
}

export type Resolved =
  | { readonly kind: 'resolved'; readonly value: ResolvedDocument }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

/** Collects refusals while a document is resolved, so that all faults are named at once. */
export interface Faults {
  add(path: string, code: Refusal['code'], facts?: Refusal['facts']): void;
}

/**
 * Resolves the ids of a document against the tables and checks how its parts fit one another.
 * All faults are named at once, each at its key.
 */
export function resolveDocument(document: JointDocument, catalogue: Catalogue): Resolved {
  const refusals: Refusal[] = [];
  const faults: Faults = { add: (path, code, facts = {}) => void refusals.push({ path, code, facts }) };
  const { joint: given } = document;
  const screw = resolveScrew(given, catalogue, faults);
  const host = resolveHost(given, catalogue, faults);
  const clampedMaterial = catalogue.clampedMaterials.find((row) => row.id === given.clamped.material);
  if (!clampedMaterial) {
    faults.add('joint.clamped.material', 'unknown-row', {
      value: given.clamped.material,
      choices: catalogue.clampedMaterials.map((row) => row.id).join(', '),
    });
  }
  const group = resolveGroup(given, faults);
  const sleeve = resolveSleeve(given, catalogue, faults);
  const farSide = given.insertSide === 'far-side';
  if (given.seat !== 'from-geometry' && (given.seat === 'far-side') !== farSide) {
    faults.add('joint.seat', 'seat-contradicts-side', { seat: given.seat, side: given.insertSide });
  }
  for (const key of ['pull_N', 'shear_N', 'shearAcross_N'] as const) {
    const value = given.loads[key];
    if (value > 0 && value < LEAST_LOAD_N) {
      faults.add(`joint.loads.${key}`, 'below-limit', { value, least: LEAST_LOAD_N });
    }
  }
  const drawer = resolveDrawer(document, catalogue, faults);
  const printer = resolvePrinter(document, catalogue, faults);
  if (
    document.chosenInsert !== undefined &&
    !document.drawer.some((one) => one.id === document.chosenInsert)
  ) {
    faults.add('chosenInsert', 'no-such-insert', { value: document.chosenInsert });
  }
  const holes: Joint['holes'] = {
    behaviour: catalogue.uncalibratedHoles,
    compensation: given.holes.compensation,
    fit: given.holes.fit_mm,
    step: given.holes.step_mm,
    ...(given.holes.facets === undefined ? {} : { facets: given.holes.facets }),
  };
  const existing = resolveExistingHole(document, holes, faults);
  const bench = resolveTests(document, drawer, catalogue, faults);
  if (refusals.length > 0 || !screw || !host || !clampedMaterial) return { kind: 'refused', refusals };
  const hand = given.tool.kind === 'hand';
  const joint: Joint = {
    clamped: {
      material: clampedMaterial,
      thickness: given.clamped.thickness_mm,
      clearanceHole: given.clamped.clearanceHole_mm,
      ...(sleeve ? { sleeve } : {}),
    },
    gap: given.gap_mm,
    sunk: given.sunk_mm,
    insertSide: given.insertSide,
    ...(given.seat === 'from-geometry' ? {} : { seatOverride: given.seat }),
    host,
    setting: given.setting,
    insertMetal: catalogue.insertMetal,
    holes: existing ? { ...holes, existing } : holes,
    screw,
    loads: {
      pull: group.loads.pull.value,
      shear: group.loads.shear.value,
      serviceTemperature: given.loads.serviceTemperature_degC,
      duration: given.loads.duration_h,
      retightenings: given.loads.retightenings,
    },
    group,
    vibration: given.loads.vibration,
    threadLocking: given.screw.threadLocking,
    use: given.use,
    tool: {
      kind: given.tool.kind,
      deviation: hand ? HAND_DEVIATION : DRIVER_DEVIATION,
      settings: given.tool.settings_Nm
        .map((setting) => toCore(setting, 'N·m'))
        .sort((one, other) => one - other),
      step: toCore(given.tool.step_Nm, 'N·m'),
    },
    alternatives: sleeveAlternative(catalogue),
    factors: { limits: given.factors.limits, closed: given.factors.closed },
  };
  const chosen = document.chosenInsert === undefined ? {} : { chosenInsert: document.chosenInsert };
  return { kind: 'resolved', value: { joint, drawer, bench, ...chosen, ...(printer ? { printer } : {}) } };
}

function resolveDrawer(document: JointDocument, catalogue: Catalogue, faults: Faults): readonly Insert[] {
  const seen = new Set<string>();
  return document.drawer.flatMap((record, index) => {
    const path = `drawer.${index}`;
    if (seen.has(record.id)) faults.add(`${path}.id`, 'duplicate-id', { value: record.id });
    seen.add(record.id);
    const thread = catalogue.threads.find((row) => row.id === record.thread);
    if (!thread) {
      const choices = catalogue.threads.map((row) => row.id).join(', ');
      faults.add(`${path}.thread`, 'unknown-row', { value: record.thread, choices });
      return [];
    }
    const insert = insertOf(record, thread, document.caliper.permissibleError_mm);
    reportInsertFault(insert, document.joint.holes.fit_mm, path, faults);
    return [insert];
  });
}

/** The insert that was made from a record, as long as nothing else it was made from has changed. */
const made = new WeakMap<InsertRecord, { readonly permissibleError: number; readonly insert: Insert }>();

/** A record that is the one of before is the insert of before: whoever shows it sees that nothing has changed. */
function insertOf(record: InsertRecord, thread: Thread, permissibleError: number): Insert {
  const before = made.get(record);
  if (before?.permissibleError === permissibleError && before.insert.thread === thread) return before.insert;
  const insert = insertFrom(record, thread, permissibleError);
  made.set(record, { permissibleError, insert });
  return insert;
}

function insertFrom(record: InsertRecord, thread: Thread, permissibleError: number): Insert {
  const readings = (values: readonly number[]): Readings => ({ values, permissibleError });
  return {
    id: record.id,
    ...(record.label === undefined ? {} : { label: record.label }),
    thread,
    knurlDiameter: readings(record.knurlDiameter_mm),
    pilotDiameter: readings(record.pilotDiameter_mm),
    length: readings(record.length_mm),
    ...(record.knurledLength_mm === undefined ? {} : { knurledLength: readings(record.knurledLength_mm) }),
    ...(record.count === undefined ? {} : { count: record.count }),
  };
}

const KEY_OF_FAULT = {
  'pilot-not-below-knurl': 'pilotDiameter_mm',
  'length-and-knurl-swapped': 'knurlDiameter_mm',
  'no-brass-left': 'knurlDiameter_mm',
  'knurl-too-wide': 'knurlDiameter_mm',
  'pilot-below-thread': 'pilotDiameter_mm',
  'no-bite': 'pilotDiameter_mm',
  'too-long': 'length_mm',
  'too-short': 'length_mm',
  'knurled-longer-than-insert': 'knurledLength_mm',
} as const;

function reportInsertFault(insert: Insert, fit: number, path: string, faults: Faults): void {
  const fault = faultOf(insert, fit);
  if (!fault) return;
  const { code, ...facts } = fault;
  const key = fault.code === 'looks-like-inches' ? `${fault.feature}_mm` : KEY_OF_FAULT[fault.code];
  faults.add(`${path}.${key}`, code, facts);
}
