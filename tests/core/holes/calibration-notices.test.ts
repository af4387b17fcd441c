import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { calibrationNotices } from '../../../src/core/holes/calibration-notices.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import { holeReading } from '../../support/hole-readings.ts';

const of = (pairs: readonly (readonly [number, number])[]) =>
  calibrateHoles(
    UNCALIBRATED_HOLES,
    pairs.map(([drawn, measured]) => holeReading(drawn, measured)),
  );

describe('calibrationNotices', () => {
  test('says of no reading that there are few, and beyond the published fit that it is stretched', () => {
    const few = { code: 'few-readings', count: 0, enough: 3 };
    expect(calibrationNotices(of([]), 4.5)).toEqual([few]);
    expect(calibrationNotices(of([]), 3)).toEqual([few]);
    expect(calibrationNotices(of([]), 2.9)).toEqual([
      { code: 'diameter-extrapolated', drawn: 2.9, least: 3, greatest: 10, of: 'published-fit' },
      few,
    ]);
  });
  test('says that two at one diameter are few and say nothing of the slope', () => {
    const two = of([
      [4.5, 4.2],
      [4.55, 4.27],
    ]);
    expect(calibrationNotices(two, 4.52)).toEqual([
      { code: 'few-readings', count: 2, enough: 3 },
      { code: 'one-diameter', diameter: (4.5 + 4.55) / 2, count: 2 },
    ]);
  });
  test('is silent within three diameters that were read, and says when a hole lies outside them', () => {
    const three = of([
      [4, 3.7],
      [5, 4.75],
      [6, 5.78],
    ]);
    expect(calibrationNotices(three, 4)).toEqual([]);
    expect(calibrationNotices(three, 6.01)).toEqual([
      { code: 'diameter-extrapolated', drawn: 6.01, least: 4, greatest: 6, of: 'readings' },
    ]);
  });
  test('counts the outliers', () => {
    const eight = of([
      [3, 2.67],
      [4, 3.72],
      [5, 4.75],
      [6, 5.8],
      [7, 6.79],
      [8, 7.83],
      [9, 8.86],
      [5.5, 6.1],
    ]);
    expect(calibrationNotices(eight, 5)).toEqual([{ code: 'outliers-named', outliers: 1, count: 8 }]);
  });
});
