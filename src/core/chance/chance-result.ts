import { normalQuantile } from '../numerics/normal-distribution.ts';
import type { FailureMode } from '../pull-out/limit.ts';
import type { FrictionRange } from '../screws/screw.ts';
import type { ChanceModel } from './chance-model.ts';
import { type ForceHistogram, forceQuantile, histogramOf } from './force-bins.ts';
import { bitOf, type Counters, EVERY_BIT, type Outcome } from './sample-chance.ts';
import { type Growth, rangeOf } from './scatter.ts';

/** How often something happened, and how far the sampling may be off. */
export interface Chance {
  readonly count: number;
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
  readonly clampForceQuantiles: { readonly low: number; readonly median: number; readonly high: number };
  readonly drawnFrom: DrawnFrom;
}

/** The ranges that joints were drawn from, for whoever reads the result: 9 of 10 lie within. Lengths in mm. */
export interface DrawnFrom {
  readonly threadFriction: FrictionRange;
  readonly headFriction: FrictionRange;
  /** Absent without a load across the screw. */
  readonly slipFriction?: FrictionRange;
  /** Standard deviation of the tool, relative, [-]. */
  readonly toolDeviation: number;
  /** Share of the clamp force that is left; absent where creep is known well enough, or takes nothing. */
  readonly preloadLeft?: { readonly low: number; readonly high: number };
  readonly expectedBore: number;
  readonly boreDeviation: number;
  readonly knurlDiameter: number;
  readonly knurlDeviation: number;
}

/** Shares that are left after a loss: the ends that growthBetween went through, [-]. */
function leftAfter({ median, deviation }: Growth) {
  const { low, high } = rangeOf({ centre: Math.log(median), deviation });
  return { low: 1 / (1 + high), high: 1 / (1 + low) };
}

const drawnFrom = (model: ChanceModel): DrawnFrom => ({
  threadFriction: rangeOf(model.threadFriction),
  headFriction: rangeOf(model.headFriction),
  ...(model.shear > 0 ? { slipFriction: rangeOf(model.slipFriction) } : {}),
  toolDeviation: model.toolDeviation,
  ...(model.lost.deviation > 0 ? { preloadLeft: leftAfter(model.lost) } : {}),
  expectedBore: model.expectedBore,
  boreDeviation: model.boreDeviation,
  knurlDiameter: model.knurlDiameter,
  knurlDeviation: model.knurlDeviation,
});

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
  return { count, probability, standardError: Math.sqrt((probability * (1 - probability)) / samples) };
}

/** Normal deviations on each side that hold 95 of 100, [-]. */
const INTERVAL_END = normalQuantile(0.975);

/**
 * Between which chances the true one lies, as far as the sampling can tell: in 95 of 100 samplings.
 *
 *     (p + z²/(2n) ± z · √(p · (1 − p)/n + z²/(4n²)))/(1 + z²/n)        z = 1.960
 *
 * The score interval of E. B. Wilson (1927, from memory): it also speaks where nothing or everything was counted. The
 * error of the sampling alone: that of the ranges drawn from is not in it.
 *
 * @param chance - k of n, with at least one drawn
 * @param samples - n [-], ≥ 1
 * @returns low and high [-], 0 ≤ low ≤ p ≤ high ≤ 1
 * @source own-model binomial counts
 * @example 0 in 1000 gives 0 to 0.00383
 */
export function chanceInterval({ probability: p }: Chance, samples: number): { low: number; high: number } {
  const square = INTERVAL_END ** 2 / samples;
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
    drawnFrom: drawnFrom(model),
  };
}
