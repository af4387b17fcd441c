import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../../src/core/chance/chance-model.ts';
import { chanceInterval, chanceOf } from '../../../src/core/chance/chance-result.ts';
import {
  countInThousand,
  drawnQuantile,
  endsInThousand,
  oneAmong,
} from '../../../src/core/chance/counted.ts';
import { countForce, emptyBins } from '../../../src/core/chance/force-bins.ts';
import { forceQuantile } from '../../../src/core/chance/force-quantile.ts';
import { entryFrom } from '../../../src/core/sources/derived.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { answerableJoint, given, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const draw = {
  seed: 77,
  torque: entryFrom(given('T_d', 240, 'N·mm')),
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
        expect.objectContaining({ symbol: 'T_j', value: 240, from: draw.torque.from }),
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

describe('drawnQuantile', () => {
  const bins = emptyBins(130);
  for (const force of [11, 12.5, 40.7, 40.71, 40.72, 97, 101]) countForce(bins, force);
  const quantile = forceQuantile(bins, 0.53);
  const drawn = drawnQuantile(quantile, 7, draw);
  const entryOf = (symbol: string) => drawn.entries.find((one) => one.symbol === symbol);
  test('is the same number, and each count leads to seed and setting', () => {
    expect(drawn).toMatchObject({ value: quantile.value, formula: quantile.formula });
    for (const symbol of ['i_q', 'k_q', 'h_q']) {
      expect(entryOf(symbol)?.from?.value).toBe(entryOf(symbol)?.value);
      expect(entryOf(symbol)?.from?.entries).toContainEqual({ symbol: 's_j', value: 77, unit: '-' });
    }
    expectWays([drawn]);
  });
  test('has steps of the greatest force over their number: 130/3840 N', () => {
    const width = entryOf('w_q')?.from;
    expectPublished(width?.value ?? 0, '0.033854');
    expect(width).toMatchObject({
      formula: 'F_top/n_w',
      entries: [{ from: { value: 130 } }, { value: 3840 }],
    });
  });
});
