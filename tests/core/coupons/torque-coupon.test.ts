import { describe, expect, test } from 'vitest';
import { labelVolume } from '../../../src/core/coupons/label.ts';
import type { TorqueWish } from '../../../src/core/coupons/torque-block.ts';
import { torqueCoupon } from '../../../src/core/coupons/torque-coupon.ts';
import {
  BOSS,
  LARGER_PART,
  lyingDown,
  made,
  SMALL_HOLE,
  SMALL_INSERT,
  USUAL_BED,
} from '../../support/coupons.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const WISH: TorqueWish = {
  host: LARGER_PART,
  hole: SMALL_HOLE,
  insert: SMALL_INSERT,
  number: 29,
  bed: USUAL_BED,
  clearanceHole: 3.4,
  gap: 1.3,
};
const couponOf = (changes: Partial<TorqueWish> = {}) => made(torqueCoupon({ ...WISH, ...changes }));

describe('the torque coupon', () => {
  test('has a rim above the knurl and a washer that bridges it', () => {
    const { rimInner, rim, leastWasher } = couponOf();
    expect(rimInner.value).toBeGreaterThan(SMALL_INSERT.knurlDiameter.value);
    expectRelative(rim.outer, 4.55 + 1 + 0.5 + 6);
    expectRelative(leastWasher.value, 7.05);
    expect(leastWasher.value).toBeLessThan(rim.outer);
  });
  test.each<[string, Partial<TorqueWish>]>([
    ['in a larger part', {}],
    ['on bosses', { host: BOSS }],
    ['on wide bosses lying down', { host: lyingDown({ ...BOSS, bossDiameter: 23 }) }],
    ['with a long number', { number: 48_057_613 }],
    ['with a low rim', { gap: 0.2 }],
  ])('has sides by their formulae %s', (_what, changes) => {
    const { sides, onBed, hole, bore, leastWasher } = couponOf(changes);
    expect({ x: sides.x.value, y: sides.y.value, z: sides.z.value }).toEqual(onBed);
    expect([hole.drawn.value, hole.depth.value]).toEqual([bore.drawn, bore.depth]);
    expectWays([sides.x, sides.y, sides.z, leastWasher]);
  });
  test('raises the rim by the joint’s gap, by 1 mm where it has none', () => {
    expect(couponOf().rim.height).toBe(1.3);
    expect(couponOf({ gap: 0 }).rim.height).toBe(1);
  });
  test('on bosses has the rim on top of one, as wide as it', () => {
    const { boss, rim, baseThickness } = couponOf({ host: BOSS });
    expect(rim.outer).toBe(8.8);
    expectRelative(boss?.height ?? 0, 8.2);
    expectRelative(baseThickness, 7.6);
  });
  test.each([
    ['a larger part', LARGER_PART],
    ['bosses', BOSS],
    ['wide bosses lying down', lyingDown({ ...BOSS, bossDiameter: 23 })],
  ])('of %s keeps the two inserts as far apart as a pull needs, and the number off both', (_what, host) => {
    const { flatAt, rimAt, rim, length, width, label, boss } = couponOf({ host });
    const apart = rimAt[0] - flatAt[0];
    const widest = Math.max(rim.outer, boss?.diameter ?? 0);
    expect(apart).toBeGreaterThanOrEqual(15);
    expect(apart).toBeGreaterThan(widest + 2);
    expect(flatAt[0] - widest / 2).toBeGreaterThan(1);
    expect(length - rimAt[0] - widest / 2).toBeGreaterThan(1);
    expect(label.at[1]).toBeGreaterThan(flatAt[1] + widest / 2 + 1);
    expect(width).toBeGreaterThan(label.at[1] + 5.4 + 1);
  });
  test('holds block and rim less two bores plus number (hand calculation)', () => {
    const bore = Math.PI * 2.275 ** 2 * 5.7 + (Math.PI / 3) * (2.775 ** 3 - 2.275 ** 3);
    const rim = Math.PI * (6.025 ** 2 - 3.025 ** 2) * 1.3;
    const number = labelVolume({ number: 29, raised: 0.6 });
    // Two fields of 12.05 + 3 mm beside one another; 15.05 + 5.4 + 1.5 wide; 7.6 + 6.2 thick.
    expectRelative(couponOf().volume.value, 30.1 * 21.95 * 13.8 + rim - 2 * bore + number);
  });
  test('says that bosses lying down need support', () => {
    expect(couponOf({ host: lyingDown(BOSS) }).notices).toEqual(['boss-needs-support']);
    expect(couponOf().notices).toEqual([]);
  });
});

describe('a torque coupon that cannot be made', () => {
  test('is refused for a boss without room for a rim of two lines', () => {
    expect(torqueCoupon({ ...WISH, host: { ...BOSS, bossDiameter: 7.4 } })).toMatchObject({
      kind: 'refused',
      refusal: { code: 'boss-without-rim', least: 0.8, bossDiameter: 7.4 },
    });
  });
  test('is refused for a mouth wider than the boss, and for a bed that it does not stand on', () => {
    expect(torqueCoupon({ ...WISH, host: { ...BOSS, bossDiameter: 5.2 } })).toMatchObject({
      refusal: { code: 'boss-without-wall' },
    });
    const bed = { x: 29, y: 180, z: 170 };
    expect(torqueCoupon({ ...WISH, bed })).toMatchObject({ refusal: { code: 'larger-than-bed', bed } });
  });
});
