import { describe, expect, test } from 'vitest';
import {
  clampForce,
  headTorquePerForce,
  threadTorquePerForce,
  tighteningTorque,
  torquePerForce,
} from '../../../src/core/torque/tightening-torque.ts';
import { yieldPreloadOf } from '../../../src/core/torque/yield-preload.ts';
import { threadOf } from '../../fixtures/iso-965/threads.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Tightening torque, N·m, at 0.9 of yield with one friction in thread and under a hexagon head. */
function tableTorque(row: { d: number; P: number; mu: number; Rp: number; dw: number; dh: number }): number {
  const thread = threadOf(row.d, row.P);
  const force = yieldPreloadOf({ thread, yieldStrength: row.Rp, threadFriction: row.mu, utilisation: 0.9 });
  const bearingDiameter = (row.dw + row.dh) / 2;
  return (
    tighteningTorque({ thread, force, threadFriction: row.mu, headFriction: row.mu, bearingDiameter }).value /
    1000
  );
}

const friction = fc.double({ min: 0.02, max: 0.6, noNaN: true });
const diameter = fc.double({ min: 1.6, max: 12, noNaN: true });
const force = fc.double({ min: 1, max: 1e5, noNaN: true });

const specimen = {
  thread: threadOf(3, 0.5),
  threadFriction: 0.13,
  headFriction: 0.19,
  bearingDiameter: 4.235,
};

describe('threadTorquePerForce', () => {
  test('is 0.159·P + 0.577·μ·d2 (vdi-2230 in figures; hand calculation for M4, μ 0.17)', () => {
    expectPublished(threadTorquePerForce(threadOf(4, 0.7), 0.17), '0.4594'); // 0.111408 + 0.57735 · 0.17 · 3.545337
  });
  test('is the pitch over a full turn without friction', () => {
    expectRelative(threadTorquePerForce(threadOf(4, 0.7), 0), 0.7 / (2 * Math.PI));
  });
});

describe('headTorquePerForce', () => {
  test('is half the bearing diameter times friction (hand calculation)', () => {
    expectPublished(headTorquePerForce(4.235, 0.19), '0.402325');
  });
});

