import { expect } from 'vitest';
import type { Derived, Entry } from '../../src/core/sources/derived.ts';
import { wayOf } from '../../src/core/steps/steps.ts';
import { derivationsWithin, meaningOfEntry, meaningOfSymbol } from '../../src/wording/symbols.ts';
import { evaluated } from '../app/derivation/evaluate-formula.ts';
import { expectRelative } from './published.ts';

/** The way to a value put in, whenever it is made. */
export const wayTo = (one: Entry | undefined): Derived | undefined =>
  one === undefined ? undefined : wayOf(one);

/** Every number of some derivations comes to what its formula comes to, and each symbol has a meaning. */
export function expectWays(numbers: readonly Derived[]): void {
  for (const derived of numbers.flatMap((one) => [...derivationsWithin(one)])) {
    const value = derived.formula === derived.symbol ? undefined : evaluated(derived);
    if (value !== undefined) expectRelative(value, derived.value, 1e-9);
    expect(meaningOfSymbol(derived.symbol, derived), derived.symbol).toBeDefined();
    for (const entry of derived.entries) {
      expect(meaningOfEntry(entry, derived), `${entry.symbol} in ${derived.symbol}`).not.toBe(entry.symbol);
    }
  }
}
