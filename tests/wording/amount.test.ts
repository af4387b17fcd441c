import { describe, expect, test } from 'vitest';
import { factorText as fieldFactorText, numberText } from '../../src/app/quantity/format.ts';
import {
  amountText,
  chanceText,
  countWord,
  decimalText,
  derivedText,
  durationText,
  factorText,
  forceText,
  lengthText,
  ordinalWord,
  significantText,
  torqueText,
} from '../../src/wording/amount.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('amounts in text', () => {
  test.each([
    [3.2, '3.2 mm'],
    [4.25, '4.25 mm'],
    [5, '5.0 mm'],
    [0.354, '0.35 mm'],
    [-0.255, '−0.26 mm'],
  ])('lengthText writes %f as %s', (length, text) => {
    expect(plain(lengthText(length))).toBe(text);
  });
  test.each([
    [90, '90 N'],
    [1393.4, '1,390 N'],
    [12_345, '12,300 N'],
    [4.44, '4.4 N'],
    [0, '0 N'],
  ])('forceText writes %f as %s', (force, text) => {
    expect(plain(forceText(force))).toBe(text);
  });
  test.each([
    [600, '0.60 N·m'],
    [1072, '1.07 N·m'],
    [83, '0.083 N·m'],
    [12_340, '12.3 N·m'],
    [0, '0.00 N·m'],
  ])('torqueText writes %f N·mm as %s', (torque, text) => {
    expect(plain(torqueText(torque))).toBe(text);
  });
  test.each([
    [0.999_96, '0.99 ×'],
    [1.304, '1.30 ×'],
    [3.69, '3.6 ×'],
    [11.9, '11 ×'],
  ])('factorText cuts %f to %s', (factor, text) => {
    expect(plain(factorText(factor))).toBe(text);
  });
  test.each([
    [0.912, '91 in 100'],
    [0.999, 'more than 99 in 100'],
    [0.001, 'fewer than 1 in 100'],
  ])('chanceText writes %f as %s', (chance, text) => {
    expect(chanceText(chance)).toBe(text);
  });
  test.each([
    [8760, '1 year'],
    [17_520, '2 years'],
    [24, '1 day'],
    [72, '72 hours'],
    [1, '1 hour'],
    [240, '10 days'],
  ])('durationText writes %f h as %s', (hours, text) => {
    expect(plain(durationText(hours))).toBe(text);
  });
  test('a bore keeps both decimals, another length does not', () => {
    expect(plain(derivedText({ symbol: 'D_CAD', value: 4.3, unit: 'mm' }))).toBe('4.30 mm');
    expect(plain(derivedText({ symbol: 'L', value: 4.3, unit: 'mm' }))).toBe('4.3 mm');
  });
  test('a margin is cut in its derivation as it is where it opens', () => {
    const marginText = (value: number) => plain(derivedText({ symbol: 'ψ', value, unit: '-' }));
    for (const value of [0.9996, 1.0496, 4.5882, 9.999, 10.06, 40.37, 148.6]) {
      const opening = factorText(value).replace('\u00a0×', '');
      expect(marginText(value)).toMatch(new RegExp(`^${opening}`));
    }
    expect([1.0496, 4.5882, 40.37].map(marginText)).toEqual(['1.04 ×', '4.58 ×', '40.3 ×']);
    expect(plain(derivedText({ symbol: 'Φ', value: 1.0496, unit: '-' }))).toBe('1.05');
  });
  test('a count keeps all of its digits in a derivation', () => {
    expect(derivedText({ symbol: 'k_j', value: 123456, unit: '-' })).toBe('123,456');
    expect(derivedText({ symbol: 'n', value: 123456, unit: '-' })).toBe('123,000');
  });
  test('a unit by definition keeps its digits in a derivation', () => {
    const exact = (value: number) => plain(derivedText({ symbol: 'F_u', value, unit: 'N' }));
    expect([4.4482216152605, 9.80665, 0.01].map(exact)).toEqual(['4.4482216 N', '9.80665 N', '0.01 N']);
    expect(plain(derivedText({ symbol: 'l_u', value: 1000, unit: 'mm' }))).toBe('1,000 mm');
  });
  test('a ratio has no unit, an area has its own', () => {
    expect(amountText(0.8534, '-')).toBe('0.853');
    expect(plain(amountText(5.0306, 'mm²'))).toBe('5.03 mm²');
  });
  test('counts stand in words up to twelve', () => {
    expect([countWord(1), countWord(12), countWord(13), ordinalWord(2), ordinalWord(11)]).toEqual([
      'one',
      'twelve',
      '13',
      'second',
      'number 11',
    ]);
  });
});

describe('numbers in sentences and numbers in fields', () => {
  const values = [0.004_95, 0.125, 0.954_5, 1.005, 2.675, 7.5, 99.95, 104.5, 1249.5, 65_432.1, -0.255, -3.05];
  test.each(values)('are rounded alike: %f', (value) => {
    for (const decimals of [0, 1, 2, 3]) {
      expect(decimalText(value, decimals)).toBe(numberText(value, { decimals }));
    }
  });
  test.each(values.filter((value) => value > 0))('are cut alike as factors: %f', (value) => {
    expect(factorText(value)).toBe(fieldFactorText(value));
  });
  test.each([1249.5, 65_432.1, 104.5])('%f keeps three digits that mean something', (value) => {
    expect(Number(significantText(value).replace(',', ''))).toBe(Number(value.toPrecision(3)));
  });
});