describe('tighteningTorque', () => {
  test.each([
    ['vdi.MA.M8x1.mu0.1.8.8', 0.1, 640, 22.8],
    ['vdi.MA.M8x1.mu0.1.10.9', 0.1, 940, 33.5],
    ['vdi.MA.M8x1.mu0.1.12.9', 0.1, 1100, 39.2],
    ['vdi.MA.M8x1.mu0.12.8.8', 0.12, 640, 26.1],
    ['vdi.MA.M8x1.mu0.12.10.9', 0.12, 940, 38.3],
    ['vdi.MA.M8x1.mu0.12.12.9', 0.12, 1100, 44.9],
    ['vdi.MA.M8x1.mu0.14.8.8', 0.14, 640, 29.2],
    ['vdi.MA.M8x1.mu0.14.10.9', 0.14, 940, 42.8],
    ['vdi.MA.M8x1.mu0.14.12.9', 0.14, 1100, 50.1],
  ])(
    '%s: at μ %f and Rp %f MPa is %f N·m within a part of 0.004 (vdi-2230:2001, fine threads, reprint)',
    (_id, mu, Rp, printed) => {
      expectRelative(tableTorque({ d: 8, P: 1, mu, Rp, dw: 11.63, dh: 9 }), printed, 0.004);
    },
  );
  test.each([
    ['vdi.MA.M4.mu0.14.8.8', 4, 0.7, 640, 5.88, 4.5, 3.3],
    ['vdi.MA.M4.mu0.14.10.9', 4, 0.7, 940, 5.88, 4.5, 4.8],
    ['vdi.MA.M4.mu0.14.12.9', 4, 0.7, 1100, 5.88, 4.5, 5.6],
    ['vdi.MA.M5.mu0.14.8.8', 5, 0.8, 640, 6.88, 5.5, 6.5],
    ['vdi.MA.M5.mu0.14.10.9', 5, 0.8, 940, 6.88, 5.5, 9.5],
    ['vdi.MA.M5.mu0.14.12.9', 5, 0.8, 1100, 6.88, 5.5, 11.2],
    ['M6 8.8', 6, 1, 640, 8.88, 6.6, 11.3],
    ['vdi.MA.M6.mu0.14.10.9', 6, 1, 940, 8.88, 6.6, 16.5],
    ['M8 10.9', 8, 1.25, 940, 11.63, 9, 40.1],
    ['vdi.MA.M8.mu0.14.12.9', 8, 1.25, 1100, 11.63, 9, 46.9],
  ])(
    '%s: M%f × %f, Rp %f MPa, face %f over %f mm, is %f N·m within a part of 0.01 (table after vdi-2230)',
    (_id, d, P, Rp, dw, dh, printed) => {
      expectRelative(tableTorque({ d, P, mu: 0.14, Rp, dw, dh }), printed, 0.01);
    },
  );
  test('of 3/4-16 at 25 kip and friction 0.15 is 3551 lbf·in within 0.3 %, the exact helix against this small-angle form (shigley, Example 8-3c, from memory)', () => {
    const thread = threadOf(0.75, 1 / 16, 'unified');
    const bearingDiameter = 1.25 * 0.75;
    const torque = tighteningTorque({
      thread,
      force: 25000,
      threadFriction: 0.15,
      headFriction: 0.15,
      bearingDiameter,
    });
    expectRelative(torque.value, 3551, 0.003);
  });
  test('and clampForce undo each other', () => {
    fc.assert(
      fc.property(friction, friction, diameter, force, (threadFriction, headFriction, bearingDiameter, F) => {
        const screw = { thread: threadOf(5, 0.8), threadFriction, headFriction, bearingDiameter };
        const torque = tighteningTorque({ ...screw, force: F }).value;
        expectRelative(clampForce({ ...screw, torque }).value, F);
      }),
    );
  });
  test('rises with either friction and with the bearing diameter', () => {
    const torque = torquePerForce(specimen);
    expect(torquePerForce({ ...specimen, threadFriction: 0.14 })).toBeGreaterThan(torque);
    expect(torquePerForce({ ...specimen, headFriction: 0.2 })).toBeGreaterThan(torque);
    expect(torquePerForce({ ...specimen, bearingDiameter: 4.3 })).toBeGreaterThan(torque);
  });
  test('is the sum of thread and head part, each with its own friction', () => {
    const sum = threadTorquePerForce(specimen.thread, 0.13) + headTorquePerForce(4.235, 0.19);
    expectRelative(torquePerForce(specimen), sum);
    expectPublished(torquePerForce(specimen), '0.68269'); // 0.0795775 + 0.57735 · 0.13 · 2.67524 + 0.402325
  });
  test('gives 1 without friction when one turn does the work F·P', () => {
    const loss = { thread: threadOf(6, 1), threadFriction: 0, headFriction: 0, bearingDiameter: 8.1 };
    expectRelative((tighteningTorque({ ...loss, force: 913 }).value * 2 * Math.PI) / (913 * 1), 1);
  });
  test('carries what went in, its unit and its source', () => {
    const torque = tighteningTorque({ ...specimen, force: 1234 });
    expect(torque).toMatchObject({ symbol: 'M_A', unit: 'N·mm', source: 'vdi-2230', standing: 'published' });
    expect(torque.entries.map(({ symbol }) => symbol)).toEqual(['F', 'P', 'd_2', 'μ_G', 'μ_K', 'D_Km']);
    expect(torque.entries.filter(({ symbol }) => symbol !== 'd_2').map(({ value }) => value)).toEqual([
      1234, 0.5, 0.13, 0.19, 4.235,
    ]);
    expectPublished(torque.value, '842.4'); // 1234 · 0.68269
  });
});

describe('clampForce', () => {
  test('carries what went in, its unit and its source', () => {
    const shown = clampForce({ ...specimen, torque: 600 });
    expect(shown).toMatchObject({ symbol: 'F', unit: 'N', source: 'vdi-2230', standing: 'published' });
    expect(shown.entries[0]).toEqual({ symbol: 'M_A', value: 600, unit: 'N·mm' });
    expectPublished(shown.value, '878.9'); // 600/0.68269
  });
  test('is nothing without torque', () => {
    expect(clampForce({ ...specimen, torque: 0 }).value).toBe(0);
  });
});
