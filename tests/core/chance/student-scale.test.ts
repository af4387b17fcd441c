import { describe, expect, test } from 'vitest';
import { seededGenerator } from '../../../src/core/chance/generator.ts';
import { normalVariate } from '../../../src/core/chance/normal-variate.ts';
import { fillStudentScale, studentScale } from '../../../src/core/chance/student-scale.ts';
import { studentProbability, studentQuantile } from '../../../src/core/numerics/student-t.ts';
import { expectDistribution, expectShare } from './expect-chance.ts';

const SAMPLES = 200_000;

function sampled(degrees: number, seed: number): Float64Array {
  const generator = seededGenerator(seed);
  return new Float64Array(SAMPLES).map(() => normalVariate(generator) * studentScale(generator, degrees));
}

describe('studentScale', () => {
  test.each([1, 2, 4, 5, 10, 17])(
    'makes a normal number one of Student with %i degrees of freedom (Kolmogorov and Smirnov, 1 %)',
    (degrees) => {
      expectDistribution(sampled(degrees, 17 + degrees), (t) => studentProbability(t, degrees));
    },
  );
  test.each([0.001, 0.05, 0.95, 0.999])('leaves the share %f below its quantile', (share) => {
    const end = studentQuantile(share, 4);
    const below = sampled(4, 97).reduce((count, t) => (t < end ? count + 1 : count), 0);
    expectShare(below, SAMPLES, share);
  });
});

describe('fillStudentScale', () => {
  test.each([1, 2, 4, 5, 12])('gives what single draws give, with %i degrees of freedom', (degrees) => {
    const filled = new Float64Array(300);
    const at = seededGenerator(4);
    fillStudentScale(at, degrees, filled);
    const generator = seededGenerator(4);
    expect([...filled]).toEqual(Array.from({ length: 300 }, () => studentScale(generator, degrees)));
    expect(at.state).toEqual(generator.state);
  });
});
