import { describe, expect, test } from 'vitest';
import {
  bondDensity,
  bondInterval,
  characteristicBond,
  medianBond,
} from '../../../src/core/evidence/bond-prediction.ts';
import { studentProbability } from '../../../src/core/numerics/student-t.ts';
import { bondFactor, characteristicOf } from '../../../src/core/pull-out/bond.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const prediction = { centre: -0.21, scale: 0.17, freedom: 9 };

describe('characteristicBond', () => {
  test('before any coupon is what the failure modes are reduced by', () => {
    const prior = { centre: Math.log(bondFactor('heat-set').value), scale: Math.sqrt(0.1), freedom: 4 };
    expectRelative(characteristicBond(prior), characteristicOf(given('η', 0.85, '-')).value);
  });
  test('of a median 0.85 is 0.433 (hand calculation with t 2.132 of 4 degrees of freedom, printed tables)', () => {
    // 0.85 · exp(−2.132 · 0.3162) = 0.85 · 0.5096
    expectPublished(
      characteristicBond({ centre: Math.log(0.85), scale: Math.sqrt(0.1), freedom: 4 }),
      '0.433',
    );
  });
});

describe('bondInterval', () => {
  test('holds its share, half of the rest on each side', () => {
    const { low, high } = bondInterval(prediction, 0.8);
    const below = (eta: number) => studentProbability((Math.log(eta) + 0.21) / 0.17, 9);
    expectRelative(below(low), 0.1, 1e-10);
    expectRelative(below(high), 0.9, 1e-10);
  });
  test('of nine tenths begins at the characteristic value', () => {
    expectRelative(bondInterval(prediction, 0.9).low, characteristicBond(prediction), 1e-12);
  });
  test('lies about the median as a ratio', () => {
    const { low, high } = bondInterval(prediction, 0.63);
    expectRelative(low * high, medianBond(prediction) ** 2, 1e-12);
  });
});

describe('bondDensity', () => {
  test('adds up to the share between two bond factors', () => {
    const [low, high, steps] = [0.6, 1.1, 4000];
    let total = 0;
    for (let place = 0; place < steps; place += 1) {
      total += bondDensity(prediction, low + ((place + 0.5) * (high - low)) / steps);
    }
    const below = (eta: number) => studentProbability((Math.log(eta) + 0.21) / 0.17, 9);
    expectRelative((total * (high - low)) / steps, below(high) - below(low), 1e-6);
  });
  test('vanishes at both ends', () => {
    expect(bondDensity(prediction, 1e-4)).toBeLessThan(1e-6);
    expect(bondDensity(prediction, 1e4)).toBeLessThan(1e-12);
  });
});
