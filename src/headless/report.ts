import type { Evidence } from '../core/bench/evidence.ts';
import type { Insert } from '../core/inserts/insert.ts';
import type { JointAssessment, Limit, ScrewChoice, TorqueWindow } from '../core/joint/assessment.ts';
import type { Joint } from '../core/joint/joint.ts';
import { noticesOf } from '../core/joint/notices.ts';
import { admit } from '../core/joint/stop.ts';
import type { Recommendation, RejectedCandidate } from '../core/recommend/recommendation.ts';
import { nameOfMode, sentenceOfOpening } from '../wording/names.ts';
import { sentenceOfNotice } from '../wording/notices.ts';
import { sentenceOfNoTorque } from '../wording/reasons.ts';
import { sentenceOfRejection } from '../wording/rejections.ts';
import { seatSentence } from '../wording/seat.ts';
import { plainText } from '../wording/sentence.ts';
import { sentencesOfStop } from '../wording/stops.ts';
import { evidenceReport } from './evidence-report.ts';
import { existingHoleReportOf } from './existing-hole-report.ts';
import { holdReportOf } from './hold-report.ts';
import { printerReportOf } from './printer-report.ts';
import { quantity, rangeOf, rounded, torqueInNewtonMetres } from './rounded.ts';

export const ASSESSMENT_FORMAT = 'knurlwright-assessment';
export const ASSESSMENT_VERSION = 1;

/** What a report is made of: the name of the joint, what was found, and the insert that a person has picked. */
export interface Reported {
  readonly name: string;
  readonly joint: Joint;
  readonly recommendation: Recommendation;
  readonly drawer: readonly Insert[];
  readonly chosenInsert?: string;
  readonly evidence?: Evidence;
}

/** The assessment of a joint as plain JSON: every key with its unit, every code with its sentence. */
export function reportOf({ name, joint, recommendation, drawer, chosenInsert, evidence }: Reported) {
  const head = { format: ASSESSMENT_FORMAT, version: ASSESSMENT_VERSION, name };
  if (recommendation.kind === 'stopped') {
    const { stop } = recommendation;
    return { ...head, kind: 'stopped', stop: { ...stop, ...sentencesOfStop(stop) } };
  }
  const { ranked, rejected } = recommendation;
  const all = [...ranked.map((one) => one.assessment), ...rejected.flatMap((one) => one.assessment ?? [])];
  const wanted = chosenInsert ?? ranked[0]?.assessment.insertId;
  const chosen = all.find((one) => one.insertId === wanted);
  return {
    ...head,
    kind: 'answered',
    insert: wanted ?? null,
    rejection: rejectionOf(rejected.find((one) => one.rejection.insertId === wanted)),
    ...(chosen
      ? {
          ...answerOf(chosen),
          notices: noticesIn(joint, drawer, chosen),
          existingHole: existingHoleReportOf({ joint, assessment: chosen, drawer, recommendation }),
          hold: holdIn(joint, drawer, chosen),
        }
      : {}),
    printer: printerReportOf(joint),
    evidence: evidence
      ? evidenceReport(
          evidence,
          joint,
          drawer.find(({ id }) => id === chosen?.insertId),
        )
      : null,
    ranking: ranked.map(({ rank, assessment }) => ({ rank, ...rowOf(assessment, drawer) })),
    rejected: rejected.map((one) => ({
      insert: one.rejection.insertId,
      code: one.rejection.code,
      sentence: plainText(sentenceOfRejection(one.rejection)),
    })),
  };
}

const rejectionOf = (one: RejectedCandidate | undefined) =>
  one ? { code: one.rejection.code, sentence: plainText(sentenceOfRejection(one.rejection)) } : null;

function holdIn(joint: Joint, drawer: readonly Insert[], { insertId, torque }: JointAssessment) {
  const admission = admit(joint);
  const insert = drawer.find(({ id }) => id === insertId);
  return admission.kind === 'stopped' || !insert ? null : holdReportOf(admission.joint, insert, torque);
}

function noticesIn(joint: Joint, drawer: readonly Insert[], assessment: JointAssessment) {
  const admission = admit(joint);
  const insert = drawer.find(({ id }) => id === assessment.insertId);
  if (admission.kind === 'stopped' || !insert) return [];
  return noticesOf(admission.joint, insert, assessment).map((notice) => ({
    code: notice.code,
    sentence: plainText(sentenceOfNotice(notice)),
  }));
}

