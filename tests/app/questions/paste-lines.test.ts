import { describe, expect, test } from 'vitest';
import { pastedLines, withoutLines } from '../../../src/app/questions/my-printer/paste-lines.ts';

const holesOf = (text: string, order: 'drawn-first' | 'measured-first' = 'drawn-first') => {
  const lines = pastedLines(text, order);
  return lines.kind === 'read' ? lines.holes.map(({ drawn, measured }) => [drawn, ...measured]) : lines;
};

describe('pastedLines', () => {
  test.each([
    ['tabs', '4.1\t3.98\t3.97'],
    ['semicolons and decimal commas', '4,1; 3,98; 3,97'],
    ['semicolons without blanks', '4,1;3,98;3,97'],
    ['blanks', '4.1 3.98 3.97'],
    ['commas and decimal points', '4.1,3.98,3.97'],
    ['blanks and decimal commas', '4,1 3,98 3,97'],
    ['units', '4.1 mm; 3.98 mm; 3.97 mm'],
  ])('reads %s', (_, text) => {
    expect(holesOf(text)).toEqual([[4.1, 3.98, 3.97]]);
  });
  test('takes three decimals after a comma as decimals where the cells are beyond doubt', () => {
    expect(holesOf('4,125;3,987')).toEqual([[4.125, 3.987]]);
  });
  test('passes over a heading and empty lines, and counts lines as they stand', () => {
    const lines = pastedLines('drawn\tmeasured\r\n\r\n3.5\t3.3\r\n', 'drawn-first');
    expect(lines).toEqual({ kind: 'read', holes: [{ line: 3, drawn: 3.5, measured: [3.3] }], bad: [] });
  });
  test('takes the last value as drawn where that is the order', () => {
    expect(holesOf('3.98 3.97 4.1', 'measured-first')).toEqual([[4.1, 3.98, 3.97]]);
  });
  test('names a line with one value, with none that is a number, or out of range', () => {
    const lines = pastedLines('4.1\n4.2 4.x1\n4.3 90', 'drawn-first');
    if (lines.kind === 'too-large') throw new Error('too large');
    expect(lines.holes).toEqual([]);
    expect(lines.bad.map(({ line, text, refusal }) => [line, text, refusal.code])).toEqual([
      [1, '4.1', 'too-few'],
      [2, '4.2 4.x1', 'bad-readings'],
      [3, '4.3 90', 'bad-readings'],
    ]);
  });
  test('reads ten thousand lines, and refuses a text of a million', () => {
    const lines = (count: number) => Array.from({ length: count }, () => '4.1;3.98').join('\n');
    expect(holesOf(lines(10_000))).toHaveLength(10_000);
    expect(pastedLines(lines(1_000_000), 'drawn-first')).toEqual({ kind: 'too-large', lines: 1_000_000 });
  });
});

describe('withoutLines', () => {
  test('keeps every line that was not taken', () => {
    const text = 'drawn measured\n4.1 3.98\n4.2 x\n4.3 4.2';
    const lines = pastedLines(text, 'drawn-first');
    if (lines.kind === 'too-large') throw new Error('too large');
    expect(withoutLines(text, lines.holes)).toBe('drawn measured\n4.2 x');
    expect(withoutLines(text, [])).toBe(text);
  });
});
