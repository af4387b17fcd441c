import { describe, expect, test } from 'vitest';
import { couponPoints } from '../../../src/core/bench/coupon-points.ts';
import { evidenceOf, type SetupEvidence } from '../../../src/core/bench/evidence.ts';
import { movedHold } from '../../../src/core/bench/moved-hold.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const JOINT = answerableJoint();
function setupOf(tests: readonly Partial<TestRecord>[]): SetupEvidence {
  const [setup] = evidenceOf(
    tests.map((one, index) => benchTest({ id: `test-${index + 1}`, ...one })),
    JOINT,
    undefined,
  ).setups;
  if (setup === undefined) throw new Error('no test of a bond');
  return setup;
}
const THREE = setupOf([{ value: 107 }, { value: 118 }, { value: 80, kind: 'proof-pull', result: 'held' }]);
/** Two that turned, one that was jacked out, one that was jacked and turned instead. */
const TORQUES = setupOf([
  { kind: 'torque-out', value: 2.3, unit: 'N·m', result: 'insert-turned' },
  { kind: 'torque-out', value: 1.9, unit: 'N·m', result: 'held' },
  { kind: 'jack-out-torque', value: 0.61, unit: 'N·m' },
  { kind: 'jack-out-torque', value: 1.7, unit: 'N·m', result: 'insert-turned' },
]);

describe('couponPoints', () => {
  const points = couponPoints(THREE, JOINT);
  test('puts the bond of each coupon into the joint', () => {
    expect(points.map(({ testId, says }) => [testId, says])).toEqual([
      ['test-1', 'broke'],
      ['test-2', 'broke'],
      ['test-3', 'held'],
    ]);
    const { median } = movedHold(JOINT, theInsert(), THREE.tested).before;
    // 107 · 9.80665 N = 1049.3 N over 1542.1 N, against 0.85
    expectRelative((points[0]?.force.value ?? 0) / median.value, 1049.31 / 1542.15 / 0.85, 1e-4);
    expectRelative((points[1]?.force.value ?? 0) / (points[0]?.force.value ?? 1), 118 / 107, 1e-9);
  });
  test('has no torque of a coupon that was pulled', () => {
    expect(points.filter(({ torque }) => torque !== undefined)).toEqual([]);
  });
  test('gives back the torque that was read, at the temperature and bore of the test', () => {
    const cool = answerableJoint({ loads: { serviceTemperature_degC: 23 } });
    const torques = couponPoints(TORQUES, cool).map(({ torque }) => torque);
    expect(torques.map((torque) => torque?.of)).toEqual([
      'torque-out',
      'torque-out',
      'jack-out',
      'torque-out',
    ]);
    expectRelative(torques[0]?.value.value ?? 0, 2300, 1e-9);
    expectRelative(torques[1]?.value.value ?? 0, 1900, 1e-9);
    expectRelative(torques[2]?.value.value ?? 0, 610, 1e-9);
    // The head takes a share of the torque on the screw: less than all of it turns the insert.
    expect(torques[3]?.value.value).toBeLessThan(1700);
    expect(torques[3]?.value.value).toBeGreaterThan(0.2 * 1700);
  });
  test('turns at half of the knurl for each newton: 4.93 mm/2', () => {
    const [turned] = couponPoints(TORQUES, JOINT);
    expectRelative((turned?.torque?.value.value ?? 0) / (turned?.force.value ?? 1), 4.93 / 2, 1e-9);
  });
  test('leaves out a coupon of another thread', () => {
    const screw = { ...JOINT.screw, thread: { ...JOINT.screw.thread, id: 'M4' as const } };
    expect(couponPoints(THREE, { ...JOINT, screw })).toEqual([]);
  });
});
