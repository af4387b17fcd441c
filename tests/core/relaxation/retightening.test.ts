import { describe, expect, test } from 'vitest';
import { lastRetightening, RETIGHTENING_HOURS } from '../../../src/core/relaxation/retightening.ts';

describe('lastRetightening', () => {
  test.each([
    [100, 3, 24],
    [100, 1, 1],
    [730, 4, 730],
    [729.9, 4, 168],
    [438_000, 2, 24],
    [1, 1, 1],
  ])('after %f h with %d of them is at %f h', (hours, count, last) => {
    expect(lastRetightening(hours, count)).toBe(last);
  });
  test.each([
    [5000, 0],
    [0.99, 4],
    [0, 3],
  ])('after %f h with %d of them is none', (hours, count) => {
    expect(lastRetightening(hours, count)).toBeUndefined();
  });
  test('come after an hour, a day, a week, a month of 365/12 days', () => {
    expect(RETIGHTENING_HOURS).toEqual([1, 24, 7 * 24, (365 / 12) * 24]);
  });
});
