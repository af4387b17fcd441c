import { describe, expect, test } from 'vitest';
import {
  type Derived,
  entry,
  entryAs,
  entryFrom,
  entryLater,
  withWays,
} from '../../../src/core/sources/derived.ts';

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
    expect(entryAs('r_1', entryLater('r', 2.35, 'mm', half))).toEqual({
      symbol: 'r_1',
      value: 2.35,
      unit: 'mm',
      from: half(),
    });
  });
  test('and a given value under another symbol stays a given one', () => {
    expect(entryAs('D_1', entry('D', 4.7, 'mm'))).toEqual({ symbol: 'D_1', value: 4.7, unit: 'mm' });
  });
});

describe('a number with ways to what is put in', () => {
  test('keeps every entry, and the way of those that were computed', () => {
    const ring: Derived = {
      ...half(),
      symbol: 'A',
      value: 17.35,
      unit: 'mm²',
      formula: 'π · r²',
      entries: [entry('r', 2.35, 'mm'), entry('h', 0.2, 'mm')],
    };
    expect(withWays(ring, { r: half() }).entries).toEqual([entryFrom(half()), entry('h', 0.2, 'mm')]);
    expect(withWays(ring, {})).toEqual(ring);
  });
});
