import { describe, expect, test } from 'vitest';
import type { Derived } from '../../src/core/sources/derived.ts';
import { derivationsWithin, meaningOfEntry, meaningOfSymbol } from '../../src/wording/symbols.ts';
import { couponSet } from '../support/coupon-set.ts';

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
