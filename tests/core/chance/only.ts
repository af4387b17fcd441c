import type { ChanceModel } from '../../../src/core/chance/chance-model.ts';
import type { ChanceResult } from '../../../src/core/chance/chance-result.ts';
import { chanceResult } from '../../../src/core/chance/chance-result.ts';
import { seededGenerator } from '../../../src/core/chance/generator.ts';
import { emptyCounters, sampleChance } from '../../../src/core/chance/sample-chance.ts';
import type { SampledMode } from '../../../src/core/chance/sampled-modes.ts';

const still = (mode: SampledMode): SampledMode => ({
  ...mode,
  deviation: 0,
  perKnurlDiameter: 0,
  perWall: 0,
});

/** A model in which nothing scatters. */
export const withoutScatter = (model: ChanceModel): ChanceModel => ({
  ...model,
  toolDeviation: 0,
  threadFriction: { ...model.threadFriction, deviation: 0 },
  headFriction: { ...model.headFriction, deviation: 0 },
  slipFriction: { ...model.slipFriction, deviation: 0 },
  lost: { ...model.lost, deviation: 0 },
  lostAtEnd: { ...model.lostAtEnd, deviation: 0 },
  crept: { ...model.crept, deviation: 0 },
  boreDeviation: 0,
  knurlDeviation: 0,
  modes: model.modes.map(still),
});

/** A model in which only some quantities scatter. */
export function only(
  model: ChanceModel,
  scattering: readonly Exclude<keyof ChanceModel, 'modes'>[],
  keep: (mode: SampledMode) => SampledMode = still,
): ChanceModel {
  const kept = Object.fromEntries(scattering.map((name) => [name, model[name]]));
  return { ...withoutScatter(model), ...kept, modes: model.modes.map(keep) };
}

/** Draws joints from a seed. */
export function sampled(model: ChanceModel, samples: number, seed = 4711): ChanceResult {
  const counters = emptyCounters(model);
  sampleChance(model, seededGenerator(seed), samples, counters);
  return chanceResult(model, counters);
}

/** How many of the drawn joints failed in one mode; a mode that the joint does not have is a fault of the test. */
export function failuresOf(result: ChanceResult, mode: SampledMode['mode']): number {
  const found = result.byMode.find((one) => one.mode === mode);
  if (found === undefined) throw new Error(`the joint has no ${mode}`);
  return found.chance.count;
}
