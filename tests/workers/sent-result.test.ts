import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../src/core/chance/chance-model.ts';
import { chanceResult } from '../../src/core/chance/chance-result.ts';
import { seededGenerator } from '../../src/core/chance/generator.ts';
import { emptyCounters, sampleChance } from '../../src/core/chance/sample-chance.ts';
import type { Derived } from '../../src/core/sources/derived.ts';
import { wayOf } from '../../src/core/steps/steps.ts';
import { sentResult } from '../../src/workers/sent-result.ts';
import { answerableJoint, theInsert } from '../support/joints.ts';

/** Every number that leads to another one, as the paths of symbols to it. */
function* pathsOf(derived: Derived, before = ''): Generator<string> {
  const path = `${before}/${derived.symbol}`;
  yield path;
  for (const one of derived.entries) {
    const way = wayOf(one);
    if (way) yield* pathsOf(way, `${path}/${one.symbol}`);
  }
}

const numbersIn = (value: unknown): readonly Derived[] => {
  if (typeof value !== 'object' || value === null) return [];
  if ('formula' in value) return [value as Derived];
  return Object.values(value).flatMap(numbersIn);
};

describe('sentResult', () => {
  test('keeps the way to every number when it is copied to another thread', () => {
    const joint = answerableJoint({
      gap_mm: 0.4,
      clamped: { material: 'petg' },
      loads: { pull_N: 37, shear_N: 13, duration_h: 700, retightenings: 2 },
    });
    const model = chanceModel(joint, theInsert(), 260);
    const counters = emptyCounters(model);
    sampleChance(model, seededGenerator(11), 2000, counters);
    const result = chanceResult(model, counters);
    const copy = structuredClone(sentResult(result));
    const paths = (one: unknown) => numbersIn(one).flatMap((number) => [...pathsOf(number)]);
    expect(paths(copy)).toEqual(paths(result));
    expect(paths(copy).filter((path) => path.includes('R_F')).length).toBeGreaterThan(10);
    expect(copy.outcomes).toEqual(result.outcomes);
  });
});
