import { describe, expect, test } from 'vitest';
import { fitWindow } from '../../../src/core/holes/fit-window.ts';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import fc from '../../support/fast-check.ts';
import { given, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const insert = insertDimensions(theInsert({ knurlDiameter_mm: [5], pilotDiameter_mm: [4.25] }));
const bore = given('D_t', 4.3, 'mm');
const windowAt = (expected: number, standardDeviation: number) =>
  fitWindow(insert, bore, {
    expected: entry('D', expected, 'mm'),
    standardDeviation: entry('s', standardDeviation, 'mm'),
  });

describe('fitWindow', () => {
  test('of pilot 4.25, knurl 5.0, bore 4.30 mm is 4.15 to 4.51 mm (hand calculation)', () => {
    const { smallest, largest } = windowAt(4.3, 0.11);
    expectPublished(smallest.value, '4.15');
    expectPublished(largest.value, '4.51');
  });
  test('of a normal bore in its middle is hit as the normal distribution says: 0.6827, 0.9545 at 1 and 2 s', () => {
    // The window is 0.36 mm wide: s = 0.18 and 0.09 mm.
    expectPublished(windowAt(4.33, 0.18).chance.value, '0.6827');
    expectPublished(windowAt(4.33, 0.09).chance.value, '0.9545');
  });
  test('is hit half the time by a narrow bore that stands at one of its ends', () => {
    expectRelative(windowAt(4.15, 0.001).chance.value, 0.5, 1e-9);
    expectRelative(windowAt(4.51, 0.001).chance.value, 0.5, 1e-9);
  });
  test('is as likely hit from the same distance on either side of its middle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        (distance, s) => {
          const { chance } = windowAt(4.33 + distance, s);
          expectRelative(1 + chance.value, 1 + windowAt(4.33 - distance, s).chance.value, 1e-9);
          expect(chance.value).toBeGreaterThanOrEqual(0);
          expect(chance.value).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
  test('is missed by a bore far away', () => {
    expect(windowAt(6.1, 0.04).chance.value).toBe(0);
  });
});
