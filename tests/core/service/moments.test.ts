import { describe, expect, test } from 'vitest';
import { tighten } from '../../../src/core/joint/tightening.ts';
import { momentsOf } from '../../../src/core/service/moments.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { momentWith } from './subject-of.ts';

const CREEPING: Changes = {
  clamped: { material: 'petg' },
  loads: { serviceTemperature_degC: 41, duration_h: 900, retightenings: 1 },
};

describe('momentsOf', () => {
  test('come in the order of a life', () => {
    expect(momentsOf(answerableJoint(), theInsert()).map(({ id }) => id)).toEqual([
      'assembly',
      'in-service',
      'after',
    ]);
  });
  test('is tightened without load at 23 °C, whatever the service', () => {
    const { joint, left } = momentWith('assembly', CREEPING);
    expect(joint.loads).toMatchObject({ pull: 0, shear: 0, serviceTemperature: 23, duration: 0 });
    expect(left.value).toBe(1);
  });
  test('in service has its loads and warmth and its whole preload', () => {
    const { joint, left, leastLeft, actives } = momentWith('in-service', CREEPING);
    expect(joint.loads).toMatchObject({ pull: 83, shear: 19, serviceTemperature: 41, duration: 0 });
    expect([left.value, leastLeft.value]).toEqual([1, 1]);
    // Computed once for both times: nothing but what the time under load does is different.
    const atOnce = actives.map(({ mode, path, capacity }) => ({ mode, path, capacity }));
    expect(atOnce).toEqual(tighten(joint, theInsert()).actives);
  });
  test('after the time has lost some of it; at the worst time more than at the end', () => {
    const { left, leastLeft } = momentWith('after', CREEPING);
    expect(left.value).toBeLessThan(1);
    expect(leastLeft.value).toBeLessThanOrEqual(left.value);
    const justTightened = momentWith('after', { ...CREEPING, loads: { duration_h: 1, retightenings: 1 } });
    expect(justTightened.left.value).toBe(1);
    expect(justTightened.leastLeft.value).toBeLessThan(1);
  });
});
