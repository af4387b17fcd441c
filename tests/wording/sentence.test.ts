import { describe, expect, test } from 'vitest';
import { type Derived, entry } from '../../src/core/sources/derived.ts';
import { figure, plainText, said } from '../../src/wording/sentence.ts';

const PILOT: Derived = {
  symbol: 'D_p',
  value: 4.23,
  unit: 'mm',
  formula: 'x_1',
  entries: [entry('x_1', 4.23, 'mm')],
  source: 'your-measurement',
  standing: 'measured',
};

describe('a sentence with computed numbers', () => {
  test('keeps its words and its numbers in their order', () => {
    const pilot = figure(PILOT, '4.23 mm');
    const sentence = said`The pilot of ${pilot} drops ${'in'}.`;
    expect(sentence).toEqual(['The pilot of ', pilot, ' drops ', 'in', '.']);
    expect(plainText(sentence)).toBe('The pilot of 4.23 mm drops in.');
  });
  test('takes another sentence in where it stands', () => {
    const pilot = figure(PILOT, '4.23 mm');
    expect(said`${said`It is ${pilot}`}, so it fits.`).toEqual(['It is ', pilot, ', so it fits.']);
    expect(said`One.${[]}`).toEqual(['One.']);
  });
});
