import { expect } from 'vitest';

/** Expects whole sentences for a person: begun with a capital or a figure, ended, nothing of the program showing through. */
export function expectSentence(text: string): void {
  expect(text).toMatch(/^[\p{Lu}\p{N}“−]/u);
  expect(text).toMatch(/[.?!]$/);
  expect(text).not.toMatch(/undefined|NaN|null|Infinity|\[object|\bfalse\b|\btrue\b/);
  expect(text, 'a space too many').not.toMatch(/ {2}| [,.;:]|\.\./);
  expect(text, 'torque without its dot').not.toMatch(/\bNm\b|\bcNm\b/);
}
