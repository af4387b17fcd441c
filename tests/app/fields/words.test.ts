import { beforeAll, describe, expect, test } from 'vitest';
import { readingsWords } from '../../../src/app/fields/readings-words.ts';
import { rangeWords, refusalWords } from '../../../src/app/fields/words.ts';
import { parseNow, warmUp } from '../../../src/app/quantity/parse-quantity.ts';
import { parseReadings } from '../../../src/app/quantity/parse-readings.ts';
import type { QuantityDefinition } from '../../../src/app/quantity/quantity-definition.ts';
import { DIAL, DURATION, KNURL, LID, PULL, WARMEST } from '../quantity/fields-of-tests.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

function wordsFor(text: string, definition: QuantityDefinition, value: number | null, noun?: string) {
  const parsed = parseNow(text, definition);
  if (parsed.kind !== 'refused') throw new Error(`"${text}" was taken`);
  const { message, repairs } = refusalWords(parsed, { definition, text, value, noun });
  return { message: plain(message), repairs: repairs.map((one) => `${plain(one.label)}: ${one.text}`) };
}

/** For loading the engine on a busy computer, ms. */
const PATIENCE = 60_000;
beforeAll(warmUp, PATIENCE);

describe('refusalWords', () => {
  test.each<[string, QuantityDefinition, number | null, string | undefined, string]>([
    ['180 mm', PULL, 180, 'A pull', 'A pull is a force; mm is a length. Type it as 180 N or 18 kgf.'],
    ['2 N', DIAL, 600, 'A torque', 'A torque is a torque; N is a force. Type it as 0.60 N·m or 5.3 lbf·in.'],
    ['3 N * 2 m', LID, 3, 'A lid', 'A lid is a length; the sum is a torque. Type it as 3.0 mm or 0.12 in.'],
    [
      '4 mm^2',
      LID,
      3,
      undefined,
      'This value is a length; the sum is something else. Type it as 3.0 mm or 0.12 in.',
    ],
    ['', WARMEST, 45, undefined, 'The field is empty. Type it as 45 °C or 113 °F.'],
    ['', DURATION, 8760, undefined, 'The field is empty. Type it as 1 year.'],
    ['thick', KNURL, null, undefined, 'There is no number that can be read. Type it as 3.10 mm or 0.12 in.'],
    ['thick', PULL, null, undefined, 'There is no number that can be read. Type it as 0 N.'],
    [
      '4 ells',
      KNURL,
      5,
      undefined,
      '“ells” is not a unit known here. A length can be in mm, cm, in or thou.',
    ],
    [
      '4 mm + 3',
      KNURL,
      5,
      undefined,
      'The parts of the sum do not go together. Give every part a unit of one kind, or none.',
    ],
    ['(4', KNURL, 5, undefined, 'The sum is not complete. It can be as 4.25 + 0.3, with brackets.'],
    [
      '4 5',
      KNURL,
      5,
      undefined,
      '“5” is not understood at its place. A sum can be as 4.25 + 0.3, with brackets.',
    ],
    [
      'sin(4)',
      KNURL,
      5,
      undefined,
      '“sin” has no place here: numbers, units, + − × / ^, brackets and sqrt do.',
    ],
    ['1/(1-1)', KNURL, 5, undefined, 'The sum has no finite result.'],
    ['4'.repeat(130), KNURL, 5, undefined, 'The text is longer than 120 characters.'],
    ['-3', PULL, 180, 'A pull', 'A pull cannot be below zero; −3 N is.'],
    ['0', LID, 3, 'A lid', 'A lid must be more than 0.0 mm; 0.0 mm is not.'],
    ['32.05', LID, 3, undefined, 'This value must be at most 31.0 mm; 32.05 mm is not.'],
  ])('of "%s"', (text, definition, value, noun, message) => {
    expect(wordsFor(text, definition, value, noun)).toEqual({ message, repairs: [] });
  });

  test('offers inches where they were taken for millimetres', () => {
    expect(wordsFor('0.181', KNURL, 5, 'A knurl')).toEqual({
      message:
        'A knurl must be at least 2.40 mm; 0.181 mm is not. Is it in inches? 0.181 in would be 4.5974 mm.',
      repairs: ['Take 0.181 in: 0.181 in'],
    });
  });

  test('offers the decimal point that is missing, and the diameter of a radius', () => {
    expect(wordsFor('425', KNURL, 5).repairs).toEqual(['Take 4.25 mm: 4.25']);
    expect(wordsFor('2.1', KNURL, 5).repairs).toEqual(['Take 4.20 mm: 4.20']);
  });

  test('asks which of two numbers a comma means, the unit kept', () => {
    expect(wordsFor('1,250 N', PULL, 180)).toEqual({
      message: '1,250 can mean 1250 or 1.250. Which one?',
      repairs: ['Take 1250: 1250 N', 'Take 1.250: 1.250 N'],
    });
  });

  test('says that sums cannot be worked out where the engine is missing', () => {
    const facts = { definition: KNURL, text: '4+1', value: 5 };
    expect(refusalWords({ kind: 'refused', code: 'engine-missing' }, facts).message).toMatch(/did not load/);
  });
});

describe('readingsWords', () => {
  const messageOf = (text: string) => {
    const parsed = parseReadings(text, KNURL, { least: 2, most: 5 });
    if (parsed.kind !== 'refused') throw new Error(`"${text}" was taken`);
    return plain(readingsWords(parsed, { definition: KNURL, text, value: 5 }).message);
  };

  test.each([
    ['', 'The field is empty. Type the readings with a blank or a semicolon between: 4.24; 4.26.'],
    ['4.2', 'At least 2 readings are needed; here are 1.'],
    ['4 4 4 4 4 4', 'At most 5 readings fit; here are 6.'],
    [
      '4.2 4.3 ells',
      'Reading 2, “4.3 ells”: “ells” is not a unit known here. A length can be in mm, cm, in or thou.',
    ],
    ['4 '.repeat(301), 'The text is longer than 600 characters.'],
  ])('of "%s"', (text, message) => {
    expect(messageOf(text)).toBe(message);
  });

  test('describes three bad readings and names the others by their places', () => {
    const message = messageOf('90; 4.2; 91; 92; 93; 94');
    expect(message).toMatch(/^Reading 1, “90”: .* Reading 3, “91”: .* Reading 4, “92”: /);
    expect(message).toMatch(/Not taken either: 5, 6\.$/);
  });
});

describe('rangeWords', () => {
  test.each<[QuantityDefinition, string]>([
    [KNURL, 'At least 2.40 mm, at most 26.00 mm. Arrow keys step by 0.05 mm.'],
    [LID, 'More than 0.0 mm, at most 31.0 mm. Arrow keys step by 0.1 mm.'],
    [{ ...DIAL, maxInclusive: false }, 'At least 0.00 N·m, less than 5.30 N·m. Arrow keys step by 0.01 N·m.'],
    [{ kind: 'ratio', displayUnit: '-', step: 0.1 }, 'Arrow keys step by 0.1.'],
  ])('tells both ends and the step', (definition, words) => {
    expect(plain(rangeWords(definition))).toBe(words);
  });
});
