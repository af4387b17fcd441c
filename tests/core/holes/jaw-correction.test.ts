import { describe, expect, test } from 'vitest';
import { boreBetweenJaws, boreBetweenJawsOf } from '../../../src/core/holes/jaw-correction.ts';
import fc from '../../support/fast-check.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const FLATS = [0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.0] as const;
/** What jaws read too little, worked out apart from the program by the chord of a circle, mm. */
const SHORT = [
  [3, ['0.007', '0.015', '0.027', '0.042', '0.061', '0.109', '0.172']],
  [4, ['0.005', '0.011', '0.020', '0.031', '0.045', '0.081', '0.127']],
  [5, ['0.004', '0.009', '0.016', '0.025', '0.036', '0.064', '0.101']],
  [6, ['0.003', '0.008', '0.013', '0.021', '0.030', '0.054', '0.084']],
  [8, ['0.003', '0.006', '0.010', '0.016', '0.023', '0.040', '0.063']],
] as const;
const cells = SHORT.flatMap(([bore, row]) =>
  row.map((short, index) => [bore, FLATS[index] ?? 0, short] as const),
);

describe('boreBetweenJaws', () => {
  test.each(cells)(
    'adds to jaws in a bore of %f mm with flats of %f mm: %s mm (worked apart)',
    (bore, flat, short) => {
      // The chord that such flats leave in the bore, from Pythagoras on its radius.
      const between = 2 * Math.sqrt((bore / 2) ** 2 - (flat / 2) ** 2);
      const found = boreBetweenJaws(given('R_j', between, 'mm'), flat).value;
      expectPublished(found - between, short);
      expectRelative(found, bore);
    },
  );
  test('of 0.3 mm on 5 mm is the 0.009 mm that makers of calipers publish (from memory)', () => {
    expectPublished(boreBetweenJawsOf({ between: 4.991, flat: 0.3 }) - 4.991, '0.009');
  });
  test('is the reading itself between knife edges', () => {
    expect(boreBetweenJaws(given('R_j', 4.37, 'mm'), 0)).toMatchObject({ symbol: 'D_m', value: 4.37 });
  });
  test('scales with hole and jaws, and grows with the flats', () => {
    const size = fc.double({ min: 1, max: 20, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: 0.05, max: 2, noNaN: true }), (between, flat) => {
        const bore = boreBetweenJawsOf({ between, flat });
        expectRelative(boreBetweenJawsOf({ between: 3 * between, flat: 3 * flat }), 3 * bore);
        expect(boreBetweenJawsOf({ between, flat: 1.1 * flat })).toBeGreaterThan(bore);
        expect(bore).toBeGreaterThan(between);
      }),
    );
  });
});
