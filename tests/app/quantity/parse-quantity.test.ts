import { beforeAll, describe, expect, test, vi } from 'vitest';
import { parseNow, parseQuantity, warmUp } from '../../../src/app/quantity/parse-quantity.ts';
import type { QuantityDefinition } from '../../../src/app/quantity/quantity-definition.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';
import { DIAL, DURATION, INFILL, KNURL, LID, PULL, WARMEST } from './fields-of-tests.ts';

/** For loading the engine and for thousands of texts on a busy computer, ms. */
const PATIENCE = 60_000;

describe('parseNow before the engine is there', () => {
  test('leaves an expression open, but takes a number and refuses what no engine could read', () => {
    expect(parseNow('4.25+0.3', KNURL)).toEqual({ kind: 'needs-engine' });
    expect(parseNow('4.25 mm', KNURL)).toMatchObject({ kind: 'quantity', value: 4.25 });
    expect(parseNow('sin(2)', KNURL)).toMatchObject({ code: 'not-allowed', part: 'sin' });
  });
});

describe('with the engine', () => {
  beforeAll(warmUp, PATIENCE);

  test.each<[string, QuantityDefinition, number, string]>([
    ['4.25+0.3', KNURL, 4.55, 'mm'],
    ['4,25 + 0,3', KNURL, 4.55, 'mm'],
    ['(4.2+4.3)/2', KNURL, 4.25, 'mm'],
    ['(4.2+4.3)/2 mm', KNURL, 4.25, 'mm'],
    ['4.25 + 0.3 mm', KNURL, 4.55, 'mm'],
    ['4.5 mm + 0.01 in', KNURL, 4.754, 'mm'],
    ['2*(1/16 in + 0.2 mm)', KNURL, 3.575, 'in'],
    ['7 × 0.45', LID, 3.15, 'mm'],
    ['9 \u2212 0.5', LID, 8.5, 'mm'],
    ['9 ÷ 4', LID, 2.25, 'mm'],
    ['3/16" + 0.1 mm', KNURL, 4.8625, 'in'],
    ['1 1/8 in - 10 mm', LID, 18.575, 'in'],
    ['1-1/8', LID, 0.875, 'mm'],
    ['sqrt(16.81)', KNURL, 4.1, 'mm'],
    ['sqrt(16 mm^2)', KNURL, 4, 'mm'],
    ['2^3', KNURL, 8, 'mm'],
    ['0.2 in to mm', KNURL, 5.08, 'in'],
    ['6 mm * 4 mm / 5 mm', KNURL, 4.8, 'mm'],
    ['-(3 - 7.5)', KNURL, 4.5, 'mm'],
    ['180 N + 2 kgf', PULL, 199.6133, 'N'],
    ['180 N * 3 mm', DIAL, 540, 'N'],
    ['2 * 0.3 N·m', DIAL, 600, 'N·m'],
    ['8 in-lb + 0.1 Nm', DIAL, 1003.8786322209335, 'lbf·in'],
    ['(44+47)/2 °C', WARMEST, 45.5, '°C'],
    ['1 year + 30 days', DURATION, 9480, 'year'],
    ['10 % + 4 %', INFILL, 0.14, '%'],
    ['3 mm / 8 mm', INFILL, 0.375, 'mm'],
  ])('%s is read', async (text, definition, value, typedUnit) => {
    const parsed = await parseQuantity(text, definition);
    expect(parsed).toMatchObject({ kind: 'quantity', typedUnit, isBareNumber: false });
    expectRelative(parsed.kind === 'quantity' ? parsed.value : Number.NaN, value, 1e-14);
    expect(parseNow(text, definition)).toEqual(parsed);
  });

  test.each<[string, QuantityDefinition, object]>([
    ['4-40', KNURL, { code: 'negative', value: -36 }],
    ['#4-40', KNURL, { code: 'not-allowed', part: '#' }],
    ['a=4', KNURL, { code: 'not-allowed', part: 'a' }],
    ['f(x)=2', KNURL, { code: 'not-allowed', part: 'f' }],
    ['parse("1")', KNURL, { code: 'not-allowed', part: 'parse' }],
    ['evaluate(1)', KNURL, { code: 'not-allowed', part: 'evaluate' }],
    ['mm.constructor(1)', KNURL, { code: 'not-allowed', part: 'mm' }],
    ['[4,5]', KNURL, { code: 'not-allowed', part: '[' }],
    ['{a:1}', KNURL, { code: 'not-allowed', part: '{' }],
    ['4;5', KNURL, { code: 'not-allowed', part: ';' }],
    ['4!', KNURL, { code: 'not-allowed', part: '!' }],
    ['4 ? 5 : 6', KNURL, { code: 'not-allowed', part: '?' }],
    ['unit_0 4', KNURL, { code: 'not-understood', part: 'unit_0' }],
    ['3 in 4', KNURL, { code: 'not-understood', part: '4' }],
    ['5.0 x 5.0', KNURL, { code: 'not-understood', part: '5.0' }],
    ['2(3)', KNURL, { code: 'not-understood', part: '(3)' }],
    ['(4', KNURL, { code: 'not-understood', part: '' }],
    ['4 +', KNURL, { code: 'not-understood', part: '' }],
    ['4 * pi', KNURL, { code: 'not-understood', part: 'pi' }],
    ['4.25 to in', KNURL, { code: 'not-understood', part: '' }],
    ['0.2 in to 3 mm', KNURL, { code: 'not-understood', part: '' }],
    ['0.2 in to N', KNURL, { code: 'not-understood', part: 'to' }],
    ['20 °C + 5 °C', WARMEST, { code: 'not-understood', part: '°C' }],
    ['4 mm + 3', KNURL, { code: 'unit-missing' }],
    ['4 mm + 3 N', KNURL, { code: 'unit-missing' }],
    ['2 + 3 ell', KNURL, { code: 'unit-unknown', unit: 'ell' }],
    ['4 mm^2', KNURL, { code: 'wrong-kind', found: 'other', wanted: 'length', unit: 'mm' }],
    ['180 N * 3 mm', KNURL, { code: 'wrong-kind', found: 'torque', wanted: 'length', unit: 'N' }],
    ['2 * 90 mm', PULL, { code: 'wrong-kind', found: 'length', wanted: 'force', unit: 'mm' }],
    [
      '4 + 1,000',
      PULL,
      { code: 'ambiguous-separator', typed: '1,000', asPoint: '1.000', asThousands: '1000' },
    ],
    ['sqrt(-1)', KNURL, { code: 'not-finite' }],
    ['1/(2-2)', KNURL, { code: 'not-finite' }],
    ['9^9^9^9', KNURL, { code: 'not-finite' }],
    [
      '20 + 30',
      KNURL,
      {
        code: 'above-limit',
        value: 50,
        limit: 26,
        inclusive: true,
        likely: { cause: 'decimal-slip', proposal: 5 },
      },
    ],
    ['1+'.repeat(60).slice(0, -1), KNURL, { code: 'not-allowed' }],
  ])('%s is refused', async (text, definition, refusal) => {
    expect(await parseQuantity(text, definition)).toMatchObject({ kind: 'refused', ...refusal });
  });

  test(
    'gives random text a quantity within the limits or a refusal, and never throws',
    () => {
      const pieces = fc.constantFrom(
        '4',
        '.',
        ',',
        '25',
        ' ',
        '+',
        '-',
        '*',
        '/',
        '^',
        '(',
        ')',
        'mm',
        'in',
        '"',
        'N',
        '·',
        'm',
        'to',
        'sqrt',
        '°C',
        '%',
        'e',
        '=',
        'x',
      );
      const text = fc.oneof(
        fc.string({ maxLength: 130, unit: 'binary' }),
        fc.array(pieces, { maxLength: 24 }).map((all) => all.join('')),
      );
      fc.assert(
        fc.property(text, (typed) => {
          const parsed = parseNow(typed, KNURL);
          expect(['quantity', 'refused']).toContain(parsed.kind);
          if (parsed.kind !== 'quantity') return;
          expect(parsed.value).toBeGreaterThanOrEqual(KNURL.min);
          expect(parsed.value).toBeLessThanOrEqual(KNURL.max);
        }),
        { numRuns: 1000, seed: 45 },
      );
    },
    PATIENCE,
  );

  test(
    'reads a sum of two random lengths as their sum',
    () => {
      const length = fc.integer({ min: 15, max: 120 }).map((tenths) => tenths / 10);
      fc.assert(
        fc.property(length, length, (a, b) => {
          const parsed = parseNow(`${a} mm + ${String(b).replace('.', ',')} mm`, KNURL);
          expectRelative(parsed.kind === 'quantity' ? parsed.value : Number.NaN, a + b, 1e-14);
        }),
        { seed: 46 },
      );
    },
    PATIENCE,
  );
});

describe('without the engine', () => {
  test(
    'an expression is refused as such, and a later try may succeed',
    async () => {
      vi.resetModules();
      vi.doMock('../../../src/app/quantity/expression-engine.ts', () => {
        throw new Error('no network');
      });
      const fresh = await import('../../../src/app/quantity/parse-quantity.ts');
      await fresh.warmUp();
      expect(await fresh.parseQuantity('4.25+0.3', KNURL)).toEqual({
        kind: 'refused',
        code: 'engine-missing',
      });
      expect(await fresh.parseQuantity('4.25', KNURL)).toMatchObject({ kind: 'quantity', value: 4.25 });
      vi.doUnmock('../../../src/app/quantity/expression-engine.ts');
      expect(await fresh.parseQuantity('4.25+0.3', KNURL)).toMatchObject({ kind: 'quantity', value: 4.55 });
    },
    PATIENCE,
  );
});
