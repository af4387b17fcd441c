import { describe, expect, test } from 'vitest';
import { noRoomAtAll, tooLittleRoom } from '../../../src/core/joint/room-for-insert.ts';
import { tighten } from '../../../src/core/joint/tightening.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';

const atAll = (changes: Changes) => noRoomAtAll(answerableJoint(changes), theInsert());
const little = (changes: Changes) => {
  const joint = answerableJoint(changes);
  return tooLittleRoom(joint, tighten(joint, theInsert()).found);
};

describe('noRoomAtAll', () => {
  test('a usual joint has room', () => {
    expect(atAll({})).toBeUndefined();
  });
  test('a boss no wider than the knurl of 4.93 mm is none', () => {
    // One line of 0.43 mm on each side: 4.93 + 0.86.
    expect(atAll({ host: { bossDiameter_mm: 4.93 } })).toEqual({
      code: 'boss-too-small',
      bossDiameter: 4.93,
      leastDiameter: 4.93 + 2 * 0.43,
    });
    expect(atAll({ host: { bossDiameter_mm: 4.94 } })).toBeUndefined();
  });
  test('a far-side insert needs a shoulder of 1 mm: 5.3 mm is 5.4 in layers of 0.2', () => {
    expect(atAll({ insertSide: 'far-side', host: { thickness_mm: 6.3 } })).toMatchObject({
      code: 'part-too-thin',
      thickness: 6.3,
      floor: 1,
    });
    expect(atAll({ insertSide: 'far-side', host: { thickness_mm: 6.5 } })).toBeUndefined();
    expect(atAll({ host: { thickness_mm: 6.3 } })).toBeUndefined();
  });
});

describe('tooLittleRoom', () => {
  test('a usual joint has room', () => {
    expect(little({})).toBeUndefined();
  });
  test('a floor below 1 mm is too thin', () => {
    expect(little({ host: { thickness_mm: 6.9 } })).toMatchObject({
      code: 'part-too-thin',
      thickness: 6.9,
      floor: 1,
    });
  });
  test('a boss needs one line of wall all round', () => {
    expect(little({ host: { bossDiameter_mm: 5.7 } })).toMatchObject({
      code: 'boss-too-small',
      bossDiameter: 5.7,
    });
    expect(little({ host: { bossDiameter_mm: 5.9 } })).toBeUndefined();
  });
});
