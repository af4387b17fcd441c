import { chanceModel } from '../../src/core/chance/chance-model.ts';
import { type ChanceResult, chanceResult } from '../../src/core/chance/chance-result.ts';
import { seededGenerator } from '../../src/core/chance/generator.ts';
import { emptyCounters, sampleChance } from '../../src/core/chance/sample-chance.ts';
import { answerableJoint, theInsert } from '../support/joints.ts';
import { HEAVY } from './heavy-joint.ts';

const SAMPLES = 1_000_000;

/** A metal part on the insert, the usual joint; and the one that takes longest. */
const MODELS = {
  usual: chanceModel(answerableJoint(), theInsert(), 250),
  heavy: chanceModel(answerableJoint(HEAVY), theInsert(), 200),
};

/** Draws a million joints once. */
export function sample(joint: keyof typeof MODELS): ChanceResult {
  const model = MODELS[joint];
  const counters = emptyCounters(model);
  sampleChance(model, seededGenerator(20_260), SAMPLES, counters);
  return chanceResult(model, counters);
}
