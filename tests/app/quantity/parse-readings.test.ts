import { describe, expect, test } from 'vitest';
import { parseReadings } from '../../../src/app/quantity/parse-readings.ts';
import fc from '../../support/fast-check.ts';
import { DIAL, KNURL } from './fields-of-tests.ts';

/** For hundreds of texts on a busy computer, ms. */
const PATIENCE = 60_000;

const valuesOf = (text: string) => {
  const parsed = parseReadings(text, KNURL);
  return parsed.kind === 'readings' ? parsed.readings.map((reading) => reading.value) : parsed.code;
};

describe('parseReadings, right answers', () => {
  test.each<[string, number[]]>([
    ['4.24', [4.24]],
    ['4.24 4.26 4.25', [4.24, 4.26, 4.25]],
    ['4,24; 4,26 4,25', [4.24, 4.26, 4.25]],
    ['4,24;4,26;4,25;', [4.24, 4.26, 4.25]],
    ['4.24, 4.26, 4.25', [4.24, 4.26, 4.25]],
    ['4.24,4.26,4.25', [4.24, 4.26, 4.25]],
    ['4.24 / 4.26 / 4.25', [4.24, 4.26, 4.25]],
    ['4.24\n4.26\r\n\r\n4.25\n', [4.24, 4.26, 4.25]],
    ['4.24\t4.26', [4.24, 4.26]],
    ['4.24 mm 4.26mm 0.25 in', [4.24, 4.26, 6.35]],
    ['0.25 in / 4.26 / 1/4 in', [6.35, 4.26, 6.35]],
  ])('of %j', (text, values) => {
    expect(valuesOf(text)).toEqual(values);
  });

  test('reads torques whose unit is two words, and a driver’s settings between dots', () => {
    expect(parseReadings('8 in lb; 0.5 N m', DIAL)).toMatchObject({
      readings: [{ typedUnit: 'lbf·in' }, { typedUnit: 'N·m', value: 500 }],
    });
    expect(parseReadings('0.25 · 0.40 · 0.6', DIAL)).toMatchObject({
      readings: [{ value: 250 }, { value: 400 }, { value: 600 }],
    });
  });
});

describe('parseReadings, refusals', () => {
  test('names each bad reading by its place', () => {
    expect(parseReadings('4.24; thick; 4.26 42.5 4.1 ells 4.2 ± 0.1', KNURL)).toEqual({
      kind: 'refused',
      code: 'bad-readings',
      bad: [
        { position: 2, text: 'thick', refusal: { kind: 'refused', code: 'not-a-number' } },
        {
          position: 4,
          text: '42.5',
          refusal: {
            kind: 'refused',
            code: 'above-limit',
            value: 42.5,
            limit: 26,
            inclusive: true,
            likely: { cause: 'decimal-slip', proposal: 4.25 },
          },
        },
        { position: 5, text: '4.1 ells', refusal: { kind: 'refused', code: 'unit-unknown', unit: 'ells' } },
        { position: 6, text: '4.2 ±', refusal: { kind: 'refused', code: 'not-understood', part: '4.2 ±' } },
        {
          position: 7,
          text: '0.1',
          refusal: { kind: 'refused', code: 'below-limit', value: 0.1, limit: 2.4, inclusive: true },
        },
      ],
    });
  });

  test.each<[string, object]>([
    ['', { code: 'empty' }],
    [' ; \n', { code: 'empty' }],
    ['4 '.repeat(301), { code: 'too-long', limit: 600 }],
    ['4.24', { code: 'too-few', count: 1, least: 2 }],
    ['4.24 4.25 4.26 4.27', { code: 'too-many', count: 4, most: 3 }],
  ])('of %j', (text, refusal) => {
    expect(parseReadings(text, KNURL, { least: 2, most: 3 })).toEqual({ kind: 'refused', ...refusal });
  });

  test('asks about a comma before three digits in a reading', () => {
    expect(parseReadings('4,240 4,26', KNURL)).toMatchObject({
      bad: [{ position: 1, refusal: { code: 'ambiguous-separator', asPoint: '4.240', asThousands: '4240' } }],
    });
  });
});

describe('parseReadings, laws', () => {
  test(
    'reads back what it is given, with any separator and either decimal mark',
    () => {
      const reading = fc.integer({ min: 240, max: 2600 }).map((hundredths) => hundredths / 100);
      const separator = fc.constantFrom(' ', '; ', ';', '\n', ' / ', ', ');
      fc.assert(
        fc.property(
          fc.array(reading, { minLength: 1, maxLength: 9 }),
          separator,
          fc.boolean(),
          (readings, between, comma) => {
            const written = readings
              .map((one) => (comma ? String(one).replace('.', ',') : String(one)))
              .join(between);
            expect(valuesOf(written)).toEqual(readings);
          },
        ),
        { seed: 49 },
      );
    },
    PATIENCE,
  );

  test(
    'never throws',
    () => {
      fc.assert(
        fc.property(fc.string({ maxLength: 80, unit: 'binary' }), (text) => {
          expect(['readings', 'refused']).toContain(parseReadings(text, KNURL).kind);
        }),
        { numRuns: 300, seed: 50 },
      );
    },
    PATIENCE,
  );
});
