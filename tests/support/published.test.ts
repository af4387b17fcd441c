import { describe, expect, test } from 'vitest';
import { expectPublished, expectRelative } from './published.ts';

describe('expectPublished', () => {
  test.each([
    [5.0308, '5.03'],
    [8.7749, '8.77'],
    [1.005, '1.01'],
    [20.123, '20.1'],
    [104.4, '104'],
    [-0.6223, '−0.62'],
    [0.0001234, '1.23e-4'],
  ])('accepts %f for the printed text %s', (computed, printed) => {
    expect(() => expectPublished(computed, printed)).not.toThrow();
  });
  test.each([
    [5.0361, '5.03'],
    [14.2007, '14.200'],
    [104.6, '104'],
    [0.62, '−0.62'],
    [Number.NaN, '5.03'],
    [Number.POSITIVE_INFINITY, '5.03'],
    [0, ''],
    [5.03, '5,03'],
  ])('refuses %f for the printed text "%s"', (computed, printed) => {
    expect(() => expectPublished(computed, printed)).toThrow();
  });
});

describe('expectRelative', () => {
  test('accepts a deviation within 1e-12 of the larger value', () => {
    expect(() => expectRelative(3.7, 3.7 * (1 + 9e-13))).not.toThrow();
  });
  test('refuses a deviation just beyond 1e-12', () => {
    expect(() => expectRelative(3.7, 3.7 * (1 + 1.2e-12))).toThrow();
  });
  test('takes a tolerance of its own', () => {
    expect(() => expectRelative(3.7, 3.73, 0.01)).not.toThrow();
    expect(() => expectRelative(3.7, 3.78, 0.01)).toThrow();
  });
  test('refuses a value that is no number', () => {
    expect(() => expectRelative(Number.NaN, 3.7)).toThrow();
  });
});
