import { expect } from 'vitest';
import type { Derived } from '../../src/core/sources/derived.ts';
import { derivationsWithin, meaningOfEntry, meaningOfSymbol } from '../../src/wording/symbols.ts';
import { evaluated } from '../app/derivation/evaluate-formula.ts';
import { expectRelative } from './published.ts';

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
