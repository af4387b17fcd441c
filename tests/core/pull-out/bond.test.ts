import { describe, expect, test } from 'vitest';
import { studentProbability } from '../../../src/core/numerics/student-t.ts';
import {
  bondFactor,
  characteristicOf,
  PRIOR_DEVIATION,
  testedBond,
} from '../../../src/core/pull-out/bond.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

describe('bondFactor', () => {
  test('of a hammered or cold-pressed insert is a third of a heat-set one (common practice)', () => {
    const hot = bondFactor('heat-set').value;
    expectRelative(3 * bondFactor('hammered').value, hot);
    expectRelative(3 * bondFactor('cold-pressed').value, hot);
  });
  test('of a heat-set one is 0.85, an estimate of this program', () => {
    expect(bondFactor('heat-set')).toMatchObject({
      value: 0.85,
      unit: '-',
      source: 'own-model',
      standing: 'estimate',
    });
    expect(bondFactor('hammered')).toMatchObject({ source: 'trade-practice', formula: 'η_hot/3' });
  });
});

describe('testedBond', () => {
  const tested = { centre: -0.21, scale: 0.13, freedom: 9, coupons: 5 };
  test('has the median that the tests give, exp(−0.21) = 0.8106 (hand calculation)', () => {
    expectPublished(testedBond(tested).factor.value, '0.8106');
    expect(testedBond(tested).factor).toMatchObject({ standing: 'measured', source: 'your-tests' });
  });
  test('leaves 19 of 20 joints above exp(−1.833 · 0.13) of it, t of 9 degrees of freedom (printed tables)', () => {
    const { scatter } = testedBond(tested);
    expectPublished(scatter.quantile.value, '1.833');
    expectPublished(characteristicOf(given('F', 1000, 'N'), scatter).value, '788');
  });
});

describe('characteristicOf', () => {
  test('of 1000 N is 510 N (hand calculation with t 2.132 of 4 degrees of freedom, printed tables)', () => {
    // exp(−2.132 · √(0.09 + 0.01)) = exp(−0.6742) = 0.5096
    expectPublished(characteristicOf(given('F', 1000, 'N')).value, '510');
  });
  test('is held by 19 of 20 joints (law: Student probability of the quantile)', () => {
    expectRelative(
      studentProbability(Math.log(941 / characteristicOf(given('F', 941, 'N')).value) / PRIOR_DEVIATION, 4),
      0.95,
      1e-10,
    );
    expectRelative(PRIOR_DEVIATION ** 2, 0.3 ** 2 + 0.1 ** 2);
  });
  test('shows how quantile and scatter come about: 95 % with 4 degrees of freedom, between set-ups and within', () => {
    const careful = characteristicOf(given('F', 617, 'N'));
    expectWays([careful]);
    const [, t, s] = careful.entries;
    expect(wayTo(t)?.entries).toMatchObject([{ value: 0.95 }, { value: 4 }]);
    expect(wayTo(s)?.entries).toMatchObject([{ value: 0.3 }, { value: 0.1 }]);
  });
  test('keeps unit and median, and is proportional to it', () => {
    const torque = characteristicOf(given('T_out', 2718, 'N·mm'));
    expect(torque).toMatchObject({
      symbol: 'R_k',
      unit: 'N·mm',
      entries: [{ symbol: 'R', value: 2718 }, {}, {}],
    });
    expectRelative(torque.value / 2718, characteristicOf(given('F', 31, 'N')).value / 31);
  });
});
