import { describe, expect, test } from 'vitest';
import type { TorqueToForce } from '../../../src/core/joint/demand.ts';
import { demandOn, greatestClampForce, leastClampForce, limitsOf } from '../../../src/core/joint/limits.ts';
import { limitingMode } from '../../../src/core/joint/load-reserve.ts';
import {
  type ActiveMode,
  dialInside,
  forceToStayClosed,
  leastTorque,
  torqueAllowedBy,
} from '../../../src/core/joint/torque-window.ts';
import { entryLater } from '../../../src/core/sources/derived.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import fc from '../../support/fast-check.ts';
import { given, givenJoint } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const CONVERSION: TorqueToForce = {
  slippery: 0.43,
  sticky: 0.91,
  threadShare: 0.67,
  threadFriction: { low: 0.1, high: 0.24 },
  headFriction: { low: 0.1, high: 0.24 },
  bearingDiameter: 4.2,
  ways: {
    slippery: given('k_low', 0.43, 'mm'),
    sticky: given('k_high', 0.91, 'mm'),
    threadShare: given('a', 0.67, '-'),
  },
};
const JOINT = givenJoint({ loads: { pull_N: 70, shear_N: 13 }, factors: { limits: 1.2, closed: 1.5 } });
const UNLOADED = givenJoint({ loads: { pull_N: 0, shear_N: 0 } });
const active = (
  path: ActiveMode['path'],
  force: number,
  mode: ActiveMode['mode'] = 'knurl-shear',
): ActiveMode => ({
  mode,
  path,
  capacity: { median: given('F', 2 * force, 'N'), characteristic: given('R_k', force, 'N') },
});
/** The same mode after 100 h: crept by 1 + 0.06 · 100^0.5, with 0.7 of the clamp force on it. */
const worn = (mode: ActiveMode): ActiveMode => {
  const law = { m: 0.06, n: 0.5 };
  return {
    ...mode,
    wear: {
      creep: { polymer: PETG, serviceTemperature: 37, low: law, middle: law, high: law },
      hours: 100,
      factor: 1.6,
      left: entryLater('R_F', 0.7, '-', () => given('R_F', 0.7, '-')),
    },
  };
};
const tool = (settings: readonly number[], step = 50) => ({ ...JOINT.tool, settings, step });

describe('forceToStayClosed', () => {
  test('is the larger of lifting off and slipping (hand calculation)', () => {
    // Sc · P = 105; P + Sc · Q/μ = 70 + 1.5 · 13/0.15 = 200
    expectRelative(forceToStayClosed(JOINT, 0.15).value, 200);
    const still = givenJoint({ loads: { pull_N: 70, shear_N: 0 }, factors: { closed: 1.5 } });
    expectRelative(forceToStayClosed(still, 0.15).value, 105);
  });
  test('is 0 without loads and grows with both in proportion', () => {
    expect(forceToStayClosed(UNLOADED, 0.15).value).toBe(0);
    const twice = givenJoint({ loads: { pull_N: 140, shear_N: 26 }, factors: { limits: 1.2, closed: 1.5 } });
    expectRelative(forceToStayClosed(twice, 0.23).value, 2 * forceToStayClosed(JOINT, 0.23).value);
  });
});

describe('leastTorque', () => {
  test('covers relaxation, sticky friction and the low end of the tool (hand calculation)', () => {
    // 200/0.8 · 0.91/0.94 = 242.02
    const needed = { force: given('F_req', 200, 'N'), left: given('R_F', 0.8, '-') };
    expectRelative(leastTorque(needed, CONVERSION, JOINT.tool).value, 242.0212766, 1e-9);
  });
  test('leaves exactly the force asked after relaxation (inverse)', () => {
    const left = given('R_F', 0.73, '-');
    const torque = leastTorque({ force: given('F_req', 211, 'N'), left }, CONVERSION, JOINT.tool);
    expectRelative(leastClampForce(torque, JOINT, CONVERSION, left).value, 211);
  });
});

describe('torqueAllowedBy', () => {
  test('leaves room for the pull on the clamp path (hand calculation)', () => {
    // (900/1.2 − 70) · 0.43/1.06 = 275.85
    expectRelative(torqueAllowedBy(active('clamp', 900), JOINT, CONVERSION).torque.value, 275.8490566, 1e-9);
  });
  test('turns only by the share of the thread on the torque path (hand calculation)', () => {
    // 1700/1.2/(0.67 · 1.06) = 1994.75
    expectRelative(torqueAllowedBy(active('torque', 1700), JOINT, CONVERSION).torque.value, 1994.744, 1e-6);
  });
  test('leaves what plastic bears after the time, loaded by what is then left (hand calculation)', () => {
    // (900/(1.2 · 1.6) − 70)/0.7 · 0.43/1.06 = 231.08
    const { torque } = torqueAllowedBy(worn(active('clamp', 900)), JOINT, CONVERSION);
    expectRelative(torque.value, 231.0815364, 1e-9);
    expect(torque.formula).toBe('max(0, R_k/(S · c) − P)/R_F · k_low/(1 + δ)');
    const put = new Map(torque.entries.map(({ symbol, value }) => [symbol, value]));
    expect(['c', 'R_F', 't'].map((symbol) => put.get(symbol))).toEqual([1.6, 0.7, 100]);
  });
  test('of worn plastic loads it, after the time, to what it then bears over the factor (inverse)', () => {
    const mode = worn(active('clamp', 1310));
    const { torque } = torqueAllowedBy(mode, JOINT, CONVERSION);
    const force = greatestClampForce(torque, JOINT, CONVERSION);
    expectRelative(force.value * 0.7 + 70, 1310 / (1.2 * 1.6));
  });
  test('is 0 where the pull alone uses the mode up', () => {
    expect(torqueAllowedBy(active('clamp', 83), JOINT, CONVERSION).torque.value).toBe(0);
  });
  test('loads the mode to its characteristic value over the factor, no more (inverse)', () => {
    for (const path of ['clamp', 'torque'] as const) {
      const mode = active(path, 1310);
      const { torque } = torqueAllowedBy(mode, JOINT, CONVERSION);
      const force = greatestClampForce(torque, JOINT, CONVERSION);
      expectRelative(demandOn(mode, JOINT, force, torque, CONVERSION).value, 1310 / 1.2);
    }
  });
});

