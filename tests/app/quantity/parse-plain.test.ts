import { describe, expect, test } from 'vitest';
import { parsePlain } from '../../../src/app/quantity/parse-plain.ts';
import type { QuantityDefinition } from '../../../src/app/quantity/quantity-definition.ts';
import { expectRelative } from '../../support/published.ts';
import { DIAL, DURATION, INFILL, KNURL, LEAN, LID, PULL, WARMEST } from './fields-of-tests.ts';

const TEN_YEARS_OF_MM: QuantityDefinition = { kind: 'length', displayUnit: 'mm', step: 1 };

describe('parsePlain, right answers', () => {
  test.each<[string, QuantityDefinition, number, string]>([
    ['4.25', KNURL, 4.25, 'mm'],
    ['4,25', KNURL, 4.25, 'mm'],
    [' +4.25 ', KNURL, 4.25, 'mm'],
    ['4.', KNURL, 4, 'mm'],
    ['.7', LID, 0.7, 'mm'],
    ['0,181', LID, 0.181, 'mm'],
    ['42e-1', KNURL, 4.2, 'mm'],
    ['4.25mm', KNURL, 4.25, 'mm'],
    ['4.25\u00a0mm', KNURL, 4.25, 'mm'],
    ['0.181 in', KNURL, 4.5974, 'in'],
    ['0,181 inch', KNURL, 4.5974, 'in'],
    ['3/16 in', KNURL, 4.7625, 'in'],
    ['3/16"', KNURL, 4.7625, 'in'],
    ['3/16″', KNURL, 4.7625, 'in'],
    ["3/16''", KNURL, 4.7625, 'in'],
    ['180 thou', KNURL, 4.572, 'thou'],
    ['2600 µm', KNURL, 2.6, 'µm'],
    ['200 kgf', PULL, 1961.33, 'kgf'],
    ['18.3 kg', PULL, 179.461695, 'kgf'],
    ['40 lb', PULL, 177.92886461042, 'lbf'],
    ['1.3 kN', PULL, 1300, 'kN'],
    ['1,250.5 N', PULL, 1250.5, 'N'],
    ['1.250,5 N', PULL, 1250.5, 'N'],
    ['0.6 N·m', DIAL, 600, 'N·m'],
    ['0.6 Nm', DIAL, 600, 'N·m'],
    ['0.6 N m', DIAL, 600, 'N·m'],
    ['0.6 N.m', DIAL, 600, 'N·m'],
    ['0.6 N*m', DIAL, 600, 'N·m'],
    ['700 Nmm', DIAL, 700, 'N·mm'],
    ['12 cN·m', DIAL, 120, 'cN·m'],
    ['12 cNm', DIAL, 120, 'cN·m'],
    ['8 in·lb', DIAL, 903.8786322209335, 'lbf·in'],
    ['8 in-lb', DIAL, 903.8786322209335, 'lbf·in'],
    ['8 in-lbs', DIAL, 903.8786322209335, 'lbf·in'],
    ['8 in lb', DIAL, 903.8786322209335, 'lbf·in'],
    ['8 lbf·in', DIAL, 903.8786322209335, 'lbf·in'],
    ['8 LBF-IN', DIAL, 903.8786322209335, 'lbf·in'],
    ['1 ft-lb', DIAL, 1355.8179483314004, 'lbf·ft'],
    ['6 kgf·cm', DIAL, 588.399, 'kgf·cm'],
    ['6 kg-cm', DIAL, 588.399, 'kgf·cm'],
    ['20 oz-in', DIAL, 141.23103628452085, 'ozf·in'],
    ['45 °C', WARMEST, 45, '°C'],
    ['45 C', WARMEST, 45, '°C'],
    ['113 °F', WARMEST, 45, '°F'],
    ['113F', WARMEST, 45, '°F'],
    ['\u22125', WARMEST, -5, '°C'],
    ['-40 °F', WARMEST, -40, '°F'],
    ['303.15 K', WARMEST, 30, 'K'],
    ['1 year', DURATION, 8760, 'year'],
    ['2', DURATION, 17520, 'year'],
    ['3 weeks', DURATION, 504, 'week'],
    ['6 months', DURATION, 4380, 'month'],
    ['20 %', INFILL, 0.2, '%'],
    ['20', INFILL, 0.2, '%'],
    ['15%', INFILL, 0.15, '%'],
    ['30°', LEAN, Math.PI / 6, '°'],
    ['30 deg', LEAN, Math.PI / 6, '°'],
    ['1,234,567', TEN_YEARS_OF_MM, 1234567, 'mm'],
    ['1234,567', TEN_YEARS_OF_MM, 1234.567, 'mm'],
  ])('reads %s', (text, definition, value, typedUnit) => {
    const parsed = parsePlain(text, definition);
    expect(parsed).toMatchObject({ kind: 'quantity', typedUnit });
    expectRelative(parsed.kind === 'quantity' ? parsed.value : Number.NaN, value, 1e-15);
  });

  test('knows a bare number from one with a unit and from a fraction', () => {
    expect(parsePlain('4,25', KNURL)).toMatchObject({ isBareNumber: true, unitWasTyped: false });
    expect(parsePlain('4,25 mm', KNURL)).toMatchObject({ isBareNumber: false, unitWasTyped: true });
    expect(parsePlain('33/8', KNURL)).toMatchObject({
      isBareNumber: false,
      unitWasTyped: false,
      value: 4.125,
    });
  });
});

