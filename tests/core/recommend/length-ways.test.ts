import { describe, expect, test } from 'vitest';
import { lengthCurve } from '../../../src/core/recommend/length-curve.ts';
import { lengthWays } from '../../../src/core/recommend/length-ways.ts';
import { derivationsWithin } from '../../../src/wording/symbols.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const LENGTHS = [2.3, 4.1, 7.7] as const;

const JOINTS: readonly (readonly [string, Changes])[] = [
  ['on the insert', {}],
  ['over a gap', { gap_mm: 0.4 }],
  ['over a gap, pulled so hard that no setting fits', { gap_mm: 1.1, loads: { pull_N: 290 } }],
  ['sunk, hammered, in a boss', { sunk_mm: 0.3, setting: 'hammered', host: { bossDiameter_mm: 9.7 } }],
  ['from the far side', { insertSide: 'far-side', host: { thickness_mm: 23 } }],
  [
    'in a hole that is too shallow',
    { holes: { existing: { diameter_mm: 4.4, known: 'as-drawn', depth_mm: 3 } } },
  ],
  ['in a hole as wide as the knurl', { holes: { existing: { diameter_mm: 4.96, known: 'as-measured' } } }],
  ['of a little known plastic', { host: { material: 'pla-plus' }, gap_mm: 0.4 }],
  ['tightened by hand', { tool: { kind: 'hand', settings_Nm: [] } }],
];

describe('lengthWays', () => {
  test.each(JOINTS)('lead to the points of the curve %s', (_, changes) => {
    const joint = answerableJoint(changes);
    const points = lengthCurve(joint, theInsert(), LENGTHS);
    expect(points).toHaveLength(LENGTHS.length);
    for (const { length, median, characteristic, upper, jackOutTorque, dial } of points) {
      const ways = lengthWays(joint, theInsert(), { length, lengths: LENGTHS });
      expect(ways.median.value).toBe(median);
      expect(ways.characteristic.value).toBe(characteristic);
      expect(ways.upper.value).toBe(upper);
      expect(ways.jackOutTorque.value).toBe(jackOutTorque);
      expect(ways.dial?.value).toBe(dial);
    }
  });
  test.each(JOINTS)(
    'come to what their formulae come to, with a meaning for each symbol, %s',
    (_, changes) => {
      const joint = answerableJoint(changes);
      const ways = lengthWays(joint, theInsert(), { length: 4.1, lengths: LENGTHS });
      expectWays([ways.upper, ways.jackOutTorque, ...(ways.dial ? [ways.dial] : [])]);
    },
  );
  test('name no drawn length as measured: the knurled one is what the plain part leaves of it', () => {
    const { median, dial } = lengthWays(
      answerableJoint({ gap_mm: 0.4, loads: { pull_N: 12, shear_N: 1 } }),
      theInsert(),
      { length: 4.1, lengths: LENGTHS },
    );
    const within = [median, ...(dial ? [dial] : [])].flatMap((way) => [...derivationsWithin(way)]);
    const knurled = within.filter(({ symbol, formula }) => symbol === 'L_k' && formula === 'L − l_n');
    expect(knurled.length).toBeGreaterThan(1);
    // Not knurled: 0.28 · 4.93 mm, the usual share of the knurl's diameter.
    for (const { value } of knurled) expectRelative(value, 4.1 - 0.28 * 4.93, 1e-9);
    const drawn = within.filter(({ symbol, value }) => symbol === 'L' && value === 4.1);
    for (const { standing } of drawn) expect(standing).toBe('estimate');
  });
  test('of what 1 of 20 holds are R²/R_k: as far above the median as 19 of 20 lie below (hand calculation)', () => {
    // t · s = 2.1318 · √(0.30² + 0.10²) = 0.6741; exp(0.6741) = 1.962
    const { upper, median } = lengthWays(answerableJoint(), theInsert(), { length: 5.3, lengths: [5.3] });
    expectPublished(upper.value / median.value, '1.962');
  });
});
