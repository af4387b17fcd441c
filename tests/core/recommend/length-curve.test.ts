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
  test('does not see the seat in strength, and a thin part in nothing', () => {
    const strip = (changes: object) =>
      curve(changes).map(({ median, jackOutTorque }) => [median, jackOutTorque]);
    expect(strip({ gap_mm: 0.4 })).toEqual(strip({}));
    expect(curve({ host: { thickness_mm: 23 } }).map(({ median }) => median)).toEqual(
      curve().map(({ median }) => median),
    );
  });
  test('dials less over a gap, or nothing', () => {
    const [onInsert, overGap] = [curve(), curve({ gap_mm: 0.4 })];
    overGap.forEach(({ dial }, index) => {
      expect(dial ?? 0).toBeLessThan(onInsert[index]?.dial ?? 0);
    });
  });
});
