import { describe, expect, test } from 'vitest';
import { bossSection, bossTear, bossTearForce } from '../../../src/core/pull-out/boss-tear.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';
import { expectWays } from '../../support/ways.ts';

const sectionOf = (boss: number, changes: object = {}) =>
  bossSection(situationOfNumbers({ wall: 1.2, density: 0.37, boss, ...changes }), boss).value;

describe('bossSection', () => {
  test('of walls that meet is the whole ring (hand calculation: π/4 · (8.8² − 4.3²))', () => {
    expectPublished(sectionOf(8.8), '46.3');
  });
  test('of a hollow boss is two rings and the infill between (hand calculation)', () => {
    // Dw 6.7, Di 9.6: π/4 · (44.89 − 18.49 + 144 − 92.16 + 0.37 · 47.27) = π/4 · 95.73
    expectPublished(sectionOf(12), '75.2');
  });
  test('has no step where the walls begin to part, and is the ring for a solid', () => {
    // Walls of 1.2 mm meet in a boss of 4.3 + 4 · 1.2 = 9.1 mm.
    expectRelative(sectionOf(9.1 - 1e-9), sectionOf(9.1 + 1e-9), 1e-8);
    expectRelative(sectionOf(13.1, { density: 1 }), (Math.PI / 4) * (13.1 ** 2 - 4.3 ** 2));
  });
});

describe('every number of a torn boss', () => {
  test.each([
    ['walls that meet', 8.8, ['D_b', 'D_t', 't', 'D_w']],
    ['walls that fill it', 6.1, ['D_b', 'D_t', 't', 'D_w']],
    ['infill between two rings', 12, ['D_w', 'D_t', 'D_b', 'D_i', 'ρ']],
  ] as const)('comes to what its formula comes to: %s', (_, boss, symbols) => {
    const situation = situationOfNumbers({ wall: 1.2, density: 0.37, boss });
    expect(bossSection(situation, boss).entries.map(({ symbol }) => symbol)).toEqual(symbols);
    expectWays([bossTearForce(situation, boss)]);
  });
});

describe('bossTearForce', () => {
  test('is the strength along the axis times the section (hand calculation: 29 · 46.30)', () => {
    expectPublished(bossTearForce(situationOfNumbers({ wall: 1.2, boss: 8.8 }), 8.8).value, '1343');
  });
});

describe('bossTear', () => {
  test('is there only in a free boss', () => {
    expect(bossTear.capacity(situationOfNumbers())).toBeUndefined();
    expect(bossTear.capacity(situationOfNumbers({ boss: 9.7 }))?.median.symbol).toBe('F_bt');
  });
  test('is loaded by the clamp force over a gap alone', () => {
    expect((['on-insert', 'on-plastic', 'over-gap', 'far-side'] as const).map(bossTear.path)).toEqual([
      'pull',
      'pull',
      'clamp',
      'none',
    ]);
  });
});
