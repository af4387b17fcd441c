import type { Insert } from '../core/inserts/insert.ts';
import type { JointAssessment } from '../core/joint/assessment.ts';
import { type ExistingFinding, existingFinding } from '../core/joint/existing-finding.ts';
import type { Joint } from '../core/joint/joint.ts';
import { admit } from '../core/joint/stop.ts';
import type { Recommendation } from '../core/recommend/recommendation.ts';
import type { Rescue } from '../core/recommend/rescue.ts';
import { rescuesFor } from '../core/recommend/rescues.ts';
import { NUTS } from '../data/nuts.ts';
import {
  nameOfRescue,
  sentenceOfBore,
  sentenceOfDepth,
  sentenceOfRescue,
  sentenceOfVerdict,
} from '../wording/existing-hole.ts';
import { plainText } from '../wording/sentence.ts';
import { rounded } from './rounded.ts';

interface InHole {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
  readonly drawer: readonly Insert[];
  readonly recommendation: Extract<Recommendation, { readonly kind: 'answered' }>;
}

/** What the hole that is there is to the insert, and what helps; null where the hole is designed. */
export function existingHoleReportOf({ joint, assessment, drawer, recommendation }: InHole) {
  const finding = existingFinding(joint, assessment);
  const insert = drawer.find(({ id }) => id === assessment.insertId);
  const admission = admit(joint);
  if (!finding || !insert || admission.kind === 'stopped') return null;
  const rescues =
    finding.verdict === 'fits' && recommendation.ranked.some(({ insertId }) => insertId === insert.id)
      ? []
      : rescuesFor({ joint: admission.joint, insert, finding, drawer, recommendation, nuts: NUTS });
  return { ...numbersOf(finding), rescues: rescues.map(rescueOf) };
}

function numbersOf(finding: ExistingFinding) {
  const { existing, bore, limits, given } = finding;
  return {
    verdict: finding.verdict,
    sentence: [sentenceOfBore, sentenceOfVerdict, sentenceOfDepth]
      .map((of) => plainText(of(finding)))
      .join(' '),
    known: existing.known,
    bore_mm: rounded(bore.value),
    smallestBore_mm: rounded(limits.smallest.value),
    pilotDiameter_mm: rounded(limits.pilot.value),
    largestBore_mm: rounded(limits.largest.value),
    knurlDiameter_mm: rounded(limits.knurl.value),
    chanceInWindow: rounded(finding.chance.value),
    bite_mm: rounded(finding.bite.value),
    biteFactor: rounded(finding.biteFactor.value),
    meltVolume_mm3: rounded(finding.meltVolume.value),
    meltVolumeWanted_mm3: rounded(finding.meltVolumeWanted.value),
    meltHeight_mm: rounded(finding.meltHeight.value),
    depthNeeded_mm: rounded(finding.depthNeeded.value),
    depth_mm: given ? given.depth.value : null,
    well_mm: given ? rounded(given.well.value) : null,
    goesThrough: given ? given.goesThrough : null,
    holdsCharacteristic_N: rounded(finding.holds.value),
    standing: bore.standing,
  };
}

function rescueOf(rescue: Rescue) {
  const head = {
    code: rescue.code,
    name: nameOfRescue(rescue.code),
    possible: rescue.kind === 'possible',
    sentence: plainText(sentenceOfRescue(rescue)),
  };
  if (rescue.kind === 'impossible') return { ...head, why: rescue.why };
  if (rescue.code === 'self-tapping-insert') return { ...head, holdsCharacteristic_N: null };
  const gain = { holdsCharacteristic_N: rounded(rescue.holds.value), isEnough: rescue.isEnough };
  switch (rescue.code) {
    case 'another-insert':
      return { ...head, ...gain, insert: rescue.insertId };
    case 'open-up':
      return { ...head, ...gain, drill_mm: rescue.drill.value, wallLeft_mm: rounded(rescue.wallLeft.value) };
    case 'drill-deeper':
      return { ...head, ...gain, depth_mm: rescue.depth.value };
    case 'nut-behind':
      return { ...head, ...gain, screwLength_mm: rescue.screwLength.value };
    case 'reprint':
      return { ...head, ...gain, drawnDiameter_mm: rescue.drawn.value, depth_mm: rescue.depth.value };
  }
}
