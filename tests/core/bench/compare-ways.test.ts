import { describe, expect, test } from 'vitest';
import { compareWays } from '../../../src/core/bench/compare-ways.ts';
import type { Way } from '../../../src/core/bench/ways.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const way = (name: string, values: readonly number[], changes = {}): Way => ({
  made: { of: 'batch', name },
  sample: { values, unit: 'N' },
  tests: values.map((value, place) =>
    benchTest({ id: `${name}-${place}`, unit: 'N', value, batch: name, ...changes }),
  ),
});
const USUAL = way('usual', [1000, 1040, 961]);
const HOTTER = way('hotter', [1200, 1248, 1153.2]);
const countsOf = (found: ReturnType<typeof compareWays>[number] | undefined) =>
  found?.needed.map((one) => (one.kind === 'tests' ? one.each.value : 0)) ?? [];

describe('compareWays', () => {
  const [found] = compareWays([USUAL, HOTTER], 0, 'batch');
  test('puts each way over the one that is chosen', () => {
    expect(found).toMatchObject({ way: HOTTER, against: USUAL, differences: [], scatter: 'of-both' });
    if (found?.comparison.kind !== 'compared') throw new Error('not compared');
    expectRelative(found.comparison.ratio.estimate.value.value, 1.2);
    const [turned] = compareWays([USUAL, HOTTER], 1, 'batch');
    if (turned?.comparison.kind !== 'compared') throw new Error('not compared');
    expectRelative(turned.comparison.ratio.estimate.value.value, 1 / 1.2);
  });
  test('takes four times the coupons for twice the scatter, and fewer for a greater difference', () => {
    const wider = compareWays(
      [way('usual', [1000, 1083, 923]), way('hotter', [1200, 1299.6, 1107.6])],
      0,
      'batch',
    );
    const [tenth = 0, fifth = 0] = countsOf(wider[0]);
    const [sharpTenth = 1] = countsOf(found);
    expect(tenth).toBeGreaterThan(2.5 * sharpTenth);
    expect(tenth).toBeLessThan(5 * sharpTenth);
    expect(fifth).toBeLessThan(tenth);
  });
  test('says that a comparison takes two of each, and takes the scatter of those that tell it', () => {
    const [one] = compareWays([USUAL, way('one', [1200])], 0, 'batch');
    expect(one).toMatchObject({
      scatter: 'of-both',
      comparison: { kind: 'refused', code: 'too-few-values' },
    });
  });
  test('leads from the tests needed to the scatter that both ways share (hand calculation)', () => {
    const one = compareWays([USUAL, way('two', [1200, 1260])], 0, 'batch')[0]?.needed[0];
    if (one?.kind !== 'tests') throw new Error('no number of tests');
    const deviation = one.each.entries[1]?.from;
    // Logarithms of 1000, 1040, 961: s 0.039501; of 1200, 1260: ln 1.05/√2 = 0.034500
    // √((2 · 0.039501² + 1 · 0.034500²)/3)
    expectPublished(deviation?.value ?? 0, '0.03791');
    expect(deviation?.formula).toBe('√(((n_t1 − 1) · s_y1² + (n_t2 − 1) · s_y2²)/(n_t1 − 1 + n_t2 − 1))');
    expectWays([one.each, one.power]);
  });
  test('assumes a scatter of 0.10 where no coupon tells any: 17 of each to see a tenth', () => {
    // n = 2·((1.960 + 0.842)·0.10/ln 1.1)² = 17.3 by normal theory; t asks for one or two more
    const [one] = compareWays([way('usual', [1000]), way('one', [1200])], 0, 'batch');
    expect(one?.scatter).toBe('assumed');
    expect(countsOf(one)[0]).toBeGreaterThanOrEqual(18);
    expect(countsOf(one)[0]).toBeLessThanOrEqual(20);
    // n = 2·((1.960 + 0.842)·0.10/ln 1.2)² = 4.7
    expect(countsOf(one)[1]).toBeGreaterThanOrEqual(5);
    expect(countsOf(one)[1]).toBeLessThanOrEqual(7);
  });
  test('says what else differs, but not what is compared', () => {
    const [one] = compareWays(
      [USUAL, way('hotter', [1200, 1248], { ironTemperature_degC: 260 })],
      0,
      'batch',
    );
    expect(one?.differences.map(({ of }) => of)).toEqual(['iron-temperature']);
  });
  test('does not take the iron for a difference of ways of setting: only one of them has it', () => {
    const ways = [
      { ...way('hot', [1000, 1040], { ironTemperature_degC: 240, batch: undefined }) },
      { ...way('cold', [300, 330], { setting: 'hammered', batch: undefined }) },
    ];
    expect(compareWays(ways, 0, 'setting')[0]?.differences).toEqual([]);
  });
});
