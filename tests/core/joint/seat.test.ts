import { describe, expect, test } from 'vitest';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import { findSeat } from '../../../src/core/joint/seat.ts';
import { type Changes, givenJoint, theInsert } from '../../support/joints.ts';

const seatOf = (changes: Changes) => findSeat(givenJoint(changes), insertDimensions(theInsert()));

describe('findSeat', () => {
  test.each([
    [{}, 'on-insert', 'clearance-smaller-than-knurl'],
    [{ gap_mm: 0.01 }, 'over-gap', 'gap-open'],
    [{ sunk_mm: 0.3 }, 'on-plastic', 'insert-sunk'],
    [{ gap_mm: 0.4, sunk_mm: 0.3 }, 'over-gap', 'gap-open'],
    [
      { clamped: { clearanceHole_mm: 4.93 }, screw: { washer: 'plain' } },
      'on-plastic',
      'clearance-reaches-knurl',
    ],
    [{ clamped: { clearanceHole_mm: 4.92 } }, 'on-insert', 'clearance-smaller-than-knurl'],
    [{ insertSide: 'far-side', gap_mm: 0.4 }, 'far-side', 'insert-from-far-side'],
  ] as const)('of %j is %s (insert-design-guide)', (changes, kind, reason) => {
    expect(seatOf(changes)).toMatchObject({ kind, reason, fromGeometry: kind, knurlDiameter: 4.93 });
  });
  test('may be overruled, and keeps what the geometry gave', () => {
    expect(seatOf({ seat: 'over-gap' })).toMatchObject({
      kind: 'over-gap',
      reason: 'overruled',
      fromGeometry: 'on-insert',
    });
  });
  test('is not overruled by what the geometry gives anyway', () => {
    expect(seatOf({ seat: 'on-insert' })).toEqual(seatOf({}));
  });
});
