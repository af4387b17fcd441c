import { describe, expect, test } from 'vitest';
import { likeReadings } from '../../../src/core/bench/like-readings.ts';

const groupsOf = (readings: readonly number[], span: number) =>
  likeReadings(readings, (reading) => reading, span).map(({ items }) => items);

describe('likeReadings', () => {
  test('puts together what lies within the span of the least, whatever the order', () => {
    expect(groupsOf([4.61, 4.43, 4.47, 4.6, 4.42], 0.05)).toEqual([
      [4.43, 4.47, 4.42],
      [4.61, 4.6],
    ]);
  });
  test('takes the end of the span in, though it is not sharp in binary: 4.45 − 4.40', () => {
    expect(groupsOf([4.4, 4.45, 4.451], 0.05)).toEqual([[4.4, 4.45], [4.451]]);
  });
  test('does not let a row of small steps run together', () => {
    expect(groupsOf([1, 1.04, 1.08, 1.12], 0.05)).toEqual([
      [1, 1.04],
      [1.08, 1.12],
    ]);
  });
  test('gives the ends of each group', () => {
    expect(likeReadings([5.3, 5.1, 7], (reading) => reading, 0.3)).toMatchObject([
      { least: 5.1, greatest: 5.3 },
      { least: 7, greatest: 7 },
    ]);
  });
  test('has no group of nothing', () => {
    expect(groupsOf([], 0.05)).toEqual([]);
  });
});
