import { describe, expect, test } from 'vitest';
import { nutFactor, tighteningTorqueByNutFactor } from '../../../src/core/torque/nut-factor.ts';
import { tighteningTorque } from '../../../src/core/torque/tightening-torque.ts';
import { threadOf } from '../../fixtures/iso-965/threads.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

describe('nutFactor', () => {
  test.each([
    [2, 0.4, 3.48, 2.4, 0.1, '0.156'],
    [3, 0.5, 5.07, 3.4, 0.14, '0.197'],
    [4, 0.7, 6.53, 4.5, 0.2, '0.268'],
    [6, 1, 9.38, 6.6, 0.3, '0.381'],
    [8, 1.25, 12.33, 9, 0.12, '0.167'],
  ])(
    'of M%f × %f, face %f over %f mm, μ %f is %s (table for iso-4762 heads, derived)',
    (d, P, dw, dh, mu, printed) => {
      const screw = {
        thread: threadOf(d, P),
        threadFriction: mu,
        headFriction: mu,
        bearingDiameter: (dw + dh) / 2,
      };
      expectPublished(nutFactor(screw).value, printed);
    },
  );
  test('makes T = K·F·d the torque that pitch and both frictions make', () => {
    const screw = {
      thread: threadOf(5, 0.8),
      threadFriction: 0.11,
      headFriction: 0.23,
      bearingDiameter: 6.7,
    };
    const byFactor = { nutFactor: nutFactor(screw).value, force: 1710, nominalDiameter: 5 };
    expectRelative(
      tighteningTorqueByNutFactor(byFactor).value,
      tighteningTorque({ ...screw, force: 1710 }).value,
    );
  });
  test('carries what went in', () => {
    const screw = {
      thread: threadOf(5, 0.8),
      threadFriction: 0.11,
      headFriction: 0.23,
      bearingDiameter: 6.7,
    };
    expect(nutFactor(screw)).toMatchObject({ symbol: 'K', unit: '-', source: 'vdi-2230' });
    expect(nutFactor(screw).entries.map(({ symbol }) => symbol)).toEqual(['M_A/F', 'd']);
    expectWays([nutFactor(screw)]);
  });
});

describe('tighteningTorqueByNutFactor', () => {
  test('shigley.T.8-3b: K 0.2, 25 000 lbf, 0.75 in is 3750 lbf·in (shigley 9th ed., Example 8-3b, from memory)', () => {
    const torque = tighteningTorqueByNutFactor({ nutFactor: 0.2, force: 25000, nominalDiameter: 0.75 });
    expectPublished(torque.value, '3750');
    expect(torque).toMatchObject({ symbol: 'T', unit: 'N·mm', source: 'shigley', formula: 'K · F · d' });
  });
});
