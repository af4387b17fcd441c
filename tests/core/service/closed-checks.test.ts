import { describe, expect, test } from 'vitest';
import { separationLoad } from '../../../src/core/screws/load-sharing.ts';
import { closedChecks } from '../../../src/core/service/closed-checks.ts';
import type { Moment } from '../../../src/core/service/moments.ts';
import type { ClosedCheck, Loosening } from '../../../src/core/service/service-state.ts';
import { type Changes, given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { theRow } from '../../support/the-row.ts';
import { momentWith } from './subject-of.ts';

/** A joint whose clamp force at 10 N·m is the given one, N, and whose screw feels a given share of the pull. */
function pressedWith(force: number, share: number, changes: Changes): Moment {
  const moment = momentWith('in-service', changes);
  const sticky = (10_000 * (1 - moment.joint.tool.deviation)) / force;
  return {
    ...moment,
    conversion: { ...moment.conversion, sticky },
    // What is most of the pull must not count here.
    shares: { most: given('Φ', 0.97, '-'), least: given('Φ', share, '-') },
    leastLeft: given('R_F', 1, '-'),
  };
}
const TORQUE = given('T', 10_000, 'N·mm');
const check = (moment: Moment, by: Loosening): ClosedCheck =>
  theRow(closedChecks(moment, TORQUE), (one) => one.by === by);

describe('closedChecks', () => {
  test('joint.n0.separation.8-4: preload 14.4, pull 6, C 0.368 opens at 3.80 times the pull (shigley 9th ed.)', () => {
    const moment = pressedWith(14_400, 0.368, {
      loads: { pull_N: 6000, shear_N: 0 },
      factors: { closed: 1 },
    });
    expectPublished(check(moment, 'opens').margin, '3.80');
  });
  test('opens where the separation load over the closing factor is the pull', () => {
    const moment = pressedWith(731, 0.27, { loads: { pull_N: 413 }, factors: { closed: 1.3 } });
    const opening = separationLoad({ preload: 731, loadFactor: 0.27 }).value;
    expectRelative(check(moment, 'opens').margin, opening / (1.3 * 413));
  });
  test('friction holds what the pull leaves of the clamp force (hand calculation)', () => {
    // Steel on brass, low end 0.10: 0.1 · (731 − 0.73 · 413) = 42.951 N against 1.3 · 29 = 37.7 N
    const moment = pressedWith(731, 0.27, { loads: { pull_N: 413, shear_N: 29 }, factors: { closed: 1.3 } });
    const { left, needed, margin } = check(moment, 'slips');
    expectRelative(left.value, 42.951);
    expectRelative(needed.value, 37.7);
    expectRelative(margin, 42.951 / 37.7);
  });
  test('an opened joint holds no shear at all', () => {
    const moment = pressedWith(100, 0.27, { loads: { pull_N: 413, shear_N: 29 } });
    expect(check(moment, 'opens').margin).toBeLessThan(1);
    expect(check(moment, 'slips').margin).toBe(0);
  });
  test('asks nothing that is not loaded, nor for opening where the screw feels the whole pull', () => {
    const by = (moment: Moment) => closedChecks(moment, TORQUE).map((one) => one.by);
    expect(by(pressedWith(731, 0.27, { loads: { pull_N: 0, shear_N: 0 } }))).toEqual([]);
    expect(by(pressedWith(731, 0.27, { loads: { pull_N: 0, shear_N: 17 } }))).toEqual(['slips']);
    expect(by(pressedWith(731, 1, { loads: { pull_N: 53, shear_N: 0 } }))).toEqual([]);
  });
  test('asks with the smallest force of the whole life', () => {
    const moment = pressedWith(731, 0.27, { loads: { pull_N: 413 } });
    const relaxed = { ...moment, leastLeft: given('R_F', 0.6, '-'), left: given('R_F', 0.9, '-') };
    expectRelative(check(relaxed, 'opens').margin, 0.6 * check(moment, 'opens').margin);
  });
});
