import { describe, expect, test } from 'vitest';
import { holeGauge } from '../../src/core/coupons/hole-gauge.ts';
import { pullCoupon } from '../../src/core/coupons/pull-coupon.ts';
import { torqueCoupon } from '../../src/core/coupons/torque-coupon.ts';
import type { Derived } from '../../src/core/sources/derived.ts';
import { derivationsWithin, meaningOfEntry, meaningOfSymbol } from '../../src/wording/symbols.ts';
import { couponSet } from '../support/coupon-set.ts';
import { BOSS, holeOf, LARGER_PART, SMALL_HOLE, SMALL_INSERT, USUAL_BED } from '../support/coupons.ts';
import { expectWays } from '../support/ways.ts';

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;
const isDerived = (value: object): value is Derived => 'formula' in value;

/** Every number of a coupon, whether by itself or in a list or a group. */
const numbersOf = (coupon: object): readonly Derived[] =>
  Object.values<unknown>({ ...coupon })
    .filter(isObject)
    .flatMap((value) => (isDerived(value) ? [value] : numbersOf(value)));

describe('the symbols of a coupon', () => {
  test.each(Object.entries(couponSet()))(
    'have a meaning each, with what went into them: %s',
    (_name, coupon) => {
      const derivations = numbersOf(coupon).flatMap((derived) => [...derivationsWithin(derived)]);
      expect(derivations.map(({ symbol }) => symbol)).toContain('V_c');
      for (const derived of derivations) {
        const { symbol, unit, source, entries } = derived;
        expect(meaningOfSymbol(symbol, { unit, source }), symbol).toBeDefined();
        for (const entry of entries)
          expect(meaningOfEntry(entry, derived), entry.symbol).not.toBe(entry.symbol);
      }
    },
  );
});

describe('the numbers of a coupon that is not made', () => {
  const gauge = { host: LARGER_PART, hole: SMALL_HOLE, count: 7, step: 0.1, bed: USUAL_BED };
  const torque = { ...gauge, insert: SMALL_INSERT, number: 29, clearanceHole: 3.4, gap: 1.3 };
  test.each([
    ['bore-too-small', holeGauge({ ...gauge, hole: holeOf(1.6, 3, 0), count: 9, step: 0.25 })],
    ['too-many-bores', holeGauge({ ...gauge, count: 40 })],
    ['chamfer-deeper-than-hole', holeGauge({ ...gauge, hole: holeOf(4.4, 0.6, 0.7) })],
    ['boss-without-wall', pullCoupon({ ...torque, host: { ...BOSS, bossDiameter: 5.4 } })],
    ['boss-without-rim', torqueCoupon({ ...torque, host: { ...BOSS, bossDiameter: 7.4 } })],
    ['larger-than-bed', torqueCoupon({ ...torque, bed: { x: 20, y: 21, z: 22 } })],
  ] as const)('come to what their formulae come to, with a meaning each: %s', (code, answer) => {
    if (!('refusal' in answer)) throw new Error('made');
    expect(answer.refusal.code).toBe(code);
    const numbers = numbersOf(answer.refusal);
    expect(numbers).not.toEqual([]);
    expectWays(numbers);
  });
});
