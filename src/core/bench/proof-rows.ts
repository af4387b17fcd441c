import { type LeverReading, type LeverRig, leverReading } from '../evidence/lever-reading.ts';
import { type LastingLoad, type ProofPlan, proofPlan } from '../evidence/proof-plan.ts';
import { type WithinScatter, withinScatter } from '../evidence/within-scatter.ts';
import { creepOf } from '../joint/clamp-loop.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { mostCreep } from '../relaxation/creep-ways.ts';
import { type Derived, entryAs, entryFrom } from '../sources/derived.ts';
import type { SetupEvidence } from './evidence.ts';
import { CONFIDENCE, SHARE } from './sample-report.ts';

/** What pulling so many coupons takes, and what the scale must then show. */
export interface ProofRow extends ProofPlan {
  readonly count: number;
  readonly reading: LeverReading;
}

/** What is to be relied on, and with what it is pulled. */
export interface ProofRig {
  /** Load to rely on, [N], > 0. */
  readonly load: number;
  /** Scatter within the set-up, logarithmic, [-]. */
  readonly scatter: Derived;
  /** Absent: for a short load. */
  readonly lasting?: LastingLoad;
  readonly rig: LeverRig;
}

/**
 * What must be pulled, and held, to rely on a load: for each number of coupons.
 *
 * 95 % of joints hold it, with 95 % confidence.
 *
 * @param counts - numbers of coupons [-], each ≥ 1
 * @param rig - load [N], scatter [-], time under load [h], lever and scale
 * @returns a row for each number, in their order
 * @source own-model lognormal with known deviation
 */
export const proofRows = (counts: readonly number[], { rig, ...asked }: ProofRig): readonly ProofRow[] =>
  counts.map((count) => {
    const plan = proofPlan({ ...asked, count, share: SHARE, confidence: CONFIDENCE });
    return { count, ...plan, reading: leverReading(plan.proofLoad, rig) };
  });

/**
 * The time under load of a joint, as a short pull has to make up for it.
 *
 * The same creep factor that wears the joint's own plastic down; where little is known of the creep, the most of it. The
 * coupon is pulled as warm as the joint will be.
 *
 * @param joint - a joint that may be answered
 * @returns t [h] and c [-]; undefined where the joint is under no load for any time
 * @source own-model strength falls as the creep modulus
 */
export function lastingLoadOf(joint: AnswerableJoint): LastingLoad | undefined {
  const { duration: hours } = joint.loads;
  if (hours <= 0) return undefined;
  const { host } = creepOf(joint);
  return { hours, creep: mostCreep(host, hours) };
}

/**
 * Scatter within a set-up: of its tests where like coupons broke, else as assumed.
 *
 * Coupons that held tell no scatter, and those that went through the friction of a screw or a coarse scale tell that.
 *
 * @param setup - what the tests of the joint's set-up say; undefined: none speaks
 * @returns scatter and its careful end [-]
 * @source own-model conjugate prior
 */
export function scatterOf(setup: SetupEvidence | undefined): WithinScatter {
  const sizes = new Map<string, Derived[]>();
  for (const { test, says, bond, ownDeviation } of setup?.findings ?? []) {
    if (says !== 'broke' || bond === undefined || ownDeviation !== 0) continue;
    sizes.set(test.insertId, [...(sizes.get(test.insertId) ?? []), logarithmOf(bond)]);
  }
  return withinScatter(
    [...sizes.values()].map((logs) => ({ values: logs.map(({ value }) => value), unit: '-', from: logs })),
  );
}

const logarithmOf = (bond: Derived): Derived => ({
  symbol: 'y_b',
  value: Math.log(bond.value),
  unit: '-',
  formula: 'ln(η_i)',
  entries: [entryAs('η_i', entryFrom(bond))],
  source: 'your-tests',
  standing: 'measured',
});
