import { describe, expect, test } from 'vitest';
import { spread } from '../../../src/app/drawing/spread.ts';
import fc from '../../support/fast-check.ts';

const items = fc.array(
  fc.record({
    ideal: fc.double({ min: -50, max: 650, noNaN: true }),
    size: fc.double({ min: 5, max: 40, noNaN: true }),
  }),
  { minLength: 1, maxLength: 9 },
);

describe('spread', () => {
  test('leaves things where they want to be when they have room', () => {
    const wishes = [
      { ideal: 31, size: 20 },
      { ideal: 77, size: 30 },
      { ideal: 190, size: 10 },
    ];
    expect(spread(wishes, { from: 0, to: 200, gap: 4 })).toEqual([31, 77, 190]);
  });

  test('moves two that want the same place apart by equal ways', () => {
    const wishes = [
      { ideal: 100, size: 20 },
      { ideal: 100, size: 20 },
    ];
    expect(spread(wishes, { from: 0, to: 300, gap: 6 })).toEqual([87, 113]);
  });

  test('keeps the order given, also against the wishes', () => {
    const wishes = [
      { ideal: 120, size: 10 },
      { ideal: 80, size: 10 },
    ];
    expect(spread(wishes, { from: 0, to: 300, gap: 2 })).toEqual([94, 106]);
  });

  test('keeps inside its range and lets nothing overlap, whatever the wishes', () => {
    fc.assert(
      fc.property(items, (wishes) => {
        const gap = 3;
        const middles = spread(wishes, { from: 0, to: 600, gap });
        wishes.forEach(({ size }, index) => {
          const middle = middles[index] ?? Number.NaN;
          expect(middle - size / 2).toBeGreaterThanOrEqual(-1e-6);
          expect(middle + size / 2).toBeLessThanOrEqual(600 + 1e-6);
          const next = wishes[index + 1];
          if (!next) return;
          const free = (middles[index + 1] ?? Number.NaN) - next.size / 2 - (middle + size / 2);
          expect(free).toBeGreaterThanOrEqual(gap - 1e-6);
        });
      }),
    );
  });
});
