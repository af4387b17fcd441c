import { describe, expect, test } from 'vitest';
import { rangeOf } from '../../src/headless/rounded.ts';
import { given } from '../support/joints.ts';

describe('rangeOf', () => {
  const share = given('R_F', 0.41, '-');
  test('gives both ends and what is expected, in six digits', () => {
    const range = { low: 0.41, middle: 0.5234567, high: 0.63 };
    expect(rangeOf({ ...share, range })).toEqual({ low: 0.41, expected: 0.523457, high: 0.63 });
  });
  test('expects nothing apart where the value itself is the middle', () => {
    expect(rangeOf({ ...share, range: { low: 0.3, high: 0.7 } })).toEqual({
      low: 0.3,
      expected: null,
      high: 0.7,
    });
  });
  test('is null for what is known well enough', () => {
    expect(rangeOf(share)).toBeNull();
  });
});
