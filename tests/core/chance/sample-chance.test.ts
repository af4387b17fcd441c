import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../../src/core/chance/chance-model.ts';
import { chanceInterval, chanceOf, chanceResult } from '../../../src/core/chance/chance-result.ts';
import { seededGenerator } from '../../../src/core/chance/generator.ts';
import { emptyCounters, OUTCOMES, sampleChance } from '../../../src/core/chance/sample-chance.ts';
import { normalDensity } from '../../../src/core/numerics/normal-distribution.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { only, sampled } from './only.ts';

const SAMPLES = 60_000;
const insert = theInsert();
const overGap = answerableJoint({ gap_mm: 0.4, clamped: { material: 'petg' } });
const valuesOf = ({ low, median, high }: ReturnType<typeof sampled>['clampForceQuantiles']) => ({
  low: low.value,
  median: median.value,
  high: high.value,
});
const modelAt = (torque: number) => chanceModel(overGap, insert, torque);

describe('sampleChance', () => {
  test('gives the same counts from the same seed', () => {
    expect(sampled(modelAt(240), 5000, 12)).toEqual(sampled(modelAt(240), 5000, 12));
  });
  test('gives the same counts in chunks of any size', () => {
    const model = modelAt(240);
    const counters = emptyCounters(model);
    const generator = seededGenerator(12);
    for (const count of [1, 1999, 0, 3000]) sampleChance(model, generator, count, counters);
    expect(chanceResult(model, counters)).toEqual(sampled(model, 5000, 12));
  });
  test('gives other counts from another seed, within their standard errors', () => {
    const one = sampled(modelAt(240), SAMPLES, 1);
    const other = sampled(modelAt(240), SAMPLES, 2);
    expect(one.clampForce.bars).not.toEqual(other.clampForce.bars);
    for (const outcome of OUTCOMES) {
      const [a, b] = [one.outcomes[outcome], other.outcomes[outcome]];
      expect(Math.abs(a.probability - b.probability)).toBeLessThanOrEqual(
        4 * Math.hypot(a.standardError, b.standardError, 1 / SAMPLES),
      );
    }
  });
  test('finds more harm and less looseness the more torque', () => {
    const results = [110, 170, 240, 380, 610].map((torque) => sampled(modelAt(torque), SAMPLES));
    results.slice(1).forEach((result, index) => {
      const before = results[index];
      expect(result.harm.count).toBeGreaterThan(before?.harm.count ?? Number.NaN);
      expect(result.outcomes.loose.count).toBeLessThan(before?.outcomes.loose.count ?? Number.NaN);
    });
  });
  test('finds more of both the wider the range of friction', () => {
    const widened = (torque: number) => {
      const narrow = modelAt(torque);
      const wide = {
        ...narrow,
        threadFriction: { ...narrow.threadFriction, deviation: 2 * narrow.threadFriction.deviation },
        headFriction: { ...narrow.headFriction, deviation: 2 * narrow.headFriction.deviation },
      };
      return { before: sampled(narrow, SAMPLES), after: sampled(wide, SAMPLES) };
    };
    // Beyond the middle of a distribution more width would mean less: both torques are well before it.
    const low = widened(200);
    expect(low.before.harm.probability).toBeLessThan(0.3);
    expect(low.after.harm.count).toBeGreaterThan(low.before.harm.count);
    const high = widened(500);
    expect(high.before.outcomes.loose.probability).toBeLessThan(0.3);
    expect(high.after.outcomes.loose.count).toBeGreaterThan(high.before.outcomes.loose.count);
  });
});

