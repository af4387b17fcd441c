import { describe, expect, test } from 'vitest';
import { stressAreaOf } from '../../../src/core/screws/stress-area.ts';
import { threadTorquePerForce } from '../../../src/core/torque/tightening-torque.ts';
import { torsionFactor, yieldPreload, yieldPreloadOf } from '../../../src/core/torque/yield-preload.ts';
import { coarseThread, threadOf } from '../../fixtures/iso-965/threads.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const preloadOf = (d: number, P: number, threadFriction: number, yieldStrength: number) =>
  yieldPreloadOf({ thread: threadOf(d, P), yieldStrength, threadFriction, utilisation: 0.9 });

describe('yieldPreloadOf', () => {
  test.each([
    ['M8x1 8.8', 0.1, 640, 20.7],
    ['M8x1 10.9', 0.1, 940, 30.4],
    ['vdi.FM.M8x1.mu0.1.12.9', 0.1, 1100, 35.6],
    ['vdi.FM.M8x1.mu0.12.8.8', 0.12, 640, 20.2],
    ['vdi.FM.M8x1.mu0.12.10.9', 0.12, 940, 29.7],
    ['M8x1 12.9', 0.12, 1100, 34.7],
    ['vdi.FM.M8x1.mu0.14.8.8', 0.14, 640, 19.7],
    ['M8x1 10.9', 0.14, 940, 28.9],
    ['M8x1 12.9', 0.14, 1100, 33.9],
  ])(
    '%s: at μ %f and Rp %f MPa is %f kN within a part of 0.003 (vdi-2230:2001, fine threads, reprint)',
    (_id, mu, Rp, printed) => {
      expectRelative(preloadOf(8, 1, mu, Rp) / 1000, printed, 0.003);
    },
  );
  test.each([
    ['a2-70.FM.M2.mu0.1', 2, 0.4, 0.1, 0.74],
    ['a2-70.FM.M3.mu0.1', 3, 0.5, 0.1, 1.84],
    ['a2-70.FM.M6.mu0.1', 6, 1, 0.1, 7.3],
    ['a2-70.FM.M8.mu0.1', 8, 1.25, 0.1, 13.4],
    ['a2-70.FM.M4.mu0.2', 4, 0.7, 0.2, 2.76],
    ['a2-70.FM.M6.mu0.2', 6, 1, 0.2, 6.4],
    ['a2-70.FM.M8.mu0.2', 8, 1.25, 0.2, 11.6],
  ])(
    '%s: M%f × %f at μ %f is %f kN within a part of 0.008 (table for A2-70, reprint)',
    (_id, d, P, mu, printed) => {
      expectRelative(preloadOf(d, P, mu, 450) / 1000, printed, 0.008);
    },
  );
  test('brings the equivalent stress to ν·Rp, the torsion from the thread torque over π/12·d0³ (von-mises)', () => {
    const sizes = fc.constantFrom('M2', 'M3', 'M5', 'M8').map(coarseThread);
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.05, max: 0.5, noNaN: true }), (thread, threadFriction) => {
        const force = yieldPreloadOf({ thread, yieldStrength: 577, threadFriction, utilisation: 0.83 });
        const area = stressAreaOf(thread);
        const d0 = Math.sqrt((4 * area) / Math.PI);
        const shear = (force * threadTorquePerForce(thread, threadFriction)) / ((Math.PI / 12) * d0 ** 3);
        expectRelative(Math.hypot(force / area, Math.sqrt(3) * shear), 0.83 * 577, 1e-11);
      }),
    );
  });
  test('falls as thread friction rises', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.5, noNaN: true }), (mu) => {
        expect(preloadOf(3, 0.5, mu + 0.01, 640)).toBeLessThan(preloadOf(3, 0.5, mu, 640));
      }),
    );
  });
  test('comes to pure tension for a fine thread without friction', () => {
    expectRelative(preloadOf(7, 1e-7, 0, 640), 0.9 * 640 * (Math.PI / 4) * 49, 1e-6);
  });
});

describe('torsionFactor', () => {
  test('is 1.21 for M8 × 1 at μ 0.12, 0.9·640·39.17 N over the printed 20.2 kN less rounding', () => {
    expectRelative(torsionFactor(threadOf(8, 1), 0.12), (0.9 * 640 * 39.17) / 20200, 0.003);
  });
});

describe('yieldPreload', () => {
  test('carries what went in, its unit and its source', () => {
    const shown = yieldPreload({
      thread: threadOf(8, 1),
      yieldStrength: 640,
      threadFriction: 0.12,
      utilisation: 0.9,
    });
    expect(shown).toMatchObject({ symbol: 'F_M', unit: 'N', source: 'vdi-2230', standing: 'published' });
    expect(shown.entries.map(({ symbol }) => symbol)).toEqual(['ν', 'A_s', 'R_p', 'd_2', 'd_0', 'P', 'μ_G']);
    expect(shown.entries.map(({ from }) => from?.symbol)).toContain('A_s');
    expectPublished(shown.entries[1]?.value ?? 0, '39.17');
    expectRelative(shown.value, 20200, 0.003);
  });
});