describe('demandOn', () => {
  test('of the pull path is the pull, whatever the torque', () => {
    const torque = given('T', 640, 'N·mm');
    const demand = demandOn(active('pull', 900), JOINT, given('F', 1500, 'N'), torque, CONVERSION);
    expect(demand.value).toBe(70);
  });
});

describe('dialInside', () => {
  test.each([
    [[250, 400, 600, 900], 300, 650, 600],
    [[250, 400, 600, 900], 250, 399, 250],
    [[250, 400, 600, 900], 610, 890, undefined],
    [[250, 400], 401, 399, undefined],
    [[], 110, 187, 150],
    [[], 160, 187, undefined],
    [[], 0, 49, undefined],
    [[], 0, 150, 150],
  ])('of the settings %j between %f and %f N·mm is %j', (settings, least, most, dialled) => {
    expect(dialInside(tool(settings), least, most)).toBe(dialled);
  });
  test('is the largest multiple of the step that fits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 400, noNaN: true }),
        fc.double({ min: 1, max: 9000, noNaN: true }),
        (step, most) => {
          const dialled = dialInside(tool([], step), 0, most);
          // None fits below one step.
          expect(dialled === undefined).toBe(most < step * (1 - 1e-9));
          expect(dialled ?? 0).toBeLessThanOrEqual(most * (1 + 1e-9));
          expect((dialled ?? 0) + step).toBeGreaterThan(most);
        },
      ),
    );
  });
});

describe('limitsOf', () => {
  const demanded = (
    capacity: number,
    demand: number,
    path: ActiveMode['path'],
    mode: ActiveMode['mode'],
  ) => ({
    active: active(path, capacity, mode),
    demand: given('F_d', demand, 'N'),
  });
  test('lets the smallest factor govern, one of equals alone', () => {
    const limits = limitsOf([
      demanded(900, 300, 'clamp', 'knurl-shear'),
      demanded(500, 250, 'clamp', 'wall-plug'),
      demanded(800, 400, 'torque', 'torque-out'),
      demanded(10, 0, 'pull', 'boss-split'),
    ]);
    expect(limits.map(({ factor }) => factor)).toEqual([3, 2, 2, undefined]);
    expect(limits.filter(({ governs }) => governs).map(({ mode }) => mode)).toEqual(['wall-plug']);
  });
  test('without any load lets the weakest force govern', () => {
    const limits = limitsOf([
      demanded(900, 0, 'pull', 'knurl-shear'),
      demanded(700, 0, 'clamp', 'screw-yield'),
      demanded(30, 0, 'torque', 'torque-out'),
    ]);
    expect(limits.filter(({ governs }) => governs).map(({ mode }) => mode)).toEqual(['screw-yield']);
  });
});

describe('limitingMode', () => {
  test('is none without loads', () => {
    expect(limitingMode([active('pull', 900)], UNLOADED, CONVERSION, 0)).toBeUndefined();
  });
  test.each([
    ['pull', 900, 900 / 1.2 / 70],
    // 750 · k/(T + P · k) with k = 0.43/1.06 and T = 240 N·mm
    ['clamp', 900, (750 * 0.43) / 1.06 / (240 + (70 * 0.43) / 1.06)],
    ['torque', 1700, 1700 / 1.2 / (0.67 * 1.06) / 240],
  ] as const)('of the %s path (hand calculation)', (path, force, multiple) => {
    const found = limitingMode([active(path, force), active(path, 2.3 * force)], JOINT, CONVERSION, 240);
    expectRelative(found?.multiple ?? 0, multiple);
    expect(found?.mode.capacity.characteristic.value).toBe(force);
  });
  test.each([
    ['pull', 900 / 1.2 / 1.6 / 70],
    // Borne after the time over what the least torque and the pull then ask.
    ['clamp', 900 / 1.2 / 1.6 / ((240 * 0.7 * 1.06) / 0.43 + 70)],
  ] as const)('of the %s path counts what the time takes of plastic (hand calculation)', (path, multiple) => {
    expectRelative(limitingMode([worn(active(path, 900))], JOINT, CONVERSION, 240)?.multiple ?? 0, multiple);
  });
});
