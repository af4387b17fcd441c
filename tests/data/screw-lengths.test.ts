import { describe, expect, test } from 'vitest';
import { SCREW_LENGTHS } from '../../src/data/screw-lengths.ts';
import { expectRelative } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const SERIES = [3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80];
const INCHES = [3 / 16, 1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1, 5 / 4, 3 / 2];

const lengthsOf = (thread: string) => theRow(SCREW_LENGTHS, (row) => row.thread === thread).lengths;

describe('SCREW_LENGTHS', () => {
  test.each([
    ['M2', 3, 20],
    ['M2.5', 4, 25],
    ['M3', 5, 30],
    ['M4', 6, 40],
    ['M5', 8, 50],
    ['M6', 10, 60],
    ['M8', 12, 80],
  ])(
    'of %s are the whole series from %i to %i mm (iso-888, range of iso-4762)',
    (thread, shortest, longest) => {
      expect(lengthsOf(thread)).toEqual(SERIES.filter((length) => length >= shortest && length <= longest));
    },
  );

  test.each([
    ['UNC-4-40', 3 / 16],
    ['UNC-6-32', 3 / 16],
    ['UNC-8-32', 3 / 16],
    ['UNC-10-24', 1 / 4],
    ['UNC-1/4-20', 3 / 8],
  ])('of %s are the inch lengths from %f in on, in mm (inch-screw-lengths)', (thread, shortest) => {
    const inches = INCHES.filter((length) => length >= shortest);
    expect(lengthsOf(thread)).toHaveLength(inches.length);
    for (const [index, length] of lengthsOf(thread).entries())
      expectRelative(length, 25.4 * (inches[index] ?? 0));
  });

  test.each(SCREW_LENGTHS)('of $thread ascend without a repeat', ({ lengths }) => {
    expect(lengths).toEqual([...new Set(lengths)].sort((a, b) => a - b));
  });
});
