import { describe, expect, test } from 'vitest';
import { evaluated } from '../derivation/evaluate-formula.ts';
import { CALCULATED, stepsOf } from './calculations.ts';

describe('every step of the calculation', () => {
  test.each(CALCULATED.map((one) => [one.name, one] as const))('can be worked out again: %s', (_, one) => {
    const wrong = stepsOf(one).flatMap(({ derived }) => {
      let again: number | undefined;
      try {
        again = evaluated(derived);
      } catch (error) {
        return [`${derived.symbol} = ${derived.formula}: ${String(error)}`];
      }
      if (again === undefined) return [];
      const off = Math.abs(again - derived.value) / Math.max(Math.abs(derived.value), 1e-12);
      return off <= 1e-9 ? [] : [`${derived.symbol} = ${derived.formula}: ${again} against ${derived.value}`];
    });
    expect([...new Set(wrong)]).toEqual([]);
  });
});
