import { describe, expect, test } from 'vitest';
import { bite, biteFactor, boreAsPrinted } from '../../../src/core/holes/bore.ts';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import fc from '../../support/fast-check.ts';
import { given, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const insert = insertDimensions(theInsert({ knurlDiameter_mm: [5], pilotDiameter_mm: [4.25] }));
const bore = (value: number) => given('D_t', value, 'mm');
const expected = (value: number) => entry('D', value, 'mm');

describe('boreAsPrinted', () => {
  test('is 4.30 mm for a pilot of 4.25 mm (common practice: just over the pilot)', () => {
    expectRelative(boreAsPrinted(insert, 0.05).value, 4.3);
    expect(boreAsPrinted(insert, 0.05).standing).toBe('common-practice');
  });
  test.each([
    [2.6, '2.65'],
    [3.15, '3.20'],
  ])(
    'is the hole of the data sheet for a pilot of %f mm: %s mm (insert-data-sheet, miniature sizes)',
    (pilot, printed) => {
      const small = insertDimensions(
        theInsert({ pilotDiameter_mm: [pilot], knurlDiameter_mm: [pilot + 0.6], thread: 'M2' }),
      );
      expectPublished(boreAsPrinted(small, 0.05).value, printed);
    },
  );
  test('is the pilot itself without fit', () => {
    expect(boreAsPrinted(insert, 0).value).toBe(4.25);
  });
});

describe('bite', () => {
  test('of a knurl of 5.0 in a bore of 4.3 mm is 0.35 mm a side (hand calculation)', () => {
    expectRelative(bite(insert, bore(4.3)).value, 0.35);
  });
});

describe('biteFactor', () => {
  test('of knurl 5, intended 4.3, expected 4.5 mm is 5/7 (hand calculation)', () => {
    expectRelative(biteFactor(insert, bore(4.3), expected(4.5)).value, 5 / 7);
  });
  test('is 1 at the intended bore and below, 0 at the knurl and above', () => {
    expect(biteFactor(insert, bore(4.31), expected(4.31)).value).toBe(1);
    expect(biteFactor(insert, bore(4.31), expected(4.07)).value).toBe(1);
    expect(biteFactor(insert, bore(4.31), expected(5)).value).toBe(0);
    expect(biteFactor(insert, bore(4.31), expected(5.2)).value).toBe(0);
  });
  test('falls in a straight line between them', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        expectRelative(
          1 + biteFactor(insert, bore(4.31), expected(4.31 + 0.69 * share)).value,
          2 - share,
          1e-9,
        );
      }),
    );
  });
});
