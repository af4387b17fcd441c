import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { errorBand, nextHoleEnds } from '../../../src/core/holes/error-band.ts';
import { printError } from '../../../src/core/holes/print-error.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import reference from '../../fixtures/r-holes/holes.json' with { type: 'json' };
import fc from '../../support/fast-check.ts';
import { readingOf } from '../../support/hole-readings.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const NONE = calibrateHoles(UNCALIBRATED_HOLES, []);
const five = reference.posterior.five;
const FIVE = calibrateHoles(
  UNCALIBRATED_HOLES,
  five.drawn.map((drawn, index) =>
    readingOf({ drawn, error: five.error[index] ?? 0, standardUncertainty: five.u[index] ?? 0 }),
  ),
);

describe('errorBand', () => {
  test('without readings at 4 mm is ±0.196 mm for the curve, ±0.222 mm for a hole (hand calculation)', () => {
    // √(0.1² + 0.05²) = 0.1118; degrees of freedom 4 · (0.1118/0.05)⁴ = 100, t = 1.984
    const { expected, curve, nextHole } = errorBand(NONE, 4, 0.95);
    expect(expected).toBe(-0.28);
    expectPublished(curve.high - expected, '0.196');
    expectPublished(nextHole.high - expected, '0.222');
  });
  test('for the next hole is that of the whole mixture within 4 % of its width (R: integrated over the scatter)', () => {
    for (const [calibration, found] of [[FIVE, five.found]] as const) {
      const { low, high } = errorBand(calibration, reference.asked, 0.95).nextHole;
      const width = found.high - found.low;
      expect(Math.abs(low - found.low)).toBeLessThan(0.04 * width);
      expect(Math.abs(high - found.high)).toBeLessThan(0.04 * width);
    }
  });
  test('is narrowest where the readings are', () => {
    const width = (drawn: number) => {
      const { low, high } = errorBand(FIVE, drawn, 0.95).curve;
      return high - low;
    };
    expect(width(5)).toBeLessThan(width(3));
    expect(width(5)).toBeLessThan(width(9.5));
    expect(width(14)).toBeGreaterThan(width(9.5));
  });
  test('lies about the expected error, the hole outside the curve, wider for a greater share', () => {
    const share = fc.double({ min: 0.05, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1.5, max: 20, noNaN: true }), share, (drawn, part) => {
        const { expected, curve, nextHole } = errorBand(FIVE, drawn, part);
        expectRelative(nextHole.high - expected, expected - nextHole.low, 1e-9);
        expect(nextHole.high).toBeGreaterThan(curve.high);
        expect(nextHole.low).toBeLessThan(curve.low);
        expect(errorBand(FIVE, drawn, part + 0.005).nextHole.high).toBeGreaterThan(nextHole.high);
      }),
    );
  });
});

describe('nextHoleEnds', () => {
  test('without readings at 4 mm are −0.28 ∓ 1.984 · 0.1118 mm (table of t, 100 degrees of freedom)', () => {
    const { low, high } = nextHoleEnds(NONE, 4, 0.95);
    expectPublished(low.value, '-0.502');
    expectPublished(high.value, '-0.058');
    expectPublished(low.entries.find(({ symbol }) => symbol === 't')?.value ?? 0, '1.984');
    const quantile = low.entries.find(({ symbol }) => symbol === 't')?.from;
    expectRelative(quantile?.entries.find(({ symbol }) => symbol === 'ν_e')?.value ?? 0, 100, 1e-9);
  });
  test('are those of the band about the expected error, and what their formulae come to', () => {
    for (const calibration of [NONE, FIVE]) {
      for (const [drawn, share] of [
        [2.3, 0.9],
        [4.55, 0.95],
        [11.7, 0.5],
      ] as const) {
        const { nextHole, expected } = errorBand(calibration, drawn, share);
        const { low, high } = nextHoleEnds(calibration, drawn, share);
        expect(low.value).toBe(nextHole.low);
        expect(high.value).toBe(nextHole.high);
        expect(printError(calibration.behaviour, entry('D_CAD', drawn, 'mm')).value).toBe(expected);
        expectWays([low, high]);
      }
    }
  });
});
