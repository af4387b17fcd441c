import { chanceModel } from '../../src/core/chance/chance-model.ts';
import { type ChanceResult, chanceResult } from '../../src/core/chance/chance-result.ts';
import { seededGenerator } from '../../src/core/chance/generator.ts';
import { emptyCounters, sampleChance } from '../../src/core/chance/sample-chance.ts';
import { answerableJoint, theInsert } from '../support/joints.ts';

const SAMPLES = 1_000_000;

/** A metal part on the insert, the usual joint. */
const model = chanceModel(answerableJoint(), theInsert(), 250);

/** Draws a million joints once. */
export function sample(): ChanceResult {
  const counters = emptyCounters(model);
  sampleChance(model, seededGenerator(20_260), SAMPLES, counters);
  return chanceResult(model, counters);
}
