import { describe, expect, test } from 'vitest';
import { inThousand, oneIn, spreadInThousand } from '../../src/wording/chance.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { given } from '../support/joints.ts';

const ends = (low: number, high: number) => ({
  low: given('m_low', 1000 * low, '-'),
  high: given('m_high', 1000 * high, '-'),
});

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
    expect(plainText(spreadInThousand(ends(0.13822, 0.13959)))).toBe('138.2 to 139.6');
    expect(plainText(spreadInThousand(ends(0.000304, 0.000377)))).toBe('0.304 to 0.377');
  });
  test('says only the upper end where nothing was seen', () => {
    expect(plainText(spreadInThousand(ends(0, 0.0000038)))).toBe('below 0.0038');
  });
});

describe('oneIn', () => {
  test.each([
    [34, 100_000, 'about 1 in 2,900'],
    [100, 400, 'about 1 in 4.0'],
    [392, 400, 'all but 1 in 50'],
    [0, 400, 'none seen'],
    [400, 400, 'every one'],
  ])('says %i of %i as %s', (count, samples, words) => {
    const among = (counts: 'happens' | 'does-not') =>
      given('N_j', samples / (counts === 'happens' ? count : samples - count), '-');
    expect(plainText(oneIn({ count, samples }, among))).toBe(words);
  });
});
