import { describe, expect, test } from 'vitest';
import { bellOnLattice } from '../../../src/core/evidence/lattice-bell.ts';
import { expectRelative } from '../../support/published.ts';

const bell = (place: number): number => -((place - 4.3) ** 2) / (2 * 2.1 ** 2) + 61;

describe('bellOnLattice', () => {
  test.each([-40, 4, 33])('adds up to √(2π)·s from a start at %d', (start) => {
    const { peak, greatest, total } = bellOnLattice(bell, start);
    expect(peak).toBe(4);
    expectRelative(greatest + Math.log(total), 61 + Math.log(Math.sqrt(2 * Math.PI) * 2.1), 1e-7);
  });
  test('shows every place once, down to exp(−14)', () => {
    const seen = new Map<number, number>();
    bellOnLattice(bell, 0, (place, value) => {
      expect(seen.has(place)).toBe(false);
      seen.set(place, value);
    });
    // 2.1 · √28 = 11.1 each side of 4.3: from −6 to 15.
    expect([...seen.keys()].sort((a, b) => a - b)).toEqual(
      Array.from({ length: 22 }, (_, index) => index - 6),
    );
    expectRelative(seen.get(7) ?? 0, Math.exp(bell(7) - bell(4)));
  });
});
