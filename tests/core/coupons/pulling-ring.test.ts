import { describe, expect, test } from 'vitest';
import { ringInnerDiameter } from '../../../src/core/coupons/pulling-ring.ts';
import { BOSS, LARGER_PART, SMALL_INSERT } from '../../support/coupons.ts';

const insertOf = (knurl: number, knurled: number) => ({
  knurlDiameter: { ...SMALL_INSERT.knurlDiameter, value: knurl },
  knurledLength: { ...SMALL_INSERT.knurledLength, value: knurled },
});
const wallOf = (value: number) => ({ ...LARGER_PART.wall, value });

describe('ringInnerDiameter', () => {
  test.each([
    ['three knurl diameters', insertOf(5, 3.6), 1.17, undefined, 15],
    // 1.55 · 5 + 1.27 · 9.3 = 19.56
    ['the reach of the sheared plastic of a long insert', insertOf(5, 9.3), 1.17, undefined, 20],
    // 4.2 + 2 · 3.3 + 4 = 14.8
    ['thick walls and 2 mm a side', insertOf(4.2, 3.1), 3.3, undefined, 15],
    // 14.6 + 4 = 18.6
    ['the joint’s boss and 2 mm a side', insertOf(5.1, 4.1), 1.17, 14.6, 19],
  ])('is up to the next millimetre of %s (hand calculation)', (_what, insert, wall, boss, expected) => {
    const host = { wall: wallOf(wall), ...(boss === undefined ? {} : { bossDiameter: boss }) };
    expect(ringInnerDiameter(insert, host).value).toBe(expected);
  });
  test('is an estimate of this program with all that went in', () => {
    const ring = ringInnerDiameter(SMALL_INSERT, BOSS);
    expect(ring).toMatchObject({ symbol: 'D_r', unit: 'mm', source: 'own-model', standing: 'estimate' });
    expect(ring.entries.map(({ symbol }) => symbol)).toEqual(['D_k', 'L_k', 't', 'boss']);
  });
});
