import { describe, expect, test } from 'vitest';
import { seededGenerator } from '../../../src/core/chance/generator.ts';
import { fillNormal, normalVariate } from '../../../src/core/chance/normal-variate.ts';
import { normalProbability } from '../../../src/core/numerics/normal-distribution.ts';
import { expectDistribution, expectShare } from './expect-chance.ts';

const SAMPLES = 400_000;

function sampled(seed: number): Float64Array {
  const numbers = new Float64Array(SAMPLES);
  fillNormal(seededGenerator(seed), numbers);
  return numbers;
}

const numbers = sampled(71);
const meanOf = (read: (z: number) => number) => numbers.reduce((sum, z) => sum + read(z), 0) / SAMPLES;

describe('normalVariate', () => {
  test('follows the normal distribution of the core (Kolmogorov and Smirnov, 1 %)', () => {
    expectDistribution(numbers, normalProbability);
  });
  test.each([
    ['mean', 1, 0, 1],
    ['variance', 2, 1, 2],
    ['third moment', 3, 0, 15],
    ['fourth moment', 4, 3, 96],
  ])('has the %s of the normal distribution within 4 standard errors', (_name, power, expected, variance) => {
    // Variance of z^k: E[z^2k] − E[z^k]², from the moments 1, 3, 15, 105.
    const error = Math.sqrt(variance / SAMPLES);
    expect(Math.abs(meanOf((z) => z ** power) - expected)).toBeLessThanOrEqual(4 * error);
  });
  test.each([-3.9, -3.654, -3, -1.6448536, -0.3, 0.7, 2.5, 3.3, 3.7])(
    'leaves the right share below %f, tails beyond the layers included',
    (x) => {
      const below = numbers.reduce((count, z) => (z < x ? count + 1 : count), 0);
      expectShare(below, SAMPLES, normalProbability(x));
    },
  );
  test('reaches beyond the last layer to both sides', () => {
    expect(Math.max(...numbers.slice(0, 100_000))).toBeGreaterThan(3.66);
    expect(Math.min(...numbers.slice(0, 100_000))).toBeLessThan(-3.66);
  });
  test('gives neighbours that know nothing of each other', () => {
    const product = numbers.reduce((sum, z, place) => sum + z * (numbers[place + 1] ?? 0), 0) / SAMPLES;
    expect(Math.abs(product)).toBeLessThanOrEqual(4 / Math.sqrt(SAMPLES));
  });
});

describe('fillNormal', () => {
  test('gives what single draws give', () => {
    const filled = new Float64Array(20_000);
    fillNormal(seededGenerator(3), filled);
    const generator = seededGenerator(3);
    expect([...filled]).toEqual(Array.from({ length: 20_000 }, () => normalVariate(generator)));
  });
});
