import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../../src/core/chance/chance-model.ts';
import { chanceInterval, chanceOf } from '../../../src/core/chance/chance-result.ts';
import { countInThousand, endsInThousand, oneAmong } from '../../../src/core/chance/counted.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const draw = {
  seed: 77,
  torque: 240,
  from: chanceModel(answerableJoint({ gap_mm: 0.4, clamped: { material: 'petg' } }), theInsert(), 240)
    .drawnFrom,
};
const chance = chanceOf(30, 400);

describe('countInThousand', () => {
  test('of 30 in 400 is 75, with seed, setting and what each joint is drawn from in it', () => {
    const found = countInThousand(chance, draw);
    expectRelative(found.value, 75);
    expectRelative(evaluated(found) ?? Number.NaN, 75);
    const counted = found.entries.find(({ symbol }) => symbol === 'k_j')?.from;
    expect(counted?.entries).toEqual(
      expect.arrayContaining([
        { symbol: 'n_j', value: 400, unit: '-' },
        { symbol: 's_j', value: 77, unit: '-' },
        { symbol: 'T_j', value: 240, unit: 'N·mm' },
        expect.objectContaining({ symbol: 'μ_Gl', from: draw.from.threadFriction.low }),
        expect.objectContaining({ symbol: 'R_u', from: draw.from.preloadLeft?.high }),
        expect.objectContaining({ symbol: 's', from: draw.from.boreDeviation }),
      ]),
    );
  });
  test('shows no symbol twice', () => {
    const symbols = countInThousand(chance, draw).entries[0]?.from?.entries.map(({ symbol }) => symbol);
    expect(new Set(symbols).size).toBe(symbols?.length);
  });
});

describe('endsInThousand', () => {
  test.each([
    [30, 400],
    [1, 90_000],
    [399, 400],
  ])('of %i in %i are those of chanceInterval, and what their formulae come to', (count, samples) => {
    const one = chanceOf(count, samples);
    const { low, high } = chanceInterval(one);
    const ends = endsInThousand(one, draw);
    expectRelative(ends.low.value, 1000 * low);
    expectRelative(ends.high.value, 1000 * high);
    expectRelative(evaluated(ends.low) ?? Number.NaN, ends.low.value, 1e-9);
    expectRelative(evaluated(ends.high) ?? Number.NaN, ends.high.value, 1e-9);
  });
});

describe('oneAmong', () => {
  test('30 of 400 is one among 13.33, and all but one among 1.081', () => {
    expectRelative(oneAmong(chance, draw, 'happens').value, 400 / 30);
    expectRelative(oneAmong(chance, draw, 'does-not').value, 400 / 370);
    for (const counts of ['happens', 'does-not'] as const) {
      const found = oneAmong(chance, draw, counts);
      expectRelative(evaluated(found) ?? Number.NaN, found.value);
    }
  });
});
