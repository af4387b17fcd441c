import type { ExistingHole } from '../core/holes/existing-hole.ts';
import type { JointAssessment, TorqueWindow } from '../core/joint/assessment.ts';
import type { SeatKind } from '../core/pull-out/limit.ts';
import {
  capitalised,
  countWord,
  factorText,
  forceText,
  lengthText,
  ordinalWord,
  torqueText,
} from './amount.ts';
import { MODE_AGENTS, nameOfMode } from './names.ts';

/** Below this a factor or a window counts as the same, so no sentence is made of it. */
const SAME_LENGTH = 0.05;

export interface Standings {
  /** Of the insert that the reason is for; absent when it is out for this joint. */
  readonly rank?: number;
  readonly rankedCount: number;
  readonly drawerCount: number;
}

/** Why this insert, in the drawer it was taken from. */
export function reasonForInsert(assessment: JointAssessment, standings: Standings): string {
  const { rank, rankedCount, drawerCount } = standings;
  const holds = `it holds ${forceText(assessment.holds.characteristic.value)}`;
  const floor = ` and keeps ${lengthText(assessment.hole.floor.value)} of floor under the hole`;
  if (rank === undefined) {
    return rankedCount > 0
      ? 'Your choice, though it is out for this joint.'
      : `${drawerCount === 1 ? 'The only one' : `None of ${countWord(drawerCount)}`} in the drawer ${drawerCount === 1 ? 'does not fit' : 'fits'} this joint; this one is shown to see why.`;
  }
  if (rank > 1)
    return `Your choice, ${ordinalWord(rank)} of ${countWord(rankedCount)} that fit: ${holds}${floor}.`;
  if (pullsAtInsert(assessment.seat.kind)) {
    const best = drawerCount === 1 ? 'The only one' : `The best of ${countWord(drawerCount)}`;
    const where = assessment.seat.kind === 'over-gap' ? 'over a gap' : 'on the plastic';
    return `${best} in the drawer, but ${where} the screw itself pulls at it.`;
  }
  if (drawerCount === 1) return `The only one in the drawer: ${holds}${floor}.`;
  if (rankedCount === 1)
    return `The only one of ${countWord(drawerCount)} in the drawer that fits: ${holds}${floor}.`;
  return `The best of ${countWord(drawerCount)} in the drawer for this joint: ${holds}${floor}.`;
}

const pullsAtInsert = (seat: SeatKind): boolean => seat === 'over-gap' || seat === 'on-plastic';

/** What limits an insert of the ranking, and how it differs from the first. */
export function remarkOfCandidate(assessment: JointAssessment, best: JointAssessment): string {
  const governing = assessment.limits.find((limit) => limit.governs);
  const factor = governing?.factor === undefined ? '' : ` at ${factorText(governing.factor)} its load`;
  const limit = `${nameOfMode(assessment.governing)} first${factor}.`;
  if (assessment.insertId === best.insertId) return limit;
  const more = assessment.holds.characteristic.value > best.holds.characteristic.value;
  const floorLost = best.hole.floor.value - assessment.hole.floor.value;
  const bossSpared = best.hole.bossDiameter.value - assessment.hole.bossDiameter.value;
  if (more && floorLost > SAME_LENGTH) {
    return `Holds more, but its deeper hole leaves ${lengthText(assessment.hole.floor.value)} of floor. ${limit}`;
  }
  if (bossSpared > SAME_LENGTH) {
    return `Fits a boss of ${lengthText(assessment.hole.bossDiameter.value)}: for where space is short. ${limit}`;
  }
  return limit;
}

/** What a given hole is called where a hole to draw would stand. */
export const nameOfGivenHole = ({ known }: ExistingHole): string =>
  known === 'as-drawn' ? 'Hole as it was drawn' : 'Hole as measured';

/** Why the hole is drawn as it is, or that it is given. */
export function reasonForHole(assessment: JointAssessment): string {
  const { drawn, boreAsPrinted, printError, existing } = assessment.hole;
  if (existing) {
    return existing.known === 'as-measured'
      ? 'The hole is there, as you measured it; it is given, not proposed.'
      : `The hole is there; drawn so, it comes out at about ${lengthText(boreAsPrinted.value)}.`;
  }
  const pilot = `Your pilot is ${lengthText(assessment.dimensions.pilotDiameter.estimate.value)}`;
  if (!drawn.entries.some((entry) => entry.symbol === printError.symbol)) {
    return `${pilot}, and the slicer corrects the hole, so it is drawn as it is to be printed, ${lengthText(boreAsPrinted.value)}.`;
  }
  const printer = printError.standing === 'measured' ? 'your printer' : 'an uncalibrated printer';
  const change = printError.value < 0 ? 'closes' : 'opens';
  return `${pilot}, and ${printer} ${change} such a hole by about ${lengthText(Math.abs(printError.value))}.`;
}

const SEAT_CLAUSES = {
  'on-insert': 'The part seats on brass, so the plastic feels nothing',
  'on-plastic': 'The part bears on the plastic, so the screw pulls at the insert',
  'over-gap': 'Over the gap the screw pulls at the insert',
  'far-side': 'The screw draws the insert into its shoulder',
} as const satisfies Record<SeatKind, string>;

/** What sets the torque, or why none fits. */
export function reasonForTorque(assessment: JointAssessment): string {
  const { torque, seat } = assessment;
  if (torque.kind === 'window')
    return `${SEAT_CLAUSES[seat.kind]}; ${MODE_AGENTS[torque.limitedBy]} sets the top.`;
  return sentenceOfNoTorque(torque);
}

/** The two ends that exclude each other, with what sets the upper one. */
export function sentenceOfNoTorque(torque: Extract<TorqueWindow, { readonly kind: 'refused' }>): string {
  const least = torqueText(torque.least.value);
  const most = torqueText(torque.most.value);
  const agent = MODE_AGENTS[torque.limitedBy];
  return torque.code === 'no-setting'
    ? `Between ${least} and ${most} your tool has no setting; ${agent} sets the top.`
    : `The least is ${least} and the most ${most}: ${agent} gives way before the joint stays closed.`;
}

/** How many of the drawer fit. */
export const insertCountSentence = (drawerCount: number, rankedCount: number): string =>
  drawerCount === 1
    ? `One in the drawer; it ${rankedCount === 1 ? 'fits' : 'does not fit'}.`
    : `${capitalised(countWord(drawerCount))} in the drawer, ${rankedCount === 0 ? 'none' : countWord(rankedCount)} ${rankedCount === 1 ? 'fits' : 'fit'}.`;
