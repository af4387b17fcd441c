import { describe, expect, test } from 'vitest';
import { pullEntry, shearEntry } from '../../../src/core/joint/load-entries.ts';
import { assessed, type Changes, givenJoint } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

/** 83 N of pull and 19 N across on four screws. */
const ON_FOUR: Changes = {
  pattern: { kind: 'rectangular', columns: 2, rows: 2, spacingX_mm: 80, spacingY_mm: 60 },
};

describe('the load on a screw as it is put in', () => {
  test('is what was given where one screw has all of it', () => {
    const joint = givenJoint();
    expect(pullEntry(joint)).toEqual({ symbol: 'P', value: 83, unit: 'N' });
    expect(shearEntry(joint)).toEqual({ symbol: 'Q', value: 19, unit: 'N' });
  });
  test('leads to the load on the part where a pattern shares it: 83/4 and 19/4 N (hand calculation)', () => {
    const joint = givenJoint(ON_FOUR);
    const [pull, shear] = [pullEntry(joint), shearEntry(joint)];
    expectRelative(pull.value, 83 / 4);
    expectRelative(shear.value, 19 / 4);
    expect(pull.from).toBe(joint.group.loads.pull);
    expect(shear.from).toBe(joint.group.loads.shear);
    expectWays([pull, shear].flatMap(({ from }) => from ?? []));
  });
  test('is a value of its own where it was changed after the pattern was worked out', () => {
    const joint = givenJoint(ON_FOUR);
    const less = { ...joint, loads: { ...joint.loads, pull: 11, shear: 3 } };
    expect(pullEntry(less)).toEqual({ symbol: 'P', value: 11, unit: 'N' });
    expect(shearEntry(less)).toEqual({ symbol: 'Q', value: 3, unit: 'N' });
  });
  test('leads on from what an assessment asks', () => {
    const { torque, limits } = assessed(ON_FOUR);
    expectWays([torque.least, torque.most, ...limits.map(({ demand }) => demand)]);
  });
});