describe('chanceResult', () => {
  const result = sampled(modelAt(240), SAMPLES);

  test('counts a joint with several harms once', () => {
    const { loose, ...harms } = result.outcomes;
    const counts = Object.values(harms).map(({ count }) => count);
    expect(result.harm.count).toBeGreaterThanOrEqual(Math.max(...counts));
    expect(result.harm.count).toBeLessThan(counts.reduce((sum, count) => sum + count, 0));
    expect(result.anything.count).toBeGreaterThanOrEqual(Math.max(loose.count, result.harm.count));
    expect(result.anything.count).toBeLessThan(loose.count + result.harm.count);
  });
  test('lets shear of the knurl and turning of the insert happen together more often than by accident', () => {
    const both = (name: 'pulls-out' | 'turns') => sampled(modelAt(900), SAMPLES).outcomes[name].probability;
    const together = sampled(modelAt(900), SAMPLES);
    const byAccident = 1 - (1 - both('pulls-out')) * (1 - both('turns'));
    expect(together.harm.probability).toBeGreaterThan(0);
    expect(together.outcomes['pulls-out'].probability + together.outcomes.turns.probability).toBeGreaterThan(
      byAccident,
    );
  });
  test.each(['clampForce', 'weakestPlastic'] as const)(
    'puts every joint into the histogram of %s',
    (name) => {
      const { bars, below, above } = result[name];
      expect(bars).toHaveLength(60);
      expect(bars.reduce((sum, count) => sum + count, below + above)).toBe(SAMPLES);
    },
  );
  test('finds quantiles of the clamp force where a tool alone scatters as the normal distribution has them', () => {
    const model = only(modelAt(240), ['toolDeviation']);
    const tool = sampled(model, SAMPLES);
    const { low, median, high } = valuesOf(tool.clampForceQuantiles);
    const deviation = model.toolDeviation * median;
    // A bin, and 4 standard errors of a sampled quantile: √(p(1 − p)/n) over the density there.
    const room = (share: number, z: number) =>
      tool.clampForce.top / 3840 +
      (4 * Math.sqrt((share * (1 - share)) / SAMPLES) * deviation) / normalDensity(z);
    expect(Math.abs((median - low) / deviation - 1.6449)).toBeLessThanOrEqual(
      (2 * room(0.05, 1.645)) / deviation,
    );
    expect(Math.abs((high - median) / deviation - 1.6449)).toBeLessThanOrEqual(
      (2 * room(0.05, 1.645)) / deviation,
    );
  });
  test('has a range that does not depend on the seed', () => {
    expect(sampled(modelAt(240), 10, 8).clampForce.top).toBe(result.clampForce.top);
  });
});

describe('chanceOf', () => {
  test('has the standard error of a binomial count: 30 of 400 is 0.075 ± 0.01317', () => {
    const chance = chanceOf(30, 400);
    expectRelative(chance.probability, 0.075);
    // √(0.075 · 0.925/400)
    expectRelative(chance.standardError, 0.0131695671910659);
  });
  test.each([0, 400])('of %i in 400 shows no error', (count) => {
    expect(chanceOf(count, 400)).toEqual({
      count,
      samples: 400,
      probability: count / 400,
      standardError: 0,
    });
  });
});

describe('chanceInterval', () => {
  /** z = 1.959964 of printed tables; z² = 3.841459. */
  test('of nothing in 1000 is 0 to z²/(n + z²), 0.0038267', () => {
    const { low, high } = chanceInterval(chanceOf(0, 1000));
    expect(low).toBe(0);
    expectPublished(high, '0.0038268');
  });
  test('of 30 in 400 is 0.0530 to 0.1051, worked by hand', () => {
    // z²/n = 0.00960365; middle 0.07980182; half √(0.00960365 · (0.069375 + 0.00240091)) = 0.02625478; over 1.00960365
    const { low, high } = chanceInterval(chanceOf(30, 400));
    expectPublished(low, '0.05304');
    expectPublished(high, '0.10505');
  });
  test('turns round with what is counted', () => {
    const [few, most] = [chanceInterval(chanceOf(7, 90)), chanceInterval(chanceOf(83, 90))];
    expectRelative(few.low, 1 - most.high, 1e-12);
    expectRelative(few.high, 1 - most.low, 1e-12);
  });
});
