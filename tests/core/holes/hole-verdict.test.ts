import { describe, expect, test } from 'vitest';
import { depthNeeded, type HoleAndInsert, holeVerdict } from '../../../src/core/holes/hole-verdict.ts';
import fc from '../../support/fast-check.ts';
import { given } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

/** Pilot 4.25, knurl 5.0, wanted bore 4.30 mm: bites enough up to 5 − 0.7 · 0.7 = 4.51 mm. */
const usual = { pilot: 4.25, knurl: 5, intended: 4.3, depthNeeded: 5.63 };
const inBore = (bore: number, depth?: number): HoleAndInsert => ({
  ...usual,
  bore,
  ...(depth === undefined ? {} : { depth }),
});

describe('holeVerdict', () => {
  test.each([
    [4.1, 'too-small'],
    [4.149, 'too-small'],
    [4.151, 'tight'],
    [4.249, 'tight'],
    [4.25, 'fits'],
    [4.3, 'fits'],
    [4.509, 'fits'],
    [4.511, 'loose'],
    [4.99, 'loose'],
    [5, 'no-bite'],
    [5.2, 'no-bite'],
  ] as const)(
    'of a bore of %f mm for pilot 4.25 and knurl 5.0 mm is %s (hand calculation)',
    (bore, wanted) => {
      expect(holeVerdict(inBore(bore))).toBe(wanted);
    },
  );

  test.each([
    ['a bore that fits', 4.33, 5.5, 'too-shallow'],
    ['a loose one', 4.7, 5.5, 'too-shallow'],
    ['one without bite: no depth helps', 5.1, 5.5, 'no-bite'],
    ['one that is too small', 4.02, 5.5, 'too-small'],
    ['a bore that fits, as deep as needed', 4.33, 5.63, 'fits'],
  ] as const)('names the gravest fault first: %s', (_, bore, depth, wanted) => {
    expect(holeVerdict(inBore(bore, depth))).toBe(wanted);
  });

  test('tells 4.7 from 4.8 mm as drawn on a knurl of 5.0 mm apart only by bite (trade-practice: 0.1 mm decided it)', () => {
    // Drawn holes close by about 0.24 mm: bores of 4.46 and 4.56 mm.
    expect(holeVerdict(inBore(4.46))).toBe('fits');
    expect(holeVerdict(inBore(4.56))).toBe('loose');
  });

  test('a wider bore never comes nearer to being too small', () => {
    const order = ['too-small', 'tight', 'fits', 'loose', 'no-bite'];
    const bore = fc.double({ min: 3.7, max: 5.3, noNaN: true });
    fc.assert(
      fc.property(bore, fc.double({ min: 0, max: 0.5, noNaN: true }), (one, more) => {
        const [narrow, wide] = [holeVerdict(inBore(one)), holeVerdict(inBore(one + more))];
        expect(order.indexOf(wide)).toBeGreaterThanOrEqual(order.indexOf(narrow));
      }),
    );
  });
});

describe('depthNeeded', () => {
  const length = given('L', 5.3, 'mm');
  test('is insert, melt and how far it is sunk: 0.2 + 5.3 + 0.61 mm (hand calculation)', () => {
    expectRelative(depthNeeded({ sunk: 0.2, length, meltHeight: given('m', 0.61, 'mm') }).value, 6.11);
  });
  test('is the insert alone where the melt goes on', () => {
    expectRelative(depthNeeded({ sunk: 0.2, length }).value, 5.5);
  });
});
