import type { Evidence } from '../../core/bench/evidence.ts';
import type { Insert } from '../../core/inserts/insert.ts';
import type { JointAssessment, Stop } from '../../core/joint/assessment.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { recommend } from '../../core/recommend/recommend.ts';
import type { Recommendation, Rejection } from '../../core/recommend/recommendation.ts';
import { CATALOGUE } from '../../data/catalogue.ts';
import type { JointDocument } from '../../storage/document.ts';
import { type ResolvedDocument, resolveDocument } from '../../storage/resolve.ts';
import type { WithEvidence } from '../../storage/with-evidence.ts';
import { openedEvidence } from './door.ts';

/** The insert whose joint the whole sheet shows. */
export interface Shown {
  readonly insert: Insert;
  readonly assessment: JointAssessment;
  /** Absent: it is out, for the reason of the rejection. */
  readonly rank?: number;
  readonly rejection?: Rejection;
}

/** All that follows from one document. */
export interface Findings {
  readonly joint: Joint;
  readonly drawer: readonly Insert[];
  readonly recommendation: Recommendation;
  /** What the tests say; absent: there is none, or the joint is stopped. */
  readonly evidence?: Evidence;
  readonly stop?: Stop;
  /** Absent where the joint is stopped, or no insert of the drawer can be computed for it. */
  readonly shown?: Shown;
  /** The insert that was picked, where it cannot be computed for this joint and another one is shown. */
  readonly passedOver?: { readonly insert: Insert; readonly rejection: Rejection };
}

/** Works a document of the sheet out; it has been through the door before. */
export function findingsOf(document: JointDocument): Findings {
  const resolved = resolveDocument(document, CATALOGUE);
  if (resolved.kind === 'refused') throw new Error('the sheet holds a document that its door refuses');
  const { drawer, chosenInsert } = resolved.value;
  const { joint, evidence } = evidenceIn(document, resolved.value);
  const recommendation = recommend(joint, drawer);
  const base = { joint, drawer, recommendation, ...(evidence ? { evidence } : {}) };
  if (recommendation.kind === 'stopped') return { ...base, stop: recommendation.stop };
  return { ...base, ...choose(recommendation, drawer, chosenInsert) };
}

function evidenceIn(document: JointDocument, resolved: ResolvedDocument): WithEvidence {
  if (resolved.bench.length === 0 && resolved.printer === undefined) return { joint: resolved.joint };
  const withEvidence = openedEvidence();
  if (withEvidence === undefined)
    throw new Error('a document with tests or a printer was opened before what reads them');
  return withEvidence(document, resolved);
}

type Answered = Extract<Recommendation, { kind: 'answered' }>;

function choose(
  { ranked, rejected }: Answered,
  drawer: readonly Insert[],
  wanted: string | undefined,
): Pick<Findings, 'shown' | 'passedOver'> {
  const insertOf = (id: string) => drawer.find((insert) => insert.id === id);
  const found = shownAmong(ranked, rejected, wanted);
  const insert = found && insertOf(found.assessment.insertId);
  const passed = rejected.find(({ rejection }) => rejection.insertId === wanted);
  const passedInsert = wanted === undefined ? undefined : insertOf(wanted);
  return {
    ...(found && insert ? { shown: { insert, ...found } } : {}),
    ...(passed && !passed.assessment && passedInsert
      ? { passedOver: { insert: passedInsert, rejection: passed.rejection } }
      : {}),
  };
}

/** The wanted candidate, else the best, else the first that can be computed; no other one is worked out. */
function shownAmong(
  ranked: Answered['ranked'],
  rejected: Answered['rejected'],
  wanted: string | undefined,
): Omit<Shown, 'insert'> | undefined {
  const fitting = ranked.find(({ insertId }) => insertId === wanted);
  if (fitting) return { rank: fitting.rank, assessment: fitting.assessment };
  const out = rejected.find(({ rejection }) => rejection.insertId === wanted);
  if (out?.assessment) return { rejection: out.rejection, assessment: out.assessment };
  const [best] = ranked;
  if (best) return { rank: best.rank, assessment: best.assessment };
  for (const { rejection, assessment } of rejected) {
    if (assessment) return { rejection, assessment };
  }
  return undefined;
}
