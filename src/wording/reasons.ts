import type { ExistingHole } from '../core/holes/existing-hole.ts';
import type { JointAssessment, TorqueWindow } from '../core/joint/assessment.ts';
import { limitFactor } from '../core/joint/limit-factor.ts';
import type { SeatKind } from '../core/pull-out/limit.ts';
import type { Derived } from '../core/sources/derived.ts';
import { capitalised, countWord, factorText, lengthText, ordinalWord } from './amount.ts';
import { MODE_AGENTS, nameOfMode } from './names.ts';
import { type Figure, figure, type Sentence, said, told } from './sentence.ts';

/** Below this a factor or a window counts as the same, so no sentence is made of it. */
const SAME_LENGTH = 0.05;

/** A length as people say it, also where a drawing would keep both decimals. */
const length = (derived: Derived): Figure => figure(derived, lengthText(derived.value));

export interface Standings {
  /** Of the insert that the reason is for; absent when it is out for this joint. */
  readonly rank?: number;
  readonly rankedCount: number;
  readonly drawerCount: number;
}

/** Why this insert, in the drawer it was taken from. */
export function reasonForInsert(assessment: JointAssessment, standings: Standings): Sentence {
  const { rank, rankedCount, drawerCount } = standings;
  const holds = said`it holds ${told(assessment.holds.characteristic)} and keeps ${told(assessment.hole.floor)} of floor under the hole`;
  if (rank === undefined) {
    return rankedCount > 0
      ? said`Your choice, though it is out for this joint.`
      : said`${drawerCount === 1 ? 'The only one' : `None of ${countWord(drawerCount)}`} in the drawer ${drawerCount === 1 ? 'does not fit' : 'fits'} this joint; this one is shown to see why.`;
  }
  if (rank > 1)
    return said`Your choice, ${ordinalWord(rank)} of ${countWord(rankedCount)} that fit: ${holds}.`;
  if (pullsAtInsert(assessment.seat.kind)) {
    const best = drawerCount === 1 ? 'The only one' : `The best of ${countWord(drawerCount)}`;
    const where = assessment.seat.kind === 'over-gap' ? 'over a gap' : 'on the plastic';
    return said`${best} in the drawer, but ${where} the screw itself pulls at it.`;
  }
  if (drawerCount === 1) return said`The only one in the drawer: ${holds}.`;
  if (rankedCount === 1)
    return said`The only one of ${countWord(drawerCount)} in the drawer that fits: ${holds}.`;
  return said`The best of ${countWord(drawerCount)} in the drawer for this joint: ${holds}.`;
}

const pullsAtInsert = (seat: SeatKind): boolean => seat === 'over-gap' || seat === 'on-plastic';

/** What limits an insert of the ranking, and how it differs from the first. */
export function remarkOfCandidate(assessment: JointAssessment, best: JointAssessment): Sentence {
  const governing = assessment.limits.find((limit) => limit.governs);
  const factor = governing && limitFactor(governing);
  const load = factor === undefined ? '' : said` at ${figure(factor, factorText(factor.value))} its load`;
  const limit = said`${nameOfMode(assessment.governing)} first${load}.`;
  if (assessment.insertId === best.insertId) return limit;
  const more = assessment.holds.characteristic.value > best.holds.characteristic.value;
  const floorLost = best.hole.floor.value - assessment.hole.floor.value;
  const bossSpared = best.hole.bossDiameter.value - assessment.hole.bossDiameter.value;
  if (more && floorLost > SAME_LENGTH) {
    return said`Holds more, but its deeper hole leaves ${told(assessment.hole.floor)} of floor. ${limit}`;
  }
  if (bossSpared > SAME_LENGTH) {
    return said`Fits a boss of ${told(assessment.hole.bossDiameter)}: for where space is short. ${limit}`;
  }
  return limit;
}

/** What a given hole is called where a hole to draw would stand. */
export const nameOfGivenHole = ({ known }: ExistingHole): string =>
  known === 'as-drawn' ? 'Hole as it was drawn' : 'Hole as measured';

/** Why the hole is drawn as it is, or that it is given. */
export function reasonForHole(assessment: JointAssessment): Sentence {
  const { drawn, boreAsPrinted, printError, existing } = assessment.hole;
  if (existing) {
    return existing.known === 'as-measured'
      ? said`The hole is there, as you measured it; it is given, not proposed.`
      : said`The hole is there; drawn so, it comes out at about ${length(boreAsPrinted)}.`;
  }
  const pilot = said`Your pilot is ${told(assessment.dimensions.pilotDiameter.estimate)}`;
  if (!drawn.entries.some((entry) => entry.symbol === printError.symbol)) {
    return said`${pilot}, and the slicer corrects the hole, so it is drawn as it is to be printed, ${length(boreAsPrinted)}.`;
  }
  const printer = printError.standing === 'measured' ? 'your printer' : 'an uncalibrated printer';
  const change = printError.value < 0 ? 'closes' : 'opens';
  const by = figure(printError, lengthText(Math.abs(printError.value)));
  return said`${pilot}, and ${printer} ${change} such a hole by about ${by}.`;
}

const SEAT_CLAUSES = {
  'on-insert': 'The part seats on brass, so the plastic feels nothing',
  'on-plastic': 'The part bears on the plastic, so the screw pulls at the insert',
  'over-gap': 'Over the gap the screw pulls at the insert',
  'far-side': 'The screw draws the insert into its shoulder',
} as const satisfies Record<SeatKind, string>;

/** What sets the torque, or why none fits. */
export function reasonForTorque(assessment: JointAssessment): Sentence {
  const { torque, seat } = assessment;
  if (torque.kind === 'window')
    return said`${SEAT_CLAUSES[seat.kind]}; ${MODE_AGENTS[torque.limitedBy]} sets the top.`;
  return sentenceOfNoTorque(torque);
}

/** The two ends that exclude each other, with what sets the upper one. */
export function sentenceOfNoTorque(torque: Extract<TorqueWindow, { readonly kind: 'refused' }>): Sentence {
  const [least, most] = [told(torque.least), told(torque.most)];
  const agent = MODE_AGENTS[torque.limitedBy];
  return torque.code === 'no-setting'
    ? said`Between ${least} and ${most} your tool has no setting; ${agent} sets the top.`
    : said`The least is ${least} and the most ${most}: ${agent} gives way before the joint stays closed.`;
}

/** How many of the drawer fit. */
export const insertCountSentence = (drawerCount: number, rankedCount: number): string =>
  drawerCount === 1
    ? `One in the drawer; it ${rankedCount === 1 ? 'fits' : 'does not fit'}.`
    : `${capitalised(countWord(drawerCount))} in the drawer, ${rankedCount === 0 ? 'none' : countWord(rankedCount)} ${rankedCount === 1 ? 'fits' : 'fit'}.`;
