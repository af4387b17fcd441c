import { describe, expect, test } from 'vitest';
import type { ReadingNotice, ReadingRefusal } from '../../src/solids/reading.ts';
import { sentenceOfReading, sentenceOfReadingNotice } from '../../src/wording/solids.ts';

const REFUSALS = {
  'empty-file': [{ code: 'empty-file' }, 'empty'],
  'not-a-solid': [{ code: 'not-a-solid' }, 'STL nor a 3MF'],
  'file-too-large': [{ code: 'file-too-large', bytes: 123_400_000, limit: 100_000_000 }, '123.4'],
  'unpacks-too-large': [{ code: 'unpacks-too-large', bytes: 5e8, limit: 4e8 }, '400.0'],
  'too-many-triangles': [{ code: 'too-many-triangles', triangles: 3_400_000, limit: 3_000_000 }, '3,400,000'],
  truncated: [{ code: 'truncated', bytes: 900 }, 'too early'],
  'wrong-length': [{ code: 'wrong-length', bytes: 900, expected: 884 }, 'longer'],
  'damaged-text': [{ code: 'damaged-text', line: 17 }, 'line 17'],
  'not-a-number': [{ code: 'not-a-number', triangle: 23 }, 'Triangle 23'],
  'out-of-range': [{ code: 'out-of-range', coordinate: 1e9, limit: 1e7 }, 'kilometres'],
  'no-triangles': [{ code: 'no-triangles' }, 'no surface'],
  'damaged-zip': [{ code: 'damaged-zip' }, 'damaged'],
  encrypted: [{ code: 'encrypted' }, 'locked'],
  'packed-otherwise': [{ code: 'packed-otherwise', method: 9 }, 'packed'],
  'no-model': [{ code: 'no-model' }, 'no model'],
  'several-models': [{ code: 'several-models', models: 3 }, 'three models'],
  'damaged-model': [{ code: 'damaged-model', part: '3D/3dmodel.model', line: 8 }, '3D/3dmodel.model, line 8'],
  'unknown-unit': [{ code: 'unknown-unit', unit: 'furlong' }, 'furlong'],
  'needs-extension': [{ code: 'needs-extension', extension: 'lattice' }, 'lattice'],
  'missing-object': [{ code: 'missing-object', object: '7' }, 'object 7'],
  'circular-object': [{ code: 'circular-object', object: '4' }, 'Object 4'],
} as const satisfies {
  readonly [Code in ReadingRefusal['code']]: readonly [Extract<ReadingRefusal, { code: Code }>, string];
};

const NOTICES = {
  'very-small': [{ code: 'very-small', extent: 0.41 }, '0.41'],
  'very-large': [{ code: 'very-large', extent: 41_300 }, 'another'],
  'several-parts': [{ code: 'several-parts', parts: 4 }, 'four parts'],
  'left-out': [{ code: 'left-out', triangles: 12 }, '12 triangles'],
} as const satisfies {
  readonly [Code in ReadingNotice['code']]: readonly [Extract<ReadingNotice, { code: Code }>, string];
};

describe('sentenceOfReading', () => {
  test.each(Object.values(REFUSALS))('of %o says %s', (refusal, words) => {
    expect(sentenceOfReading(refusal)).toContain(words);
  });
});
describe('sentenceOfReadingNotice', () => {
  test.each(Object.values(NOTICES))('of %o says %s', (notice, words) => {
    expect(sentenceOfReadingNotice(notice)).toContain(words);
  });
});
