import { describe, expect, test } from 'vitest';
import { inThousand, oneIn, spreadInThousand } from '../../src/wording/chance.ts';

describe('inThousand', () => {
  test.each([
    [0.1389, '139'],
    [0.0053, '5.3'],
    [0.00034, '0.34'],
    [0.0001, '0.1'],
    [0.000002, '0.002'],
    [0, '0'],
    [1, '1,000'],
  ])('writes %f as %s', (probability, text) => {
    expect(inThousand(probability)).toBe(text);
  });
});

describe('spreadInThousand', () => {
  test('has as many decimals as the spread is worth', () => {
    expect(spreadInThousand({ low: 0.13822, high: 0.13959 })).toBe('138.2 to 139.6');
    expect(spreadInThousand({ low: 0.000304, high: 0.000377 })).toBe('0.304 to 0.377');
  });
  test('says only the upper end where nothing was seen', () => {
    expect(spreadInThousand({ low: 0, high: 0.0000038 })).toBe('below 0.0038');
  });
});

describe('oneIn', () => {
  test.each([
    [0.00034, 'about 1 in 2,900'],
    [0.25, 'about 1 in 4.0'],
    [0.98, 'all but 1 in 50'],
    [0, 'none seen'],
    [1, 'every one'],
  ])('says %f as %s', (probability, words) => {
    expect(oneIn(probability)).toBe(words);
  });
});
