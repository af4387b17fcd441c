import { describe, expect, test } from 'vitest';
import { type BondPrediction, bondPosterior } from '../../../src/core/evidence/bond-evidence.ts';
import { characteristicOf, testedBond } from '../../../src/core/pull-out/bond.ts';
import { entryFrom } from '../../../src/core/sources/derived.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { given } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const PRIOR = 0.85;
/** Bond factors that coupons showed, by size, in the order of testing. */
const SHOWN = [
  ['m3', 0.91],
  ['m4', 0.74],
  ['m3', 0.97],
  ['m3', 0.88],
  ['m5', 0.66],
  ['m4', 0.79],
] as const;

type Held = { readonly held?: number };

function tested(shown: readonly (readonly [string, number])[], { held = -1 }: Held = {}) {
  const ratios = shown.map(([size, bond], index) => ({
    size,
    logRatio: Math.log(bond),
    outcome: index === held ? ('held' as const) : ('broke' as const),
    ownDeviation: 0,
  }));
  const posterior = bondPosterior(PRIOR, ratios);
  const origin = {
    priorMedian: entryFrom(given('η', PRIOR, '-')),
    coupons: shown.map(([size, bond]) => ({ size, bond: entryFrom(given('η_i', bond, '-')) })),
    method: posterior.method,
  };
  const bondOf = (prediction: BondPrediction | undefined, size?: string) => {
    if (prediction === undefined) throw new Error('nobody pulled it');
    return testedBond({ ...prediction, origin: size === undefined ? origin : { ...origin, size } });
  };
  return {
    ofOthers: bondOf(posterior.unpulled),
    ofSize: (size: string) => bondOf(posterior.bySize.get(size), size),
  };
}

describe('the way to a bond that coupons of a set-up were pulled in', () => {
  test.each([
    ['one coupon', SHOWN.slice(0, 1)],
    ['several of one size', SHOWN.filter(([size]) => size === 'm3')],
    ['several sizes', SHOWN],
  ] as const)('comes to the posterior again, for sizes that were pulled and for others: %s', (_, shown) => {
    const { ofOthers, ofSize } = tested(shown);
    const sizes = [...new Set(shown.map(([size]) => size))];
    for (const bond of [ofOthers, ...sizes.map(ofSize)]) {
      for (const put of [bond.factor.entries[0], bond.scatter.deviation]) {
        const way = wayTo(put);
        expectRelative((way && evaluated(way)) ?? Number.NaN, put?.value ?? 0, 1e-9);
      }
      expectWays([characteristicOf(bond.factor, bond.scatter)]);
    }
  });
  test('counts the coupons in the order in which they were tested', () => {
    const centre = wayTo(tested(SHOWN).ofSize('m4').factor.entries[0]);
    const mean = wayTo(centre?.entries.find(({ symbol }) => symbol === 'y_2'));
    expect(mean?.entries.map(({ symbol, value }) => [symbol, value])).toEqual([
      ['η_2', 0.74],
      ['η_6', 0.79],
      ['η_0', PRIOR],
      ['n_2', 2],
    ]);
  });
  test('counts the degrees of freedom of the coupons to those assumed', () => {
    const { scatter } = tested(SHOWN).ofOthers;
    const freedom = wayTo(scatter.quantile)?.entries.find(({ symbol }) => symbol === 'ν');
    expect(freedom?.value).toBe(4 + SHOWN.length);
    expect(wayTo(freedom)).toMatchObject({ formula: 'ν_0 + n_c', entries: [{ value: 4 }, { value: 6 }] });
  });
  test('says that it is read off a grid where a coupon only held, with what was put in', () => {
    const { factor, scatter } = tested(SHOWN, { held: 2 }).ofSize('m4');
    for (const put of [factor.entries[0], scatter.deviation]) {
      const way = wayTo(put);
      expect(way?.value).toBe(put?.value);
      expect(way?.formula).toContain('grid');
      expect(way?.entries.map(({ value }) => value)).toEqual([PRIOR, ...SHOWN.map(([, bond]) => bond)]);
    }
  });
  test('is none where nothing is told of the tests', () => {
    const bond = testedBond({ centre: -0.2, scale: 0.13, freedom: 9, coupons: 5 });
    expect(wayTo(bond.factor.entries[0])).toBeUndefined();
    expect(wayTo(bond.scatter.deviation)).toBeUndefined();
  });
});
