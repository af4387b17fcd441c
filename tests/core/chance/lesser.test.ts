import { describe, expect, test } from 'vitest';
import { heldShare, lesser } from '../../../src/core/chance/lesser.ts';
import { biteFactorOf } from '../../../src/core/holes/bore.ts';
import fc from '../../support/fast-check.ts';

const force = fc.double({ min: -1e5, max: 1e5, noNaN: true });

describe('lesser', () => {
  test('is the lesser of two numbers, to the last digits of the greater', () => {
    expect([lesser(3, 7), lesser(7, 3), lesser(-2.5, 1), lesser(4.25, 4.25)]).toEqual([3, 3, -2.5, 4.25]);
    fc.assert(
      fc.property(force, force, (one, other) => {
        const room = 4 * Number.EPSILON * Math.max(Math.abs(one), Math.abs(other));
        expect(Math.abs(lesser(one, other) - Math.min(one, other))).toBeLessThanOrEqual(room);
      }),
    );
  });
});

describe('heldShare', () => {
  test('is the share of the bite that biteFactorOf gives', () => {
    const bore = fc.double({ min: 3.5, max: 5.5, noNaN: true });
    fc.assert(
      fc.property(bore, (expected) => {
        const [knurl, intended] = [4.93, 4.27];
        const held = heldShare((knurl - expected) / (knurl - intended));
        expect(Math.abs(held - biteFactorOf({ knurl, intended, expected }))).toBeLessThanOrEqual(1e-14);
        expect(held).toBeGreaterThanOrEqual(0);
        expect(held).toBeLessThanOrEqual(1);
      }),
    );
  });
});
