import { describe, expect, test } from 'vitest';
import {
  bossSplit,
  bossSplitForce,
  coldSettingHoopStress,
  lockedInShare,
} from '../../../src/core/pull-out/boss-split.ts';
import { ringDiameter } from '../../../src/core/pull-out/ring-diameter.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';
import { expectWays } from '../../support/ways.ts';

describe('every number of a split boss', () => {
  test.each([
    ['in a larger part', {}, 'D_w + ρ · (3 · D_k − D_w)'],
    ['in a boss with infill', { boss: 11.3 }, 'D_w + ρ · (min(D_b, 3 · D_k) − D_w)'],
    ['in a boss that the walls fill', { wall: 3.1, boss: 9.7 }, 'min(D_w, D_b, 3 · D_k)'],
    ['in walls beyond three knurls', { wall: 7.1 }, 'min(D_w, 3 · D_k)'],
    ['without a ring', { wall: 0.21, density: 0 }, 'D_w + ρ · (3 · D_k − D_w)'],
    ['in a boss narrower than the knurl', { boss: 4.7 }, 'min(D_w, D_b, 3 · D_k)'],
  ] as const)('comes to what its formula comes to: %s', (_, numbers, formula) => {
    const situation = situationOfNumbers({ wall: 1.2, setting: 'hammered', ...numbers });
    expect(ringDiameter(situation).formula).toBe(formula);
    expectWays([bossSplitForce(situation), lockedInShare(situation)]);
  });
});

describe('coldSettingHoopStress', () => {
  test('of Dk 5, Do 8.8, bite 0.35 mm (hand calculation by Lamé with the modulus of PETG)', () => {
    // κ = (77.44 + 25)/(77.44 − 25) = 1.9535; σ = E · 0.35/5 · κ/(κ + ν)
    const { modulusInPlane: E, poissonRatio: nu } = PETG;
    const expected = E.value * 0.07 * (1.9535 / (1.9535 + nu.value));
    const situation = situationOfNumbers({ wall: 2.25, boss: 8.8, setting: 'hammered' });
    expectRelative(coldSettingHoopStress(situation).value, expected, 1e-4);
  });
  test('goes to the stress of a thin ring, E · z/Dk, where no wall stands round the knurl', () => {
    const situation = situationOfNumbers({ wall: 0.21, density: 0, boss: 9.3 });
    expectRelative(coldSettingHoopStress(situation).value, PETG.modulusInPlane.value * 0.07, 1e-9);
  });
});

describe('lockedInShare', () => {
  test('of a heat-set insert is 0: it melted in', () => {
    expect(lockedInShare(situationOfNumbers())).toMatchObject({ value: 0, formula: '0, melted in' });
  });
  test('of a cold-set one at its strength is the most that creep may leave: 0.65/(0.65 + 0.35/2) of PETG', () => {
    const driven = situationOfNumbers({ setting: 'cold-pressed', strengths: { hoop: 31 } });
    expect(coldSettingHoopStress(driven).value).toBeGreaterThan(31);
    expectRelative(lockedInShare(driven).value, 0.65 / 0.825);
    const { from } = lockedInShare(driven).entries.find(({ symbol }) => symbol === 'r_1000') ?? {};
    expectRelative(from?.range?.low ?? 0, 0.65 / 1.35);
    expect(from?.range?.middle).toBe(0.65);
  });
  test('is less below the strength, in proportion', () => {
    const stress = coldSettingHoopStress(situationOfNumbers({ setting: 'hammered' })).value;
    const strong = situationOfNumbers({ setting: 'hammered', strengths: { hoop: 4 * stress } });
    expectRelative(lockedInShare(strong).value, 0.65 / 0.825 / 4);
  });
});

describe('bossSplitForce', () => {
  test('of σh 43 MPa, Dk 5, Lk 3.6, Do 8.8 mm is 1245 N (hand calculation: 43/1.9535 · 56.55)', () => {
    expectPublished(bossSplitForce(situationOfNumbers({ wall: 2.25, boss: 8.8 })).value, '1245');
  });
  test('is less for a hammered insert by what stays locked in', () => {
    const numbers = { wall: 2.25, boss: 8.8 };
    const hot = bossSplitForce(situationOfNumbers(numbers)).value;
    const cold = situationOfNumbers({ ...numbers, setting: 'hammered' });
    expectRelative(bossSplitForce(cold).value, (1 - lockedInShare(cold).value) * hot);
    expect(lockedInShare(cold).value).toBeGreaterThan(0.2);
  });
  test('grows with the ring towards the full hoop strength, and is 0 without one', () => {
    const force = (wall: number) => bossSplitForce(situationOfNumbers({ wall, density: 0 })).value;
    expect(force(0.21)).toBe(0);
    expect(force(1.3)).toBeGreaterThan(force(0.9));
    expect(force(4.9)).toBeLessThan(43 * Math.PI * 5 * 3.6);
  });
});

describe('bossSplit', () => {
  test('is loaded by the pull under a part on the insert, by the clamp force elsewhere, not from the far side', () => {
    expect((['on-insert', 'on-plastic', 'over-gap', 'far-side'] as const).map(bossSplit.path)).toEqual([
      'pull',
      'clamp',
      'clamp',
      'none',
    ]);
  });
});
