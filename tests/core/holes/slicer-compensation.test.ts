import { describe, expect, test } from 'vitest';
import { printErrorOf } from '../../../src/core/holes/print-error.ts';
import {
  compensationRule,
  curveThatApplies,
  slicerExpansion,
} from '../../../src/core/holes/slicer-compensation.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import fc from '../../support/fast-check.ts';
import { MEASURED_FIT } from '../../support/holes.ts';
import { given } from '../../support/joints.ts';
import { expectWays } from '../../support/ways.ts';

const bore = (value: number) => given('D_t', value, 'mm');
const curves = { readings: MEASURED_FIT, prior: UNCALIBRATED_HOLES };

describe('compensationRule', () => {
  test.each([
    ['in-cad', 'none', 'drawn-in-cad', MEASURED_FIT, 'whole'],
    ['in-slicer', 'none', 'slicer-takes-error', MEASURED_FIT, 'none'],
    ['in-slicer', 'slicer', 'slicer-leaves-rest', MEASURED_FIT, 'whole'],
    ['in-cad', 'slicer', 'gauge-was-compensated', UNCALIBRATED_HOLES, 'whole'],
  ] as const)('of a joint %s and a gauge %s is %s', (joint, gauge, code, curve, error) => {
    const rule = compensationRule(joint, gauge);
    expect(rule.code).toBe(code);
    expect(curveThatApplies(rule, curves)).toBe(curve);
    expect(rule.error).toBe(error);
  });
  test('says what would be corrected twice', () => {
    expect(compensationRule('in-cad', 'none').doubles).toBe('if-slicer-compensates-too');
    expect(compensationRule('in-cad', 'slicer').doubles).toBe('if-slicer-compensates-too');
    expect(compensationRule('in-slicer', 'none').doubles).toBe('if-drawn-larger-too');
    expect(compensationRule('in-slicer', 'slicer').doubles).toBe('never');
  });
});

describe('slicerExpansion', () => {
  test('for a bore of 4.30 mm on an unknown printer is 0.25 mm, 0.125 mm a side (hand calculation)', () => {
    // −0.28 + 0.23 · ln(4.55/4) = −0.250, and 4.55 − 0.25 = 4.30.
    const { onDiameter, perSide } = slicerExpansion(UNCALIBRATED_HOLES, bore(4.3));
    expect(onDiameter.value).toBe(0.25);
    expect(perSide.value).toBe(0.125);
    expect(onDiameter.standing).toBe('estimate');
  });
  test('of holes 0.1 mm small on the diameter is 0.05 mm a side (slicer-settings-note)', () => {
    const small = {
      ...MEASURED_FIT,
      offset: { value: -0.1, standardUncertainty: 0.01 },
      slope: { value: 0, standardUncertainty: 0 },
    };
    expect(slicerExpansion(small, bore(5.3)).perSide.value).toBe(0.05);
  });
  test('enlarges the bore to the hole that prints to it, to half a hundredth', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 15, noNaN: true }), (wanted) => {
        const x = slicerExpansion(MEASURED_FIT, bore(wanted)).onDiameter.value;
        const printed = wanted + x + printErrorOf(MEASURED_FIT, wanted + x);
        expect(Math.abs(printed - wanted)).toBeLessThan(0.0056);
      }),
    );
  });
  test('is below 0 where holes come out large, and can be worked out by hand', () => {
    const large = { ...MEASURED_FIT, offset: { value: 0.12, standardUncertainty: 0.01 } };
    const { onDiameter, perSide } = slicerExpansion(large, bore(4.3));
    expect(onDiameter.value).toBeLessThan(0);
    expectWays([onDiameter, perSide]);
  });
});
