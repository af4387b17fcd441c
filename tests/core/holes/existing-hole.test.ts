import { describe, expect, test } from 'vitest';
import {
  boreOfDrawn,
  type ExistingHole,
  givenDepth,
  givenDiameter,
  measuredBore,
  measuredDeviationOf,
} from '../../../src/core/holes/existing-hole.ts';
import { printError } from '../../../src/core/holes/print-error.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const measured: ExistingHole = { diameter: 4.42, known: 'as-measured', permissibleError: 0.03 };
const drawn: ExistingHole = { diameter: 4.7, known: 'as-drawn', permissibleError: 0 };

describe('measuredBore', () => {
  test('is the measured diameter, known by measurement', () => {
    expect(measuredBore(measured)).toMatchObject({ symbol: 'D_t', value: 4.42, standing: 'measured' });
    expect(givenDiameter(measured).value).toBe(4.42);
  });
});

describe('boreOfDrawn', () => {
  test('drawn at 4.7 mm comes out −0.28 + 0.23·ln(4.7/4) = 0.2429 mm small (hand calculation)', () => {
    expectRelative(
      boreOfDrawn(drawn, printError(UNCALIBRATED_HOLES, entry('D_g', 4.7, 'mm'))).value,
      4.457_091_7,
      1e-7,
    );
  });
  test('keeps the standing of the printer’s curve', () => {
    expect(boreOfDrawn(drawn, printError(UNCALIBRATED_HOLES, entry('D_g', 4.7, 'mm'))).standing).toBe(
      'estimate',
    );
  });
});

describe('givenDepth', () => {
  test('is the depth as it was given', () => {
    expect(givenDepth(6.3)).toMatchObject({ symbol: 'T', value: 6.3, unit: 'mm', standing: 'measured' });
  });
});

describe('measuredDeviationOf', () => {
  test('of ±0.03 mm and 0.05 mm out of round is √(0.03² + 0.05²)/√3 = 0.03367 mm (hand calculation)', () => {
    expectRelative(measuredDeviationOf({ permissibleError: 0.03 }, 0), 0.033_665, 1e-6);
  });
  test('adds the uncertainty of the pilot as a square', () => {
    expectRelative(measuredDeviationOf({ permissibleError: 0.03 }, 0.02), 0.039_158, 1e-5);
  });
  test('is never zero, so that no chance is certain', () => {
    expectRelative(measuredDeviationOf({ permissibleError: 0 }, 0), 0.028_867_5, 1e-6);
  });
  test('grows with the caliper’s error', () => {
    const error = fc.double({ min: 0, max: 0.19, noNaN: true });
    fc.assert(
      fc.property(error, (one) => {
        const [less, more] = [one, one + 0.01].map((permissibleError) =>
          measuredDeviationOf({ permissibleError }, 0.017),
        );
        expect(more).toBeGreaterThan(less ?? Number.POSITIVE_INFINITY);
      }),
    );
  });
});
