import type { FailureMode } from '../pull-out/limit.ts';
import type { Derived } from '../sources/derived.ts';
import type { ChanceModel } from './chance-model.ts';
import type { DrawnFrom } from './drawn-from.ts';
import { type ForceHistogram, histogramOf } from './force-bins.ts';
import { forceQuantile } from './force-quantile.ts';
import { bitOf, type Counters, EVERY_BIT, type Outcome } from './sample-chance.ts';
import { TOOL_END } from './scatter.ts';

/** How often something happened, and how far the sampling may be off. */
export interface Chance {
  readonly count: number;
  /** Joints drawn, ≥ 1. */
  readonly samples: number;
  readonly probability: number;
  /** √(p · (1 − p)/n); says nothing where the count is 0 or all. */
  readonly standardError: number;
}

/** What the sampling came to. Forces in N, torque in N·mm. */
export interface ChanceResult {
  readonly torque: number;
  readonly samples: number;
  readonly outcomes: Readonly<Record<Outcome, Chance>>;
  readonly byMode: readonly { readonly mode: FailureMode; readonly chance: Chance }[];
  /** Any outcome but a loose joint. */
  readonly harm: Chance;
  readonly anything: Chance;
  readonly clampForce: ForceHistogram;
  /** Clamp force that the weakest plastic mode of each joint bears, the insert's turning included. */
  readonly weakestPlastic: ForceHistogram;
  readonly clampForceQuantiles: { readonly low: Derived; readonly median: Derived; readonly high: Derived };
  readonly drawnFrom: DrawnFrom;
}

/**
 * A count as a probability with its standard error.
 *
 *     p = k/n        s = √(p · (1 − p)/n)
 *
 * @param count - k [-]
 * @param samples - n [-], ≥ 1
 * @returns probability and standard error [-]
 * @source own-model binomial counts
 */
export function chanceOf(count: number, samples: number): Chance {
  const probability = count / samples;
  return {
    count,
    samples,
    probability,
    standardError: Math.sqrt((probability * (1 - probability)) / samples),
  };
}

/** Normal deviations on each side that hold 95 of 100 samplings, as they hold 95 of 100 tools, [-]. */
export const SAMPLING_END = TOOL_END;

/**
 * Between which chances the true one lies, as far as the sampling can tell: in 95 of 100 samplings.
 *
 *     (p + z²/(2n) ± z · √(p · (1 − p)/n + z²/(4n²)))/(1 + z²/n)        z = 1.960
 *
 * The score interval of E. B. Wilson (1927, from memory): it also speaks where nothing or everything was counted. The
 * error of the sampling alone: that of the ranges drawn from is not in it.
 *
 * @param chance - k of n, with at least one drawn
 * @returns low and high [-], 0 ≤ low ≤ p ≤ high ≤ 1
 * @source own-model binomial counts
 * @example 0 in 1000 gives 0 to 0.00383
 */
export function chanceInterval({ probability: p, samples }: Chance): { low: number; high: number } {
  const square = SAMPLING_END ** 2 / samples;
  const middle = p + square / 2;
  const half = Math.sqrt(square * (p * (1 - p) + square / 4));
  return {
    low: Math.max(0, (middle - half) / (1 + square)),
    high: Math.min(1, (middle + half) / (1 + square)),
  };
}

/** The counts as probabilities; at least one joint has been drawn. */
export function chanceResult(model: ChanceModel, counters: Counters): ChanceResult {
  const { samples, byOutcomes, byMode, clampForce } = counters;
  const withAny = (bits: number) =>
    chanceOf(
      byOutcomes.reduce((sum, count, outcomes) => ((outcomes & bits) === 0 ? sum : sum + count), 0),
      samples,
    );
  return {
    torque: model.torque,
    samples,
    outcomes: {
      'pulls-out': withAny(bitOf('pulls-out')),
      turns: withAny(bitOf('turns')),
      strips: withAny(bitOf('strips')),
      'screw-yields': withAny(bitOf('screw-yields')),
      crushes: withAny(bitOf('crushes')),
      loose: withAny(bitOf('loose')),
    },
    byMode: model.modes.map(({ mode }, index) => ({ mode, chance: chanceOf(byMode[index] ?? 0, samples) })),
    harm: withAny(EVERY_BIT & ~bitOf('loose')),
    anything: withAny(EVERY_BIT),
    clampForce: histogramOf(clampForce),
    weakestPlastic: histogramOf(counters.weakestPlastic),
    clampForceQuantiles: {
      low: forceQuantile(clampForce, 0.05),
      median: forceQuantile(clampForce, 0.5),
      high: forceQuantile(clampForce, 0.95),
    },
    drawnFrom: model.drawnFrom,
  };
}
