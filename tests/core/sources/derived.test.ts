import { describe, expect, test } from 'vitest';
import { type Derived, entry, entryLater } from '../../../src/core/sources/derived.ts';

const half = (): Derived => ({
  symbol: 'r',
  value: 2.35,
  unit: 'mm',
  formula: 'D/2',
  entries: [entry('D', 4.7, 'mm')],
  source: 'own-model',
  standing: 'estimate',
});

describe('a number whose way is made later', () => {
  test('makes its way only when it is asked for, and once', () => {
    let times = 0;
    const late = entryLater('r', 2.35, 'mm', () => {
      times += 1;
      return half();
    });
    expect(late.value).toBe(2.35);
    expect(times).toBe(0);
    expect(late.from).toEqual(half());
    expect(late.from).toBe(late.from);
    expect(times).toBe(1);
  });
  test('keeps its way under another symbol', () => {
    expect({ ...entryLater('r', 2.35, 'mm', half), symbol: 'r_1' }).toEqual({
      symbol: 'r_1',
      value: 2.35,
      unit: 'mm',
      from: half(),
    });
  });
});
