import { describe, expect, test } from 'vitest';
import { stepText } from '../../../src/app/fields/step-text.ts';
import { DIAL, KNURL, LID, PULL, WARMEST } from '../quantity/fields-of-tests.ts';

describe('stepText', () => {
  test.each([
    ['4.25', 1, '4.30'],
    ['4.25', -1, '4.20'],
    ['4,25', 1, '4,30'],
    ['4.2513', 1, '4.3013'],
    ['4.25', 10, '4.75'],
    ['4.25 mm', 1, '4.30'],
    ['1/4 in', 1, '6.40'],
  ])('of %s by %i knurl steps is %s', (text, steps, next) => {
    expect(stepText(text, steps, KNURL)).toBe(next);
  });

  test('does not gather rounding errors over a hundred steps', () => {
    let text = '0.1';
    for (let count = 0; count < 100; count++) text = stepText(text, 1, LID) ?? 'ended';
    expect(text).toBe('10.1');
  });

  test('steps in the unit shown', () => {
    expect(stepText('0.6', 1, DIAL)).toBe('0.61');
    expect(stepText('−1', -1, WARMEST)).toBe('−2');
  });

  test.each([
    ['0.1', -1, LID],
    ['26', 1, KNURL],
    ['5', -1, PULL],
    ['', 1, KNURL],
    ['thick', 1, KNURL],
  ])(
    'of "%s" by %i is nothing: a step never ends outside the limits, nor begins nowhere',
    (text, steps, definition) => {
      expect(stepText(text, steps, definition)).toBeUndefined();
    },
  );
});
