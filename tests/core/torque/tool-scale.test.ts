import { describe, expect, test } from 'vitest';
import { SCALE_UNITS, torqueOnScale } from '../../../src/core/torque/tool-scale.ts';
import { fromCore } from '../../../src/core/units/convert.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const TORQUES = [given('T', 617, 'N·mm'), given('T_least', 43.1, 'N·mm'), given('T_most', 12_900, 'N·mm')];

describe('torqueOnScale', () => {
  test.each([
    ['lbf·in', '1.129848e-1'],
    ['kgf·cm', '9.80665e-2'],
    ['cN·m', '1e-2'],
  ] as const)(
    'reads 1 at one %s, which is %s N·m (NIST SP 811, appendix B, from memory)',
    (unit, newtonMetres) => {
      const { value } = torqueOnScale(given('T', 1000, 'N·mm'), unit);
      expectPublished(1 / value, newtonMetres);
    },
  );
  test('agrees with the conversion of units, and comes to what its formula comes to', () => {
    for (const torque of TORQUES) {
      for (const unit of SCALE_UNITS) {
        const onScale = torqueOnScale(torque, unit);
        expectRelative(onScale.value, fromCore(torque.value, unit));
        expectWays([onScale]);
      }
    }
  });
  test('keeps the way of the torque', () => {
    for (const torque of TORQUES) expect(torqueOnScale(torque, 'lbf·in').entries[0]?.from).toBe(torque);
  });
});
