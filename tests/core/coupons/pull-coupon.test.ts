import { describe, expect, test } from 'vitest';
import type { CouponWish } from '../../../src/core/coupons/held-insert.ts';
import { labelVolume } from '../../../src/core/coupons/label.ts';
import { pullCoupon } from '../../../src/core/coupons/pull-coupon.ts';
import {
  BOSS,
  holeOf,
  LARGER_PART,
  lyingDown,
  made,
  SMALL_HOLE,
  SMALL_INSERT,
  USUAL_BED,
} from '../../support/coupons.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const WISH: CouponWish = {
  host: LARGER_PART,
  hole: SMALL_HOLE,
  insert: SMALL_INSERT,
  number: 3,
  bed: USUAL_BED,
};
const couponOf = (changes: Partial<CouponWish> = {}) => made(pullCoupon({ ...WISH, ...changes }));

describe('the pull coupon', () => {
  test('has the joint’s hole exactly', () => {
    expect(couponOf().bore).toMatchObject({ drawn: 4.55, depth: 6.2, chamfer: 0.5 });
  });
  test('of a boss has that boss on a flange, with 2 mm under the hole', () => {
    const { boss, floor, flangeThickness } = couponOf({ host: BOSS });
    expect(boss?.diameter).toBe(8.8);
    expectRelative(boss?.height ?? 0, 8.2);
    expectRelative(floor, 2);
    // 1.5 · 5 = 7.5, up to layers of 0.2 mm
    expectRelative(flangeThickness, 7.6);
  });
  test('of a larger part is a block with 1.5 knurl diameters under the hole', () => {
    const { boss, floor, flangeThickness } = couponOf();
    expect(boss).toBeUndefined();
    expectRelative(floor, 7.6);
    expectRelative(flangeThickness, 7.6 + 6.2);
  });
  test.each([
    ['a larger part', LARGER_PART],
    ['a boss', BOSS],
    ['a boss lying down', lyingDown(BOSS)],
    ['a wide boss', { ...BOSS, bossDiameter: 21 }],
  ])('of %s is wide enough for the ring, which props neither boss nor number', (_what, host) => {
    const { ringInner, ringOuter, length, bore, label, boss, width } = couponOf({ host });
    expect(ringInner.value).toBeGreaterThanOrEqual((boss?.diameter ?? 0) + 4);
    expect(ringOuter - ringInner.value).toBe(12);
    expect(bore.at[0] - ringOuter / 2).toBeGreaterThanOrEqual(0);
    expect(bore.at[0] + ringOuter / 2).toBeLessThanOrEqual(length);
    expect(bore.at[1] - ringOuter / 2).toBeGreaterThanOrEqual(0);
    expect(label.at[1]).toBeGreaterThan(bore.at[1] + ringOuter / 2);
    expect(width).toBeGreaterThan(label.at[1] + 5.4);
  });
  test.each<[string, Partial<CouponWish>]>([
    ['in a larger part', {}],
    ['of a boss', { host: BOSS }],
    ['of a boss lying down', { host: lyingDown(BOSS) }],
    ['with a long number', { number: 48_057_613 }],
    ['in thick layers', { host: { ...BOSS, layerHeight: 0.28 } }],
  ])('has sides by their formulae %s', (_what, changes) => {
    const { sides, onBed, hole, bore, ringInner } = couponOf(changes);
    expect({ x: sides.x.value, y: sides.y.value, z: sides.z.value }).toEqual(onBed);
    expect([hole.drawn.value, hole.depth.value]).toEqual([bore.drawn, bore.depth]);
    expectWays([sides.x, sides.y, sides.z, ringInner]);
  });
  test('says that a boss lying down needs support', () => {
    expect(couponOf({ host: lyingDown(BOSS) }).notices).toEqual(['boss-needs-support']);
    expect(couponOf({ host: BOSS }).notices).toEqual([]);
    expect(couponOf({ host: lyingDown(LARGER_PART) }).notices).toEqual([]);
  });
  test('holds flange and boss less bore plus number (hand calculation)', () => {
    const bore = Math.PI * 2.275 ** 2 * 5.7 + (Math.PI / 3) * (2.775 ** 3 - 2.275 ** 3);
    const boss = Math.PI * 4.4 ** 2 * 8.2;
    const number = labelVolume({ number: 3, raised: 0.6 });
    expectRelative(couponOf({ host: BOSS }).volume.value, 27 * 35.4 * 7.6 + boss - bore + number);
  });
  test('lies in a box that holds the number, or the boss where there is one', () => {
    expect(couponOf().onBed).toEqual({ x: 27, y: 35.4, z: 14.4 });
    expect(couponOf({ host: BOSS }).onBed).toEqual({ x: 27, y: 35.4, z: 15.8 });
    expect(couponOf({ host: lyingDown(BOSS) }).onBed).toEqual({ x: 27, y: 15.7, z: 35.4 });
  });
});

describe('a pull coupon that cannot be made', () => {
  test.each<[string, Partial<CouponWish>, object]>([
    [
      'a mouth as wide as the boss',
      { host: { ...BOSS, bossDiameter: 5.4 } },
      { code: 'boss-without-wall', bossDiameter: 5.4 },
    ],
    [
      'a chamfer deeper than the hole',
      { hole: holeOf(4.4, 0.5, 0.7) },
      { code: 'chamfer-deeper-than-hole', chamfer: { value: 0.7 }, depth: { value: 0.5 } },
    ],
    [
      'a bed smaller than the flange',
      { bed: { x: 100, y: 34, z: 90 } },
      {
        code: 'larger-than-bed',
        size: { x: { value: 27 }, y: { value: 35.4 }, z: { value: 14.4 } },
        bed: { x: 100, y: 34, z: 90 },
      },
    ],
  ])('is refused: %s', (_what, changes, refusal) => {
    expect(pullCoupon({ ...WISH, ...changes })).toMatchObject({ kind: 'refused', refusal });
  });
});
