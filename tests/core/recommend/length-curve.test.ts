import { describe, expect, test } from 'vitest';
import { characteristicOf } from '../../../src/core/pull-out/bond.ts';
import { lengthCurve } from '../../../src/core/recommend/length-curve.ts';
import { answerableJoint, assessed, given, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const LENGTHS = [2.3, 4.1, 5.3, 7.7] as const;
const curve = (changes = {}, lengths: readonly number[] = LENGTHS) =>
  lengthCurve(answerableJoint(changes), theInsert(), lengths);

describe('lengthCurve', () => {
  test('passes through the insert itself', () => {
    const itself = curve().find(({ length }) => length === 5.3);
    const { limits, torque } = assessed();
    const knurl = limits.find(({ mode }) => mode === 'knurl-shear')?.capacity;
    expectRelative(itself?.median ?? 0, knurl?.median.value ?? 1);
    expectRelative(itself?.characteristic ?? 0, knurl?.characteristic.value ?? 1);
    expect(itself?.dial).toBe(torque.kind === 'window' ? torque.dial.value : undefined);
  });
  test('is proportional to the knurled length: what is not knurled stays (law)', () => {
    // Not knurled: 0.28 · 4.93 mm.
    const [first, ...others] = curve();
    const perKnurled = (point: { median: number; length: number } | undefined) =>
      (point?.median ?? 0) / ((point?.length ?? 0) - 0.28 * 4.93);
    for (const point of others) expectRelative(perKnurled(point), perKnurled(first), 1e-9);
    expect(curve({}, [1.3, 9.1])).toHaveLength(1);
  });
  test('spreads as far up as down on the logarithm', () => {
    for (const { upper, median, characteristic } of curve()) {
      expectRelative(upper * characteristic, median ** 2);
      expectRelative(characteristic, characteristicOf(given('F_ks', median, 'N')).value);
    }
  });
  test('pulls itself out at K·d·F: the torque that gives the shear force at slippery friction', () => {
    // P/(2π) + 0.1 · d2/(2 · cos 30°) + 0.1 · (5.07 + 3.4)/4 = 0.079577 + 0.154456 + 0.211750
    for (const { jackOutTorque, median } of curve()) expectRelative(jackOutTorque / median, 0.445783, 1e-4);
  });
  test('turns at half of the knurl for each newton, with the same scatter: 4.93 mm/2', () => {
    for (const { torqueOut, median, characteristic, upper } of curve()) {
      expectRelative(torqueOut.median / median, 4.93 / 2);
      expectRelative(torqueOut.characteristic / torqueOut.median, characteristic / median);
      expectRelative(torqueOut.upper / torqueOut.median, upper / median);
    }
  });
  test('is jacked out about the middle of friction, with its range in the band', () => {
    // k_low 0.445783 as above; k_high at friction 0.24: 0.079577 + 2.4 · (0.154456 + 0.211750) = 0.958471 (hand)
    for (const { jackOut, median, characteristic } of curve()) {
      expectRelative(jackOut.median / median, Math.sqrt(0.445783 * 0.958471), 1e-4);
      // 2.1318 is Student’s t of the band, 4 degrees of freedom; 3.2897 the deviations of 9 in 10 (tables).
      const own = Math.log(median / characteristic) / 2.131847;
      const spread = Math.hypot(own, Math.log(0.958471 / 0.445783) / 3.289707);
      expectRelative(Math.log(jackOut.median / jackOut.characteristic), 2.131847 * spread, 1e-4);
      expectRelative(jackOut.upper * jackOut.characteristic, jackOut.median ** 2);
    }
  });
  test('does not see the seat in strength, and a thin part in nothing', () => {
    const strip = (changes: object) =>
      curve(changes).map(({ median, jackOutTorque }) => [median, jackOutTorque]);
    expect(strip({ gap_mm: 0.4 })).toEqual(strip({}));
    expect(curve({ host: { thickness_mm: 23 } }).map(({ median }) => median)).toEqual(
      curve().map(({ median }) => median),
    );
  });
  test('takes the part as three times as deep as the longest, so that none is too thin for it', () => {
    const farSide = (thickness_mm: number) =>
      curve({
        insertSide: 'far-side',
        host: { thickness_mm },
        loads: { pull_N: 3, shear_N: 0 },
        tool: { step_Nm: 0.01 },
      });
    expect(farSide(7.9).at(-1)?.dial).toBeGreaterThan(0);
    expect(farSide(7.9)).toEqual(farSide(3 * 7.7));
  });
  test('dials less over a gap, or nothing', () => {
    const [onInsert, overGap] = [curve(), curve({ gap_mm: 0.4 })];
    overGap.forEach(({ dial }, index) => {
      expect(dial ?? 0).toBeLessThan(onInsert[index]?.dial ?? 0);
    });
  });
});
