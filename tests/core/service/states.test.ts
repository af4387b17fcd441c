import { describe, expect, test } from 'vitest';
import type { ActiveMode } from '../../../src/core/joint/torque-window.ts';
import { screwForceOf } from '../../../src/core/screws/load-sharing.ts';
import type { Moment } from '../../../src/core/service/moments.ts';
import type { StateId } from '../../../src/core/service/service-state.ts';
import { serviceState } from '../../../src/core/service/states.ts';
import { type Changes, given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { theRow } from '../../support/the-row.ts';
import { momentWith } from './subject-of.ts';

const TORQUE = given('T', 10_000, 'N·mm');
const capacityOf = (value: number): ActiveMode['capacity'] => ({
  median: given('R', 2 * value, 'N'),
  characteristic: given('R_k', value, 'N'),
});
const YIELD: ActiveMode = { mode: 'screw-yield', path: 'clamp', capacity: capacityOf(19_210) };
const SHEAR: ActiveMode = { mode: 'knurl-shear', path: 'pull', capacity: capacityOf(1300) };
const TURNS: ActiveMode = { mode: 'torque-out', path: 'torque', capacity: capacityOf(9100) };

/** A joint whose preload at 10 N·m is 14.4 kN at most and at least, and whose screw feels 0.368 of the pull. */
function moment(id: StateId, changes: Changes = {}): Moment {
  const found = momentWith(id, { clamped: { material: 'petg' }, ...changes });
  const { deviation } = found.joint.tool;
  return {
    ...found,
    actives: [YIELD, SHEAR, TURNS],
    conversion: {
      ...found.conversion,
      slippery: (10_000 * (1 + deviation)) / 14_400,
      sticky: (10_000 * (1 - deviation)) / 14_400,
      threadShare: 0.55,
    },
    // What is least of the pull must not count here.
    shares: { most: given('Φ', 0.368, '-'), least: given('Φ', 0.114, '-') },
  };
}
const limit = (found: Moment, mode: ActiveMode['mode']) =>
  theRow(serviceState(found, TORQUE).limits, (one) => one.mode === mode);

describe('serviceState', () => {
  test('joint.np.8-4: yield 85 · 0.226 kip over preload 14.4 and a pull of 6 with C 0.368 is 1.16 (shigley 9th ed.)', () => {
    expectPublished(
      limit(moment('in-service', { loads: { pull_N: 6000 } }), 'screw-yield').factor ?? 0,
      '1.16',
    );
  });
  test('while it is tightened only force and torsion of the screw load it, at 23 °C', () => {
    const state = serviceState(moment('assembly', { loads: { pull_N: 640 } }), TORQUE);
    expect(state).toMatchObject({ id: 'assembly', hours: 0, temperature: 23, closed: [] });
    expectRelative(theRow(state.limits, (one) => one.mode === 'screw-yield').demand.value, 14_400);
    expect(theRow(state.limits, (one) => one.mode === 'knurl-shear').factor).toBeUndefined();
    // 0.55 · 10 000 · 1.06
    expectRelative(theRow(state.limits, (one) => one.mode === 'torque-out').demand.value, 5830);
  });
  test('afterwards nothing turns the insert any more', () => {
    expect(limit(moment('in-service'), 'torque-out').factor).toBeUndefined();
    expect(limit(moment('after'), 'torque-out').factor).toBeUndefined();
  });
  test('in service the screw feels its share of the pull on top of the preload', () => {
    const { demand } = limit(moment('in-service', { loads: { pull_N: 413 } }), 'screw-yield');
    expectRelative(demand.value, screwForceOf({ preload: 14_400, pull: 413, loadFactor: 0.368 }));
    expectRelative(limit(moment('in-service', { loads: { pull_N: 413 } }), 'knurl-shear').demand.value, 413);
  });
  test('after the time the force has relaxed, and so has the strength of the plastic', () => {
    const found = { ...moment('after', { loads: { pull_N: 413 } }), left: given('R_F', 0.7, '-') };
    expectRelative(limit(found, 'screw-yield').demand.value, 0.7 * 14_400 + 0.368 * 413);
    expect(limit(found, 'knurl-shear').capacity.characteristic.value).toBeLessThan(1300);
    expect(limit(found, 'screw-yield').capacity.characteristic.value).toBe(19_210);
  });
  test('the smallest of all margins counts, limits over their factor, closing over its own', () => {
    const yielding = serviceState(
      moment('in-service', { loads: { pull_N: 101, shear_N: 1 }, factors: { limits: 1.2 } }),
      TORQUE,
    );
    // 19 210/(14 400 + 0.368 · 101)/1.2
    expect(yielding.by).toBe('screw-yield');
    expectRelative(yielding.margin, 19_210 / 14_437.168 / 1.2);
    const slipping = serviceState(moment('in-service', { loads: { pull_N: 101, shear_N: 2500 } }), TORQUE);
    expect(slipping.by).toBe('slips');
    expectRelative(slipping.margin, theRow(slipping.closed, (one) => one.by === 'slips').margin);
  });
  test('one mode governs: the one with the smallest factor', () => {
    const { limits } = serviceState(moment('in-service', { loads: { pull_N: 1290 } }), TORQUE);
    expect(limits.filter(({ governs }) => governs).map(({ mode }) => mode)).toEqual(['knurl-shear']);
  });
});
