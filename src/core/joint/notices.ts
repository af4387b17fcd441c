import type { Insert } from '../inserts/insert.ts';
import type { JointAssessment, Notice, NoticeCode } from './assessment.ts';
import { CLAMP_NOTICES } from './clamp-notices.ts';
import { HOLE_NOTICES } from './hole-notices.ts';
import { INSERT_NOTICES } from './insert-notices.ts';
import { LITTLE_KNOWN_NOTICES } from './little-known-notices.ts';
import { MATERIAL_NOTICES } from './material-notices.ts';
import type { NoticeRule } from './notice-rule.ts';
import type { AnswerableJoint } from './stop.ts';

const RULES: Readonly<Record<NoticeCode, NoticeRule>> = {
  ...CLAMP_NOTICES,
  ...MATERIAL_NOTICES,
  ...LITTLE_KNOWN_NOTICES,
  ...INSERT_NOTICES,
  ...HOLE_NOTICES,
};

/** The order in which notices are given, the gravest first. */
const ORDER: readonly NoticeCode[] = [
  'seat-overruled',
  'printed-part-on-insert-ring',
  'countersunk-wedges-printed-part',
  'dial-above-breaking-torque',
  'window-hangs-on-little-known',
  'most-torque-by-time',
  'above-service-temperature',
  'cold-setting-may-split',
  'short-insert',
  'elastomer-host',
  'insert-across-layers',
  'boss-below-practice',
  'wall-below-practice',
  'infill-below-practice',
  'floor-below-practice',
  'hole-outside-fit-range',
  'gauge-was-compensated',
  'printer-of-other-material',
  'printer-of-other-layers',
  'few-holes-read',
  'hole-rarely-fits',
  'readings-scatter',
  'knurled-length-estimated',
  'tightened-by-hand',
  'no-load-given',
  'threadlocker-cracks-host',
  'strengths-low-confidence',
  'creep-little-known',
  'warmth-little-known',
  'creep-extrapolated',
  'vibration',
  'breaking-torque-unknown',
  'setting-above-breaking-torque',
  'bond-untested',
  'bond-tested',
];

/**
 * What to know beside the answers, the gravest first.
 *
 * @param joint - the joint
 * @param insert - its insert with all readings
 * @param found - the assessment of both
 * @returns notices by code with their facts; each code at most once
 * @source flm-insert-study infill and wall
 * @source trade-practice floor, short inserts, thread-locking fluid
 */
export function noticesOf(joint: AnswerableJoint, insert: Insert, found: JointAssessment): readonly Notice[] {
  return ORDER.flatMap((code) => {
    const facts = RULES[code]({ joint, insert, found });
    return facts === undefined ? [] : [{ code, facts }];
  });
}
