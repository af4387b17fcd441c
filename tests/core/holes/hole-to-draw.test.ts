import { describe, expect, test } from 'vitest';
import {
  drawnDiameterOf,
  exactDiameter,
  holeToDraw,
  roundedToStep,
} from '../../../src/core/holes/hole-to-draw.ts';
import { printErrorOf } from '../../../src/core/holes/print-error.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import fc from '../../support/fast-check.ts';
import { MEASURED_FIT, PUBLISHED_FIT } from '../../support/holes.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const bore = (value: number) => given('D_t', value, 'mm');
const anyBore = fc.double({ min: 1.5, max: 27, noNaN: true });
const anyPrinter = fc.constantFrom(UNCALIBRATED_HOLES, PUBLISHED_FIT, MEASURED_FIT);

describe('drawnDiameterOf', () => {
  test.each([
    [3.0, '3.34'],
    [4.0, '4.29'],
    [4.2, '4.48'],
    [5.0, '5.24'],
    [5.6, '5.82'],
    [6.0, '6.20'],
    [8.0, '8.14'],
  ])('for a printed %f mm by the published fit is %s mm (hole-metrology-note)', (wanted, printed) => {
    expectPublished(drawnDiameterOf(PUBLISHED_FIT, wanted), printed);
  });
  test('is the inverse of printing', () => {
    fc.assert(
      fc.property(anyPrinter, anyBore, (printer, wanted) => {
        const drawn = drawnDiameterOf(printer, wanted);
        expectRelative(drawn + printErrorOf(printer, drawn), wanted, 1e-12);
      }),
    );
  });
  test('grows with the wanted bore, across the ceiling too', () => {
    fc.assert(
      fc.property(anyPrinter, anyBore, (printer, wanted) => {
        expect(drawnDiameterOf(printer, wanted + 0.01)).toBeGreaterThan(drawnDiameterOf(printer, wanted));
      }),
    );
    expectRelative(drawnDiameterOf(PUBLISHED_FIT, 13.7), 13.8);
  });
});

describe('exactDiameter', () => {
  test('leads to the wanted bore and to the curve, and comes to the bore with its own error', () => {
    const exact = exactDiameter(PUBLISHED_FIT, bore(4.3));
    expectRelative(exact.value + printErrorOf(PUBLISHED_FIT, exact.value), 4.3);
    const way = wayTo(exact);
    expect(way?.value).toBe(exact.value);
    expect(way?.entries.map(({ symbol }) => symbol)).toEqual(['D_t', 'a', 'b', 'e_max']);
    expectWays(way ? [way] : []);
  });
});

describe('holeToDraw', () => {
  const inCad = { behaviour: UNCALIBRATED_HOLES, compensation: 'in-cad', step: 0.05 } as const;
  test('for a bore of 4.30 mm is 4.55 mm: pilot 4.25 + 0.30 mm (common practice)', () => {
    expect(holeToDraw(bore(4.3), inCad)).toMatchObject({
      value: 4.55,
      unit: 'mm',
      standing: 'estimate',
      source: 'hole-metrology-note',
    });
  });
  test('lies 0.2 to 0.35 mm over the pilot for pilots of 3 to 6.4 mm (common practice: 0.1 to 0.4 on diameter)', () => {
    for (const pilot of [3.05, 3.95, 4.25, 5.15, 6.35]) {
      const over = holeToDraw(bore(pilot + 0.05), inCad).value - pilot;
      expect(over).toBeGreaterThanOrEqual(0.2);
      expect(over).toBeLessThanOrEqual(0.4);
    }
  });
  test('is the bore itself where the slicer compensates: never both', () => {
    const shown = holeToDraw(bore(4.31), { ...inCad, compensation: 'in-slicer' });
    expect(shown).toMatchObject({
      value: 4.3,
      formula: 'round(D_t/step) · step',
      standing: 'common-practice',
    });
  });
  test('is a multiple of the step, at most half a step off the exact one', () => {
    fc.assert(
      fc.property(anyBore, fc.double({ min: 0.01, max: 0.2, noNaN: true }), (wanted, step) => {
        const { value } = holeToDraw(bore(wanted), { ...inCad, step });
        expect(Math.abs(value - drawnDiameterOf(UNCALIBRATED_HOLES, wanted))).toBeLessThanOrEqual(
          step / 2 + 1e-9,
        );
        expect(Math.abs(value / step - Math.round(value / step))).toBeLessThan(1e-6);
      }),
    );
  });
  test('names the own coupons once they speak', () => {
    expect(holeToDraw(bore(5.13), { ...inCad, behaviour: MEASURED_FIT })).toMatchObject({
      source: 'your-measurement',
      standing: 'measured',
    });
  });
});

describe('roundedToStep', () => {
  test.each([
    [4.5749, 0.05, 4.55],
    [4.5751, 0.05, 4.6],
    [4.537, 0.01, 4.54],
    [0.30000000000000004, 0.1, 0.3],
  ])('%f to the step %f is %f', (value, step, rounded) => {
    expect(roundedToStep(value, step)).toBe(rounded);
  });
});
