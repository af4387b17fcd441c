import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/core/joint/assess.ts';
import { askedTorque, holdOf, holdsAtBest } from '../../../src/core/service/hold.ts';
import { answerableJoint, type Changes, given, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { askedOf, heldOf } from './subject-of.ts';

/** The whole pull comes on top of the clamp force here and in the torque window, and nothing creeps. */
const AT_THE_LIMIT: Changes = { gap_mm: 0.4, loads: { pull_N: 31, shear_N: 3, duration_h: 0 } };

describe('holdOf', () => {
  test('asks the three times and shows the one with the smallest margin', () => {
    const { states, worst } = heldOf({ clamped: { material: 'petg' } });
    expect(states.map(({ id }) => id)).toEqual(['assembly', 'in-service', 'after']);
    expect(worst.margin).toBe(Math.min(...states.map(({ margin }) => margin)));
  });
  test('holds with margins of at least 1, fails below', () => {
    expect(heldOf().verdict).toBe('holds');
    const { verdict, worst } = heldOf({ clamped: { material: 'petg' }, loads: { shear_N: 190 } });
    expect(verdict).toBe('fails');
    expect(worst.margin).toBeLessThan(1);
  });
  test('holds at the very end of the window: the torque that uses a mode up has a margin of 1', () => {
    for (const pull_N of [17, 23.7, 31, 38.3]) {
      const joint = answerableJoint({ ...AT_THE_LIMIT, loads: { ...AT_THE_LIMIT.loads, pull_N } });
      const insert = theInsert();
      const { most } = assess(joint, insert).torque;
      const hold = holdOf(joint, insert, most);
      expectRelative(hold.worst.margin, 1, 1e-9);
      expect(hold.verdict).toBe('holds');
      expect(holdOf(joint, insert, { ...most, value: 1.0001 * most.value }).verdict).toBe('fails');
    }
  });
  test('holds at the very end of the window for all of its time, where creep is little known and where it is known', () => {
    const insert = theInsert();
    for (const [material, pull_N, retightenings] of [
      ['petg', 8, 0],
      ['petg', 17, 2],
      ['pc', 27, 0],
    ] as const) {
      const joint = answerableJoint({
        gap_mm: 0.4,
        host: { material },
        loads: { pull_N, shear_N: 0, retightenings },
      });
      const { most } = assess(joint, insert).torque;
      const after = holdOf(joint, insert, most).states.find(({ id }) => id === 'after');
      const smallest = Math.min(...(after?.limits.flatMap(({ factor }) => factor ?? []) ?? []));
      expectRelative(smallest / joint.factors.limits, 1, 1e-9);
    }
  });
  test('keeps the torque it was asked at', () => {
    const { joint, insert } = askedOf();
    const torque = given('T', 431, 'N·mm');
    expect(holdOf(joint, insert, torque).torque).toBe(torque);
  });
});

describe('holdsAtBest', () => {
  const asked = (torque: number, changes: Changes) => {
    const joint = answerableJoint(changes);
    const hold = holdOf(joint, theInsert(), given('T', torque, 'N·mm'));
    return { verdict: hold.verdict, atBest: holdsAtBest(joint, theInsert(), hold) };
  };
  test('is true of a joint that fails by what is little known of its creep alone', () => {
    expect(asked(160, { gap_mm: 0.4, loads: { pull_N: 31, shear_N: 3 } })).toEqual({
      verdict: 'fails',
      atBest: true,
    });
  });
  test('is false of one that holds anyway, of one that fails anyway, and of a polymer that is known', () => {
    expect(asked(160, { loads: { pull_N: 11, shear_N: 1 } })).toEqual({ verdict: 'holds', atBest: false });
    expect(asked(160, { gap_mm: 0.4, loads: { pull_N: 900 } })).toEqual({ verdict: 'fails', atBest: false });
    const known: Changes = { gap_mm: 0.4, host: { material: 'pc' }, loads: { pull_N: 90, shear_N: 9 } };
    expect(asked(400, known)).toEqual({ verdict: 'fails', atBest: false });
  });
});

describe('askedTorque', () => {
  test('is the setting of a window', () => {
    const { torque } = assess(answerableJoint(), theInsert());
    expect(torque.kind).toBe('window');
    expect(askedTorque(torque)).toMatchObject({ symbol: 'T' });
  });
  test('without a window is the largest that the limits allow', () => {
    const { torque } = assess(answerableJoint({ gap_mm: 0.4, loads: { pull_N: 120 } }), theInsert());
    expect(torque.kind).toBe('refused');
    expect(askedTorque(torque)).toBe(torque.most);
  });
  test('is none where the pull alone uses a mode up', () => {
    const { torque } = assess(answerableJoint({ gap_mm: 0.4, loads: { pull_N: 3900 } }), theInsert());
    expect(torque.most.value).toBe(0);
    expect(askedTorque(torque)).toBeUndefined();
  });
});
