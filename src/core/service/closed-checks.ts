import { slipFriction } from '../joint/demand.ts';
import { leastClampForce } from '../joint/limits.ts';
import { pullEntry, shearEntry } from '../joint/load-entries.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { Moment } from './moments.ts';
import type { ClosedCheck } from './service-state.ts';

/**
 * Whether a loaded joint stays closed and does not slip, with the smallest clamp force up to its time.
 *
 *     opens:       F_low · R against S_c · (1 − Φ) · P
 *     slips:       μ · (F_low · R − (1 − Φ) · P) against S_c · Q
 *
 * @param moment - the joint at the time, with its pull P, shear Q [N] and factor Sc [-]
 * @param torque - torque dialled [N·mm]
 * @returns one check for each load that is given
 * @source shigley ch. 8, separation
 * @source own-model friction carries the shear
 */
export function closedChecks(
  { joint, situation, shares, conversion, leastLeft }: Moment,
  torque: Derived,
): readonly ClosedCheck[] {
  const { pull, shear } = joint.loads;
  const { closed } = joint.factors;
  const low = leastClampForce(torque, joint, conversion, leastLeft);
  const share = shares.least;
  const relieved = (1 - share.value) * pull;
  const checks: ClosedCheck[] = [];
  if (relieved > 0) {
    const needed: Derived = {
      symbol: 'F_req',
      value: closed * relieved,
      unit: 'N',
      formula: 'S_c · (1 − Φ) · P',
      entries: [entry('S_c', closed, '-'), entryFrom(share), pullEntry(joint)],
      source: 'shigley',
      standing: 'published',
    };
    checks.push({ by: 'opens', left: low, needed, margin: low.value / needed.value });
  }
  if (shear > 0) {
    const friction = slipFriction(joint, situation);
    const held: Derived = {
      symbol: 'Q_held',
      value: friction * Math.max(0, low.value - relieved),
      unit: 'N',
      formula: 'μ_s · max(0, F_low − (1 − Φ) · P)',
      entries: [entry('μ_s', friction, '-'), entryFrom(low), entryFrom(share), pullEntry(joint)],
      source: 'own-model',
      standing: 'estimate',
    };
    const needed: Derived = {
      symbol: 'Q_req',
      value: closed * shear,
      unit: 'N',
      formula: 'S_c · Q',
      entries: [entry('S_c', closed, '-'), shearEntry(joint)],
      source: 'own-model',
      standing: 'estimate',
    };
    checks.push({ by: 'slips', left: held, needed, margin: held.value / needed.value });
  }
  return checks;
}