function answerOf(assessment: JointAssessment) {
  const { dimensions, hole, seat, holds } = assessment;
  const measured = {
    knurlDiameter_mm: rounded(dimensions.knurlDiameter.estimate.value),
    knurlDiameterUncertainty_mm: rounded(dimensions.knurlDiameter.standardUncertainty.value),
    pilotDiameter_mm: rounded(dimensions.pilotDiameter.estimate.value),
    pilotDiameterUncertainty_mm: rounded(dimensions.pilotDiameter.standardUncertainty.value),
    length_mm: rounded(dimensions.length.estimate.value),
    knurledLength_mm: rounded(dimensions.knurledLength.estimate.value),
    knurledLengthMeasured: dimensions.knurledLength.readings > 0,
  };
  return {
    measured,
    hole: {
      drawnDiameter_mm: hole.drawn.value,
      boreAsPrinted_mm: rounded(hole.boreAsPrinted.value),
      expectedBore_mm: rounded(hole.window.expected.value),
      smallestBore_mm: rounded(hole.window.smallest.value),
      largestBore_mm: rounded(hole.window.largest.value),
      chanceInWindow: rounded(hole.window.chance.value),
      depth_mm: hole.depth.value,
      mouthChamfer45_mm: hole.chamfer.value,
      bossDiameterLeast_mm: hole.bossDiameter.value,
      wallLines: hole.wallLines.value,
      wall_mm: rounded(hole.wall.value),
      bite_mm: rounded(hole.bite.value),
      meltVolume_mm3: rounded(hole.meltVolume.value),
      meltHeight_mm: rounded(hole.meltHeight.value),
      floor_mm: rounded(hole.floor.value),
      standing: hole.drawn.standing,
    },
    seat: {
      kind: seat.kind,
      reason: seat.reason,
      fromGeometry: seat.fromGeometry,
      sentence: seatSentence(seat),
    },
    screw: screwOf(assessment.screw),
    holds: {
      mode: assessment.holdsMode,
      median_N: rounded(holds.median.value),
      characteristic_N: rounded(holds.characteristic.value),
    },
    loadReserve: assessment.loadReserve ? rounded(assessment.loadReserve.value) : null,
    governing: assessment.governing,
    limits: assessment.limits.map(limitOf),
    preloadLeft: rounded(assessment.preloadLeft.value),
    preloadLeftRange: rangeOf(assessment.preloadLeft),
    torque: torqueOf(assessment.torque),
  };
}

function screwOf(screw: ScrewChoice) {
  return screw.kind === 'chosen'
    ? {
        kind: screw.kind,
        length_mm: screw.length.value,
        grip_mm: rounded(screw.grip.value),
        engagement_mm: rounded(screw.engagement.value),
        tipBeyondInsert_mm: rounded(screw.overrun.value),
      }
    : {
        kind: screw.kind,
        code: screw.code,
        leastLength_mm: rounded(screw.leastLength),
        greatestLength_mm: rounded(screw.greatestLength),
      };
}

function limitOf(limit: Limit) {
  const { capacity } = limit;
  return {
    mode: limit.mode,
    name: nameOfMode(limit.mode),
    loadedBy: limit.path,
    ...quantity('median', capacity.median),
    ...quantity('characteristic', capacity.characteristic),
    ...quantity('demand', limit.demand),
    factor: limit.factor === undefined ? null : rounded(limit.factor),
    allowsTorque_Nm: limit.allows ? torqueInNewtonMetres(limit.allows.value) : null,
    governs: limit.governs,
    formula: capacity.median.formula,
    source: capacity.median.source,
    standing: capacity.characteristic.standing,
  };
}

function torqueOf(torque: TorqueWindow) {
  const ends = {
    least_Nm: torqueInNewtonMetres(torque.least.value),
    most_Nm: torqueInNewtonMetres(torque.most.value),
    limitedBy: torque.limitedBy,
  };
  return torque.kind === 'window'
    ? {
        kind: torque.kind,
        ...ends,
        dial_Nm: torqueInNewtonMetres(torque.dial.value),
        clampForceLow_N: rounded(torque.clampForceLow.value),
        clampForceHigh_N: rounded(torque.clampForceHigh.value),
      }
    : {
        kind: torque.kind,
        code: torque.code,
        ...ends,
        sentence: plainText(sentenceOfNoTorque(torque)),
        openedBy: torque.openedBy.map((opening) => ({ code: opening, sentence: sentenceOfOpening(opening) })),
      };
}

function rowOf(assessment: JointAssessment, drawer: readonly Insert[]) {
  const label = drawer.find((insert) => insert.id === assessment.insertId)?.label;
  return {
    insert: assessment.insertId,
    ...(label === undefined ? {} : { label }),
    drawnDiameter_mm: assessment.hole.drawn.value,
    depth_mm: assessment.hole.depth.value,
    holdsCharacteristic_N: rounded(assessment.holds.characteristic.value),
    holdsMode: assessment.holdsMode,
    dial_Nm: assessment.torque.kind === 'window' ? torqueInNewtonMetres(assessment.torque.dial.value) : null,
    governing: assessment.governing,
    loadReserve: assessment.loadReserve ? rounded(assessment.loadReserve.value) : null,
  };
}
