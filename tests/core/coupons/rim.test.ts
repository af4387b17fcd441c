import { describe, expect, test } from 'vitest';
import { leastWasherOver, rimInnerDiameter } from '../../../src/core/coupons/rim.ts';
import { holeOf, SMALL_HOLE, SMALL_INSERT } from '../../support/coupons.ts';
import { expectRelative } from '../../support/published.ts';

describe('rimInnerDiameter', () => {
  test.each([
    ['the knurl and 1 mm', holeOf(4.6, 6, 0.3), 3.4, 6],
    ['a clearance hole that is wider still', SMALL_HOLE, 7.3, 7.3],
    ['a wide mouth and 0.5 mm', holeOf(4.8, 6, 0.7), 3.4, 6.7],
  ])('clears %s', (_what, hole, clearanceHole, expected) => {
    expectRelative(rimInnerDiameter({ insert: SMALL_INSERT, hole, clearanceHole }).value, expected);
  });
});

describe('leastWasherOver', () => {
  test('lies on the rim by half a millimetre a side', () => {
    const rim = rimInnerDiameter({ insert: SMALL_INSERT, hole: SMALL_HOLE, clearanceHole: 8.4 });
    const washer = leastWasherOver(rim);
    expectRelative(washer.value, 9.4);
    expect(washer.entries.map(({ from }) => from)).toEqual([rim]);
  });
});
