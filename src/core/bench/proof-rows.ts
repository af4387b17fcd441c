import { WITHIN_SETUP } from '../evidence/bond-prior.ts';
import { type LeverReading, type LeverRig, leverReading } from '../evidence/lever-reading.ts';
import { type ProofPlan, proofPlan } from '../evidence/proof-plan.ts';
import { CONFIDENCE, SHARE } from './sample-report.ts';

/** What pulling so many coupons takes, and what the scale must then show. */
export interface ProofRow extends ProofPlan {
  readonly count: number;
  readonly reading: LeverReading;
}

/**
 * What must be pulled, and held, to rely on a load: for each number of coupons.
 *
 * 95 % of joints hold it, with 95 % confidence; the scatter within a set-up is taken as 0.10.
 *
 * @param load - load to rely on [N], > 0
 * @param counts - numbers of coupons, each ≥ 1
 * @param rig - lever and scale
 * @returns a row for each number, in their order
 * @source own-model lognormal with known deviation
 */
export const proofRows = (load: number, counts: readonly number[], rig: LeverRig): readonly ProofRow[] =>
  counts.map((count) => {
    const plan = proofPlan({ load, count, deviation: WITHIN_SETUP, share: SHARE, confidence: CONFIDENCE });
    return { count, ...plan, reading: leverReading(plan.proofLoad, rig) };
  });
