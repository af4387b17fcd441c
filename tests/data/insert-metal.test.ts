import { describe, expect, test } from 'vitest';
import { INSERT_METAL } from '../../src/data/insert-metal.ts';

describe('INSERT_METAL', () => {
  test.each([
    ['yield', 220, 124, 359],
    ['tensile', 350, 338, 500],
    ['shear', 220, 207, 262],
    ['modulus', 97_000, 90_000, 105_000],
  ] as const)('has a %s of %i MPa, from %i to %i (brass-data)', (column, value, low, high) => {
    expect(INSERT_METAL[column]).toEqual({ value, low, high, provenance: 'read' });
    expect(INSERT_METAL.source).toBe('brass-data');
  });

  test('yields before it breaks, and shears between 0.577 and 0.7 of its tensile strength', () => {
    expect(INSERT_METAL.yield.value).toBeLessThan(INSERT_METAL.tensile.value);
    const ratio = INSERT_METAL.shear.value / INSERT_METAL.tensile.value;
    expect(ratio).toBeGreaterThan(0.577);
    expect(ratio).toBeLessThan(0.7);
  });
});
