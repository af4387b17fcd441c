import { describe, expect, test } from 'vitest';
import { labelSize } from '../../../src/app/drawing/label-size.ts';
import { section } from './section-inputs.ts';

/** A figure of DejaVu Sans Condensed, the widest face that the page may fall back to, em; from memory. */
const FIGURE = 0.5725;

const withLength = (length: number) => section({ insert: { length } });

describe('labelSize', () => {
  test('gives a measured length the room of its field: 12.00 in figures 16 px high, and the caret', () => {
    const { width } = labelSize(withLength(12), 'insert-length', {
      variant: 'narrow',
      arrangement: 'block',
    });
    // Five signs and 0.6 for the caret, 2 px of paper at each side.
    expect(width).toBeGreaterThanOrEqual(5.6 * FIGURE * 16 + 2 * 2);
    expect(width).toBeLessThan(5.6 * FIGURE * 16 + 2 * 2 + 4);
  });

  test('gives ten and more one figure more than what is below ten', () => {
    const style = { variant: 'wide', arrangement: 'block' } as const;
    const more = labelSize(withLength(10.4), 'insert-length', style).width;
    const less = labelSize(withLength(9.7), 'insert-length', style).width;
    expect(more - less).toBeGreaterThanOrEqual(FIGURE * 18);
  });
});
