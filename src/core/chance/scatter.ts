import { BETWEEN_SETUPS, PRIOR_FREEDOM, WITHIN_SETUP } from '../evidence/bond-prior.ts';
import { normalQuantile } from '../numerics/normal-distribution.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { PRIOR_DEVIATION, PRIOR_QUANTILE } from '../pull-out/bond.ts';
import type { Capacity, FailureMode } from '../pull-out/limit.ts';
import type { FrictionRange } from '../screws/screw.ts';

/** Degrees of freedom of what an untested set-up scatters. */
export const SETUP_FREEDOM = PRIOR_FREEDOM;

/** Above so many degrees of freedom Student's t is drawn with these: it is then within 3 % of the normal one. */
export const MOST_FREEDOM = 30;

/** Shares of a set-up's deviation between set-ups and within one, [-]; their squares add up to 1. */
export const BETWEEN = BETWEEN_SETUPS / PRIOR_DEVIATION;
export const WITHIN = WITHIN_SETUP / PRIOR_DEVIATION;

/** 95 % quantile of the normal distribution, [-]: a friction range holds 9 of 10, so 1 of 20 lies beyond each end. */
export const RANGE_END = normalQuantile(0.95);

/** Share below the upper end of what holds 95 of 100, as many below as above, [-]. */
export const TOOL_SHARE = 0.975;

/** Deviations that hold 95 of 100 tools between −δ and +δ, [-]. */
export const TOOL_END = normalQuantile(TOOL_SHARE);

/** Whose scatter a mode follows. Modes of one kind rise and fall together; different kinds do not know each other. */
export type ScatterKind = 'knurl' | 'host' | 'clamped-part' | 'metal';

const SCATTER_KINDS: Readonly<Record<FailureMode, ScatterKind>> = {
  'knurl-shear': 'knurl',
  'torque-out': 'knurl',
  'wall-plug': 'host',
  'boss-tear': 'host',
  'boss-split': 'host',
  'shoulder-yield': 'host',
  'shoulder-punch': 'host',
  'head-bearing': 'clamped-part',
  'seat-bearing': 'clamped-part',
  'insert-thread': 'metal',
  'screw-thread': 'metal',
  'screw-yield': 'metal',
};

/**
 * Whose scatter a mode follows in a joint.
 *
 * @param mode - the mode
 * @param clamped - what the clamped part is made of: metal under the head is a limit, no scatter
 * @returns the kind
 */
export function scatterKindOf(mode: FailureMode, clamped: 'metal' | 'printed'): ScatterKind {
  const kind = SCATTER_KINDS[mode];
  return kind === 'clamped-part' && clamped === 'metal' ? 'metal' : kind;
}

/**
 * Deviation of the logarithm of a capacity, from its two values: half of all joints hold the median, 19 of 20 the
 * characteristic one.
 *
 *     s = ln(R/Rk)/q        q = 95 % quantile: Student's t for plastic, as many degrees as are drawn; normal for metal
 *
 * For plastic that breaks this gives back the scatter between and within set-ups; for plastic pressed for years the
 * loss to creep lies in it; where a standard guarantees a minimum it is 0.
 *
 * @param capacity - median R and characteristic value Rk [N or N·mm]
 * @param kind - whose scatter
 * @param knurlFreedom - degrees of freedom that the knurl's scatter is drawn with [-], ≥ 1
 * @returns s [-], ≥ 0; 0 where nothing is borne at all
 * @source own-model lognormal through both values
 */
export function capacityDeviation(capacity: Capacity, kind: ScatterKind, knurlFreedom: number): number {
  const { median, characteristic } = capacity;
  if (characteristic.value <= 0) return 0;
  return Math.log(median.value / characteristic.value) / endOf(kind, knurlFreedom);
}

function endOf(kind: ScatterKind, knurlFreedom: number): number {
  if (kind === 'metal') return RANGE_END;
  if (kind === 'knurl' && knurlFreedom !== SETUP_FREEDOM) return studentQuantile(0.95, knurlFreedom);
  return PRIOR_QUANTILE;
}

/** A lognormal quantity: mean and deviation of its logarithm, [-]. */
export interface Lognormal {
  readonly centre: number;
  readonly deviation: number;
}

/**
 * Friction of one joint out of many, from the range that holds 9 of 10.
 *
 *     ln μ normal about ½·ln(μlow · μhigh), deviation ln(μhigh/μlow)/(2 · 1.645)
 *
 * Lognormal: both ends are met exactly and no friction comes out at or below zero, where a normal one would need
 * cutting off and would put false weight on very slippery screws.
 *
 * @param range - μlow, μhigh [-], 0 < μlow ≤ μhigh
 * @returns centre and deviation of ln μ [-]
 * @source own-model lognormal through both ends
 */
export const frictionScatter = ({ low, high }: FrictionRange): Lognormal => ({
  centre: Math.log(low * high) / 2,
  deviation: Math.log(high / low) / (2 * RANGE_END),
});

/** How much something has grown, or been lost, over what is left: its median and the deviation of its logarithm, [-]. */
export interface Growth {
  /** ≥ 0 */
  readonly median: number;
  readonly deviation: number;
}

/**
 * A growth that is little known, from the ends that it lies between: a range that holds 9 of 10, as with friction.
 *
 *     ln g normal about ½·ln(glow · ghigh), deviation ln(ghigh/glow)/(2 · 1.645)
 *
 * @param ends - glow ≤ ghigh [-], ≥ 0, equal where nothing is in doubt
 * @returns median and deviation; none of both where nothing grows
 * @source own-model lognormal through both ends
 */
export function growthBetween({ low, high }: { readonly low: number; readonly high: number }): Growth {
  if (low === high) return { median: low, deviation: 0 };
  return {
    median: Math.sqrt(low * high),
    deviation: low > 0 ? Math.log(high / low) / (2 * RANGE_END) : 0,
  };
}

/**
 * Standard deviation of a tool whose deviation ±δ is taken to hold 95 of 100 settings.
 *
 *     s = δ/1.96
 *
 * @param deviation - δ [-], 0 … below 1
 * @returns s [-]
 * @source iso-6789 deviation of the tool
 */
export const toolScatter = (deviation: number): number => deviation / TOOL_END;
