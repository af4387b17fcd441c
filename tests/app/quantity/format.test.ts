import { describe, expect, test } from 'vitest';
import {
  amountText,
  decimalsOfStep,
  factorText,
  fieldText,
  numberText,
  quantityText,
  rangeText,
  roundDecimals,
  unitText,
} from '../../../src/app/quantity/format.ts';
import { parsePlain } from '../../../src/app/quantity/parse-plain.ts';
import { fromCore, toCore } from '../../../src/core/units/convert.ts';
import type { UnitSymbol } from '../../../src/core/units/units.ts';
import fc from '../../support/fast-check.ts';

describe('roundDecimals', () => {
  test.each([
    [4.7625, 3, 4.763],
    [1.005, 2, 1.01],
    [-1.005, 2, -1.01],
    [2.5, 0, 3],
    [1e-9, 3, 0],
    [1e25, 2, 1e25],
  ])('of %f to %i decimals is %f', (value, decimals, rounded) => {
    expect(roundDecimals(value, decimals)).toBe(rounded);
  });
});

describe('decimalsOfStep', () => {
  test.each([
    [1, 0],
    [5, 0],
    [0.1, 1],
    [0.05, 2],
    [0.25, 2],
    [0.005, 3],
  ])('of %f is %i', (step, decimals) => {
    expect(decimalsOfStep(step)).toBe(decimals);
  });
});

describe('numberText', () => {
  test.each([
    [1250, { decimals: 0 }, '1,250'],
    [1234567.891, { decimals: 2 }, '1,234,567.89'],
    [999.6, { decimals: 0 }, '1,000'],
    [-0.25, { step: 0.05 }, '\u22120.25'],
    [-0.001, { decimals: 2 }, '0.00'],
    [4.2512, { uncertainty: 0.018 }, '4.25'],
    [4.2512, { uncertainty: 0.1 }, '4.3'],
    [643.7, { uncertainty: 52 }, '644'],
    [0.6049, { significant: 2 }, '0.60'],
    [17.845, { significant: 2 }, '18'],
    [0, { significant: 2 }, '0.0'],
  ])('of %f with %o is %s', (value, digits, text) => {
    expect(numberText(value, digits)).toBe(text);
  });
});

describe('quantityText', () => {
  test.each<[number, UnitSymbol, number, string]>([
    [600, 'N·m', 0.01, '0.60\u00a0N·m'],
    [1250, 'N', 1, '1,250\u00a0N'],
    [4.25, 'mm', 0.01, '4.25\u00a0mm'],
    [45, '°C', 1, '45\u00a0°C'],
    [-5, '°C', 1, '\u22125\u00a0°C'],
    [8760, 'year', 1, '1\u00a0year'],
    [17520, 'year', 1, '2\u00a0years'],
    [0.2, '%', 1, '20\u00a0%'],
    [Math.PI / 6, '°', 1, '30°'],
    [1.5, '-', 0.1, '1.5'],
    [1.5, '×', 0.1, '1.5\u00a0×'],
  ])('of %f in %s by %f is %s', (value, unit, step, text) => {
    expect(quantityText(value, unit, { step })).toBe(text);
  });

  test('keeps number and unit on one line', () => {
    expect(quantityText(903.878, 'lbf·in', { significant: 2 })).toBe('8.0\u00a0lbf·in');
  });
});

describe('amountText', () => {
  test('takes any unit as it is', () => {
    expect(amountText(12.48, 'mm²', { decimals: 1 })).toBe('12.5\u00a0mm²');
  });
});

describe('unitText', () => {
  test('is plural after every number but 1', () => {
    expect([unitText('week', '1'), unitText('week', '3'), unitText('h', '3')]).toEqual([
      'week',
      'weeks',
      'h',
    ]);
  });
});

describe('rangeText', () => {
  test('joins two ends with one unit', () => {
    expect(rangeText({ lo: 310, hi: 710 }, 'N·m', { step: 0.01 })).toBe('0.31\u20130.71\u00a0N·m');
  });

  test('says "to" where a minus would meet the dash', () => {
    expect(rangeText({ lo: -20, hi: 45 }, '°C', { step: 1 })).toBe('\u221220 to 45\u00a0°C');
  });
});

describe('factorText', () => {
  test.each([
    [0.9999, '0.99\u00a0×'],
    [1, '1.00\u00a0×'],
    [1.1, '1.10\u00a0×'],
    [1.886, '1.88\u00a0×'],
    [3.69, '3.6\u00a0×'],
    [11.9, '11\u00a0×'],
  ])('of %f is cut to %s, never rounded up', (factor, text) => {
    expect(factorText(factor)).toBe(text);
  });
});

describe('fieldText', () => {
  const length = { displayUnit: 'mm', step: 0.1 } as const;
  test.each([
    [5, '5.0'],
    [4.25, '4.25'],
    [4.5974, '4.5974'],
    [toCore(3 / 16, 'in'), '4.7625'],
    [1961.33, '1961.33'],
    [-3, '\u22123.0'],
    [10, '10.0'],
  ])('of %f has the decimals of the step and those of the value: %s', (value, text) => {
    expect(fieldText(value, length)).toBe(text);
  });

  test('has no mark of thousands and no point without decimals', () => {
    expect(fieldText(12500, { displayUnit: 'N', step: 1 })).toBe('12500');
  });

  test.each<UnitSymbol>(['mm', 'in', 'N·m', '°F', '%', '°'])(
    'is read back as the same value in %s',
    (displayUnit) => {
      const step = 0.01;
      fc.assert(
        fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (shown) => {
          const kind = {
            mm: 'length',
            in: 'length',
            N·m: 'torque',
            '°F': 'temperature',
            '%': 'ratio',
            '°': 'angle',
          } as const;
          const definition = { kind: kind[displayUnit as keyof typeof kind], displayUnit, step };
          const value = toCore(shown, displayUnit);
          const back = parsePlain(fieldText(value, definition), definition);
          expect(back.kind).toBe('quantity');
          const found = back.kind === 'quantity' ? fromCore(back.value, displayUnit) : Number.NaN;
          // Half of the seventh digit at 5000 is 0.0005; far below the step.
          expect(Math.abs(found - shown)).toBeLessThanOrEqual(0.000501);
        }),
      );
    },
  );
});
