import { describe, expect, test } from 'vitest';
import { UNCALIBRATED_HOLES } from '../../src/data/uncalibrated-holes.ts';

const { offset, slope, ceiling, repeatability, standing } = UNCALIBRATED_HOLES;
const expectedError = (diameter: number) => offset.value + slope.value * Math.log(diameter / 4);

describe('UNCALIBRATED_HOLES', () => {
  test.each([
    [3, -0.369],
    [4, -0.302],
    [5, -0.251],
    [6, -0.209],
    [8, -0.143],
  ])(
    'put a hole of %i mm within 0.03 mm of the measured fit %f mm (hole-metrology-note)',
    (diameter, measured) => {
      expect(Math.abs(expectedError(diameter) - measured)).toBeLessThan(0.03);
    },
  );

  test('never let a hole come out closer than 0.10 mm below its drawing (hole-metrology-note)', () => {
    expect(ceiling).toBe(-0.1);
    expect(expectedError(10)).toBeGreaterThan(-0.1);
  });

  test('are an estimate, and know a printer worse than its repeatability', () => {
    expect(standing).toBe('estimate');
    expect(repeatability).toBe(0.05);
    expect(offset.standardUncertainty).toBe(0.1);
    expect(slope.standardUncertainty).toBe(0.1);
  });

  test('take the slope 0.2307 of the measured fit, rounded (hole-metrology-note)', () => {
    expect(slope.value).toBe(Number((0.2307).toFixed(2)));
  });
});
