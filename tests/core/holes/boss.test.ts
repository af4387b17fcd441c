import { describe, expect, test } from 'vitest';
import { leastBossDiameter, mouthChamfer, wallLines } from '../../../src/core/holes/boss.ts';
import { wallThickness } from '../../../src/core/host/wall-thickness.ts';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import fc from '../../support/fast-check.ts';
import { given, theInsert } from '../../support/joints.ts';
import { expectWays } from '../../support/ways.ts';

const insertOf = (knurl: number) =>
  insertDimensions(theInsert({ knurlDiameter_mm: [knurl], pilotDiameter_mm: [knurl - 0.5] }));
const lines = (lineWidth: number, convention: 'rounded-beads' | 'plain-beads') =>
  ({ wall: { kind: 'lines', count: 3, lineWidth, convention }, layerHeight: 0.2 }) as const;
const mm = (symbol: string, value: number) => given(symbol, value, 'mm');

describe('leastBossDiameter', () => {
  test('of a knurl of 5 mm is 8.8 mm, the next tenth over 8.75 (hand calculation)', () => {
    expect(leastBossDiameter(insertOf(5)).value).toBe(8.8);
  });
  test.each([
    ['4-40', 4.42, 3.99, 1.8],
    ['6-32', 5.23, 4.8, 2.11],
    ['8-32', 6.07, 5.59, 2.39],
    ['10-32', 6.86, 6.4, 2.79],
  ])(
    'covers hole and two walls of the insert %s, by 5 percent at most (insert-data-sheet)',
    (_, knurl, hole, wall) => {
      const boss = leastBossDiameter(insertOf(knurl)).value;
      expect(boss).toBeGreaterThanOrEqual(hole + 2 * wall);
      expect(boss).toBeLessThan(1.05 * (hole + 2 * wall));
    },
  );
  test('does not round a whole tenth up by binary dust: 1.75 · 4.8 is 8.4', () => {
    expect(leastBossDiameter(insertOf(4.8)).value).toBe(8.4);
  });
});

describe('wallLines', () => {
  test('of a boss of 8.8 round 4.3 mm in lines of 0.42 mm is 6 (hand calculation: 1.83/0.377 = 4.85, up, and 1)', () => {
    expect(wallLines(mm('D_b', 8.8), mm('D_t', 4.3), lines(0.42, 'rounded-beads')).value).toBe(6);
  });
  test('of the same in plain beads is 6 (hand calculation: 1.83/0.42 = 4.36, up, and 1); of 0.46 mm five', () => {
    expect(wallLines(mm('D_b', 8.8), mm('D_t', 4.3), lines(0.42, 'plain-beads')).value).toBe(6);
    expect(wallLines(mm('D_b', 8.8), mm('D_t', 4.3), lines(0.46, 'plain-beads')).value).toBe(5);
    expect(wallLines(mm('D_b', 8.8), mm('D_t', 4.3), lines(0.46, 'rounded-beads')).value).toBe(6);
  });
  test.each(['rounded-beads', 'plain-beads'] as const)('leads to the spacing of lines: %s', (convention) => {
    expectWays([wallLines(mm('D_b', 8.8), mm('D_t', 4.3), lines(0.46, convention))]);
  });
  test('is the smallest number whose wall fills the boss', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 0.9, noNaN: true }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.constantFrom<'rounded-beads' | 'plain-beads'>('rounded-beads', 'plain-beads'),
        (width, wanted, convention) => {
          const count = wallLines(
            mm('D_b', 4.3 + 2 * wanted),
            mm('D_t', 4.3),
            lines(width, convention),
          ).value;
          const wallOf = (n: number) =>
            wallThickness({
              wall: { kind: 'lines', count: n, lineWidth: width, convention },
              layerHeight: 0.2,
            }).value;
          expect(wallOf(count)).toBeGreaterThan(wanted - 1e-6);
          expect(count === 1 ? 0 : wallOf(count - 1)).toBeLessThan(wanted + 1e-6);
        },
      ),
    );
  });
});

describe('mouthChamfer', () => {
  test('lies between 0.3 and 0.6 mm (common practice)', () => {
    expect(mouthChamfer()).toMatchObject({ value: 0.5, unit: 'mm', standing: 'common-practice' });
  });
});
