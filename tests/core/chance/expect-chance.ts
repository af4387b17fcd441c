import { expect } from 'vitest';

/** Deviations beyond which a sampled share is no chance any more: 1 of 16 000 by itself, and every seed is fixed. */
const DEVIATIONS = 4;

/** Expects that a share counted in a sample agrees with the share that it should have, within 4 standard errors. */
export function expectShare(counted: number, samples: number, share: number): void {
  const error = Math.sqrt((share * (1 - share)) / samples);
  expect(
    Math.abs(counted / samples - share),
    `${counted} of ${samples} against ${share}`,
  ).toBeLessThanOrEqual(DEVIATIONS * error);
}

/** 1 % quantile of Kolmogorov's distribution for large samples (critical value of D·√n, from memory). */
const KOLMOGOROV_1_PERCENT = 1.628;

/** Expects that numbers come from a distribution: Kolmogorov and Smirnov's test at 1 % significance. */
export function expectDistribution(numbers: Float64Array, probability: (x: number) => number): void {
  const sorted = Float64Array.from(numbers).sort();
  const n = sorted.length;
  const distance = sorted.reduce((most, x, index) => {
    const expected = probability(x);
    return Math.max(most, (index + 1) / n - expected, expected - index / n);
  }, 0);
  expect(distance * Math.sqrt(n)).toBeLessThan(KOLMOGOROV_1_PERCENT);
}
