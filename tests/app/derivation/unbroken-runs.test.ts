import { describe, expect, test } from 'vitest';
import { unbrokenRuns } from '../../../src/app/derivation/unbroken-runs.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { figure, plainText, type Sentence, said } from '../../../src/wording/sentence.ts';

const LENGTH: Derived = {
  symbol: 'L',
  value: 5.3,
  unit: 'mm',
  formula: 'L',
  entries: [],
  source: 'your-measurement',
  standing: 'measured',
};
const [five, six] = [figure(LENGTH, '5.3'), figure(LENGTH, '6.3')];

/** As it is read, with what keeps together in brackets. */
const read = (sentence: Sentence): string =>
  unbrokenRuns(sentence)
    .map((words) => (typeof words === 'string' ? words : `[${plainText(words)}]`))
    .join('');

describe('unbrokenRuns', () => {
  test('keep a number with what touches it, and no more', () => {
    expect(read(said`A part (${five}), then ${six}.`)).toBe('A part [(5.3),] then [6.3.]');
  });
  test('keep two numbers together that no space parts', () => {
    expect(read(said`Wider: ${five}\u00a0→\u00a0${six}`)).toBe('Wider: [5.3\u00a0→\u00a06.3]');
  });
  test('leave a number alone between spaces, and words without one whole', () => {
    expect(unbrokenRuns(said`${five} mm`)).toContainEqual([five]);
    expect(read(said`Of ${'wood'}, ${'or'} not.`)).toBe('Of wood, or not.');
    expect(read([])).toBe('');
  });
});
