import type { FailureMode } from '../pull-out/limit.ts';
import type { ChanceModel } from './chance-model.ts';
import { type ForceHistogram, forceQuantile, histogramOf } from './force-bins.ts';
import { bitOf, type Counters, EVERY_BIT, type Outcome } from './sample-chance.ts';

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
  return { count, probability, standardError: Math.sqrt((probability * (1 - probability)) / samples) };
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
  };
}