describe('parsePlain, refusals', () => {
  test.each<[string, QuantityDefinition, object]>([
    ['', KNURL, { code: 'empty' }],
    [' \u00a0 ', KNURL, { code: 'empty' }],
    ['thick', KNURL, { code: 'not-a-number' }],
    ['4..3', KNURL, { code: 'not-a-number' }],
    ['4.2.5', KNURL, { code: 'not-a-number' }],
    ['1,25,000', PULL, { code: 'not-a-number' }],
    ['4'.repeat(121), KNURL, { code: 'too-long', limit: 120 }],
    ['1e999', KNURL, { code: 'not-finite' }],
    ['3/0', KNURL, { code: 'not-finite' }],
    ['4.1 furlong', KNURL, { code: 'unit-unknown', unit: 'furlong' }],
    ['9 mm²', KNURL, { code: 'unit-unknown', unit: 'mm²' }],
    ['180 mm', PULL, { code: 'wrong-kind', found: 'length', wanted: 'force', unit: 'mm' }],
    ['0.6 N', DIAL, { code: 'wrong-kind', found: 'force', wanted: 'torque', unit: 'N' }],
    ['5 N·m', PULL, { code: 'wrong-kind', found: 'torque', wanted: 'force', unit: 'N·m' }],
    ['45°', WARMEST, { code: 'wrong-kind', found: 'angle', wanted: 'temperature', unit: '°' }],
    ['1,000', PULL, { code: 'ambiguous-separator', typed: '1,000', asPoint: '1.000', asThousands: '1000' }],
    [
      '12,345 N',
      PULL,
      { code: 'ambiguous-separator', typed: '12,345', asPoint: '12.345', asThousands: '12345' },
    ],
    ['-3', PULL, { code: 'negative', value: -3 }],
    ['-61', WARMEST, { code: 'below-limit', value: -61, limit: -60, inclusive: true }],
    ['0', LID, { code: 'below-limit', value: 0, limit: 0, inclusive: false }],
    ['4000.5', PULL, { code: 'above-limit', value: 4000.5, limit: 4000, inclusive: true }],
    ['10 kN', PULL, { code: 'above-limit', value: 10000, limit: 4000, inclusive: true }],
  ])('of "%s"', (text, definition, refusal) => {
    expect(parsePlain(text, definition)).toEqual({ kind: 'refused', ...refusal });
  });

  test('ends where the limits say: on the limit, or just beside it', () => {
    expect(parsePlain('4000', PULL).kind).toBe('quantity');
    expect(parsePlain('2.4', KNURL).kind).toBe('quantity');
    expect(parsePlain('2.3999', KNURL)).toMatchObject({ code: 'below-limit' });
    expect(parsePlain('26', { ...KNURL, maxInclusive: false })).toMatchObject({
      code: 'above-limit',
      inclusive: false,
    });
  });
});

describe('parsePlain, likely causes beside a refused limit', () => {
  test.each<[string, QuantityDefinition, object | undefined]>([
    ['0.181', KNURL, { cause: 'inches-as-mm', proposal: 0.181 * 25.4 }],
    ['2.1', KNURL, { cause: 'radius-as-diameter', proposal: 4.2 }],
    ['42.5', KNURL, { cause: 'decimal-slip', proposal: 4.25 }],
    ['425', KNURL, { cause: 'decimal-slip', proposal: 4.25 }],
    ['0.181 mm', KNURL, undefined],
    ['0.01', KNURL, undefined],
    ['2.1', { ...KNURL, isDiameter: false }, undefined],
    ['32', LID, undefined],
  ])('of "%s"', (text, definition, likely) => {
    const parsed = parsePlain(text, definition);
    expect('code' in parsed ? parsed.code : parsed.kind).toMatch(/^(below|above)-limit$/);
    expect('likely' in parsed ? parsed.likely : undefined).toEqual(likely);
  });
});

describe('parsePlain, what it leaves to the engine', () => {
  test.each(['4.25+0.3', '(4.2+4.3)/2', '4.5 mm + 0.01 in', '1 1/4 in', '5 in to mm', 'sqrt(16)'])(
    '%s',
    (text) => {
      expect(parsePlain(text, KNURL)).toEqual({ kind: 'needs-engine' });
    },
  );
});
