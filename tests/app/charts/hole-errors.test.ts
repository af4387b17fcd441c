import { describe, expect, test } from 'vitest';
import { holeErrors } from '../../../src/app/charts/hole-errors.ts';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { errorBand } from '../../../src/core/holes/error-band.ts';
import { printErrorOf } from '../../../src/core/holes/print-error.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import { holeReading } from '../../support/hole-readings.ts';

const PRIOR = CATALOGUE.uncalibratedHoles;
const READ = calibrateHoles(PRIOR, [holeReading(3.5, 3.33), holeReading(4.7, 4.61), holeReading(12.2, 12.1)]);
const NONE = calibrateHoles(PRIOR, []);

describe('holeErrors', () => {
  test('has every hole, its number in the table and all of its bar within round scales', () => {
    const { marks, diameters, errors } = holeErrors(READ, { places: [0, 2, 5], wanted: 4.55 });
    expect(marks.map(({ number, drawn }) => [number, drawn])).toEqual([
      [1, 3.5],
      [3, 4.7],
      [6, 12.2],
    ]);
    expect(diameters.at(-1)).toBeGreaterThanOrEqual(12.2);
    for (const { error, standardUncertainty } of marks) {
      expect(error - standardUncertainty).toBeGreaterThanOrEqual(errors[0] ?? 0);
      expect(error + standardUncertainty).toBeLessThanOrEqual(errors.at(-1) ?? 0);
    }
  });
  test('has room for the bar of a hole that is far off and hardly known', () => {
    // The bore is 3 mm, 1 mm small, and known to 1 mm/√12.
    const far = holeReading(4, 2.5, { instrument: 'pin-gauge', gaugeStep: 1 });
    const { errors } = holeErrors(calibrateHoles(PRIOR, [far]), { places: [0] });
    expect(errors[0]).toBeLessThanOrEqual(-1 - 1 / Math.sqrt(12));
  });
  test('draws curve and prior of the core, and the band that 9 of 10 next holes lie in', () => {
    const { rows, samples } = holeErrors(READ, { places: [] });
    const row = rows.find(({ drawn }) => drawn === 6);
    const { nextHole } = errorBand(READ, 6, 0.9);
    expect(row).toEqual({
      drawn: 6,
      expected: printErrorOf(READ.behaviour, 6),
      prior: printErrorOf(PRIOR, 6),
      band: [nextHole.low, nextHole.high],
    });
    for (const { expected, band } of samples) {
      expect(band[0]).toBeLessThan(expected);
      expect(band[1]).toBeGreaterThan(expected);
    }
  });
  test('without a reading is the prior itself', () => {
    const { samples, marks } = holeErrors(NONE, { places: [] });
    expect(marks).toEqual([]);
    for (const { expected, prior } of samples) expect(expected).toBe(prior);
  });
  test.each([0.2, 0.9, 59.3])('stays finite and reaches a wanted hole of %f mm', (wanted) => {
    const { samples, diameters, errors } = holeErrors(NONE, { places: [], wanted });
    expect(samples[0]?.drawn).toBeLessThan(wanted);
    expect(diameters.at(-1)).toBeGreaterThanOrEqual(wanted);
    for (const { expected, band, prior } of samples) {
      for (const value of [expected, ...band, prior]) {
        expect(value).toBeGreaterThanOrEqual(errors[0] ?? Infinity);
        expect(value).toBeLessThanOrEqual(errors.at(-1) ?? -Infinity);
      }
    }
  });
});
