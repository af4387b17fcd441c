import { describe, expect, test } from 'vitest';
import { mixtureQuantile, studentLike } from '../../../src/core/evidence/normal-mixture.ts';
import { normalProbability, normalQuantile } from '../../../src/core/numerics/normal-distribution.ts';
import { studentQuantile } from '../../../src/core/numerics/student-t.ts';
import { expectRelative } from '../../support/published.ts';

const bimodal = [
  { mean: -3, deviation: 0.02, weight: 2 },
  { mean: 7, deviation: 1.3, weight: 5 },
];

/** Student's t as a mixture over its scatter: ν/σ² follows χ² with ν degrees of freedom; density over ln σ. */
const studentParts = (centre: number, scale: number, freedom: number) =>
  Array.from({ length: 400 }, (_, place) => {
    const log = -2 + place * 0.02;
    return {
      mean: centre,
      deviation: scale * Math.exp(log),
      weight: Math.exp(-freedom * (log + Math.exp(-2 * log) / 2)),
    };
  });

describe('mixtureQuantile', () => {
  test('of one part is that of the normal distribution', () => {
    const x = mixtureQuantile([{ mean: 1.7, deviation: 0.4, weight: 3 }], 0.031);
    expectRelative(x, 1.7 + 0.4 * normalQuantile(0.031), 1e-7);
  });
  test.each([0.001, 0.05, 0.28, 0.2857, 0.29, 0.5, 0.97])('of two far parts has %d below it', (p) => {
    const x = mixtureQuantile(bimodal, p);
    const below = 2 * normalProbability((x + 3) / 0.02) + 5 * normalProbability((x - 7) / 1.3);
    expect(Math.abs(below / 7 - p)).toBeLessThan(1e-4);
  });
});

describe('studentLike', () => {
  test.each([
    [0.3, 0.17, 4],
    [-0.9, 0.06, 7],
    [1.4, 0.41, 13],
  ])('finds Student’s t again: centre %d, scale %d, freedom %d', (centre, scale, freedom) => {
    const found = studentLike(studentParts(centre, scale, freedom), 4, 30);
    expectRelative(found.centre, centre, 1e-6);
    expectRelative(found.scale, scale, 1e-5);
    expect(found.freedom).toBe(freedom);
  });
  test('chooses the freedom whose 1 ‰ quantile is nearest, both from the median', () => {
    const parts = [
      { mean: 0, deviation: 1, weight: 0.97 },
      { mean: 0, deviation: 2.5, weight: 0.03 },
    ];
    const wanted = mixtureQuantile(parts, 0.001) / mixtureQuantile(parts, 0.05);
    const missOf = (freedom: number) =>
      Math.abs(studentQuantile(0.001, freedom) / studentQuantile(0.05, freedom) - wanted);
    const all = Array.from({ length: 60 }, (_, place) => place + 3);
    const nearest = all.reduce((best, next) => (missOf(next) < missOf(best) ? next : best));
    expect(studentLike(parts, 3, 62).freedom).toBe(nearest);
  });
  test('keeps the 5 % quantile where the freedom is held at a limit', () => {
    const low = 0.3 + 0.17 * studentQuantile(0.05, 4);
    const found = studentLike(studentParts(0.3, 0.17, 4), 6, 9);
    expect(found.freedom).toBe(6);
    expectRelative(found.centre + found.scale * studentQuantile(0.05, 6), low, 1e-5);
  });
});
