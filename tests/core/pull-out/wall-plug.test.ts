import { describe, expect, test } from 'vitest';
import { plugDiameter, wallPlug, wallPlugForce } from '../../../src/core/pull-out/wall-plug.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';
import { expectWays } from '../../support/ways.ts';

describe('plugDiameter', () => {
  test('of a bore of 4.3 with walls of 1.93 mm is 8.16 mm (hand calculation)', () => {
    expectRelative(plugDiameter(situationOfNumbers({ wall: 1.93 })).value, 8.16);
  });
  test('is the knurl where the walls do not reach it', () => {
    expect(plugDiameter(situationOfNumbers({ wall: 0.33 })).value).toBe(5);
    expectRelative(plugDiameter(situationOfNumbers({ wall: 0.37 })).value, 5.04);
  });
});

describe('wallPlugForce', () => {
  const numbers = { wall: 1.93, depth: 6.7, density: 0.37, topSkin: 0.9 };
  test('adds skin, infill and the torn end (hand calculation)', () => {
    // φ = 0.2355; sides 13.7 · π · 8.16 · (0.2355 · 5.8 + 0.9) = 351.2 · 2.266 = 795.9 N
    // end 29 · π/4 · (66.59 − 18.49) = 29 · 37.77 = 1095.5 N
    expectPublished(wallPlugForce(situationOfNumbers(numbers)).value / 10, '189');
    expectRelative(wallPlugForce(situationOfNumbers(numbers)).value, 1891.4, 2e-4);
  });
  test('without infill hangs on the skin and the end alone', () => {
    // 351.2 · 0.9 + 1095.5
    expectRelative(wallPlugForce(situationOfNumbers({ ...numbers, density: 0 })).value, 1411.6, 2e-4);
  });
  test('of a solid shears all its side, whatever part of it is skin', () => {
    const solid = (topSkin: number) =>
      wallPlugForce(situationOfNumbers({ ...numbers, density: 1, topSkin })).value;
    expectRelative(solid(0.9), solid(3.1));
  });
  test('takes a skin thicker than the hole for a solid', () => {
    const deepSkin = wallPlugForce(situationOfNumbers({ ...numbers, topSkin: 9.1 })).value;
    expectRelative(deepSkin, wallPlugForce(situationOfNumbers({ ...numbers, density: 1 })).value);
  });
  test('grows with depth, density and wall', () => {
    const force = (changes: object) => wallPlugForce(situationOfNumbers({ ...numbers, ...changes })).value;
    expect(force({ depth: 7.9 })).toBeGreaterThan(force({}));
    expect(force({ density: 0.6 })).toBeGreaterThan(force({}));
    expect(force({ wall: 2.31 })).toBeGreaterThan(force({}));
  });
});

describe('every number of a wall plug', () => {
  const skinAndInfill = 'τ_p · π · D_w · (φ · (T − t_s) + t_s)';
  const end = ' + σ_a · π/4 · (D_w² − D_t²)';
  test.each([
    ['skin and infill over a floor', { floor: 1.3 }, `${skinAndInfill}${end}`],
    ['skin and infill, hole through', { floor: 0 }, skinAndInfill],
    ['skin alone over a floor', { floor: 1.3, topSkin: 7.7 }, `τ_p · π · D_w · T${end}`],
    ['skin alone, hole through', { floor: 0, topSkin: 6.7 }, 'τ_p · π · D_w · T'],
  ] as const)('comes to what its formula comes to: %s', (_, numbers, formula) => {
    const force = wallPlugForce(situationOfNumbers({ wall: 1.93, depth: 6.7, ...numbers }));
    expect(force.formula).toBe(formula);
    expectWays([force]);
  });
});

describe('wallPlug', () => {
  test('is not there where the walls fill a free boss', () => {
    expect(wallPlug.capacity(situationOfNumbers({ wall: 1.93, boss: 8.1 }))).toBeUndefined();
    expect(wallPlug.capacity(situationOfNumbers({ wall: 1.93, boss: 8.3 }))).toBeDefined();
  });
  test('is held down by a part on the face: only a gap lets the clamp force lift it', () => {
    expect((['on-insert', 'on-plastic', 'over-gap', 'far-side'] as const).map(wallPlug.path)).toEqual([
      'pull',
      'pull',
      'clamp',
      'none',
    ]);
  });
});
