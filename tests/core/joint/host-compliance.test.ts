import { describe, expect, test } from 'vitest';
import {
  columnCompliance,
  endHeldCompliance,
  pressedReach,
  pulledReach,
  rimHeldCompliance,
} from '../../../src/core/joint/bonded-ring.ts';
import { hostComplianceOf } from '../../../src/core/joint/host-compliance.ts';
import type { SeatKind } from '../../../src/core/pull-out/limit.ts';
import type { Situation } from '../../../src/core/pull-out/situation.ts';
import { frustumStiffness } from '../../../src/core/screws/stiffness.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { type Numbers, situationOfNumbers } from '../../support/situations.ts';

/** Knurl 5 by 3.6 mm in PETG: E 1800 MPa, ν 0.38, G = 652.17 MPa. */
const PLASTIC = { modulus: 1800, poissonRatio: 0.38 };
const KNURL = { knurlDiameter: 5, length: 3.6 };
const seated = (seat: SeatKind, numbers: Numbers = {}): Situation => ({
  ...situationOfNumbers(numbers),
  seat,
});
const compliance = (seat: SeatKind, numbers: Numbers = {}) => hostComplianceOf(seated(seat, numbers));

describe('hostComplianceOf', () => {
  test('is nothing where the part bears on the insert', () => {
    expect(compliance('on-insert')).toBe(0);
  });
  test('beside the insert is a ring held at its end, as far as the pressed face reaches', () => {
    // Solid: the ring of 15 mm is cut to 1.5 · 5 + 0.5 · 3.6 = 9.3 mm.
    expectPublished(pressedReach(KNURL), '9.3');
    expectRelative(
      compliance('on-plastic', { density: 1 }),
      endHeldCompliance({ ...KNURL, ...PLASTIC, outerDiameter: 9.3 }),
    );
    // One wall of 0.9 mm, no infill: a ring of 4.3 + 1.8 = 6.1 mm.
    expectRelative(
      compliance('on-plastic', { density: 0, wall: 0.9 }),
      endHeldCompliance({ ...KNURL, ...PLASTIC, outerDiameter: 6.1 }),
    );
  });
  test('beside an insert that no wall stands round is nothing', () => {
    expect(compliance('on-plastic', { density: 0, wall: 0.2 })).toBe(0);
  });
  test('over a gap, in a solid part, is 61.1 · 10⁻⁶ mm/N: ln(12.322/5)/(2π · 652.17 · 3.6) (hand calculation)', () => {
    // 1.55 · 5 + 1.27 · 3.6 = 12.322; ln 2.4644 = 0.90194; 2π · 652.17 · 3.6 = 14 751.8; 61.14 · 10⁻⁶
    expectPublished(pulledReach(KNURL), '12.322');
    expectPublished(1e6 * compliance('over-gap', { density: 1 }), '61.1');
  });
  test('over a gap shears walls and then infill (hand calculation)', () => {
    // Walls up to 8.16 mm; grid at 0.9: ψ = 0.45: [ln(8.16/5) + ln(12.322/8.16)/0.45]/14 751.8
    // = (0.48980 + 0.41215/0.45)/14 751.8 = 1.40569/14 751.8 = 95.29 · 10⁻⁶
    expectPublished(1e6 * compliance('over-gap', { wall: 1.93, density: 0.9, depth: 6, floor: 9 }), '95.3');
  });
  test('over a gap with hardly any infill stands on its walls', () => {
    const numbers = { wall: 1.93, density: 0.01, depth: 6, floor: 3 };
    const column = { outerDiameter: 8.16, boreDiameter: 4.3, room: 1, solid: 3, ...PLASTIC };
    expectRelative(
      compliance('over-gap', numbers),
      endHeldCompliance({ ...KNURL, ...PLASTIC, outerDiameter: 8.16 }) + columnCompliance(column),
    );
    expectRelative(compliance('over-gap', { ...numbers, density: 0 }), compliance('over-gap', numbers));
  });
  test('over a gap in walls as wide as the pull reaches is solid, whatever lies beyond', () => {
    const ring = { ...KNURL, ...PLASTIC, outerDiameter: pulledReach(KNURL) };
    // Still stiffer than the walls standing free: 16 mm high.
    const numbers = { wall: 4.2, density: 0.13, depth: 6, floor: 10 };
    expectRelative(compliance('over-gap', numbers), rimHeldCompliance(ring));
  });
  test('over a gap in a free boss is the ring and the column below', () => {
    const column = { outerDiameter: 8.5, boreDiameter: 4.3, room: 1.5, solid: 4.1, ...PLASTIC };
    expectRelative(
      compliance('over-gap', { boss: 8.5, density: 1, depth: 6.5, floor: 4.1 }),
      endHeldCompliance({ ...KNURL, ...PLASTIC, outerDiameter: 8.5 }) + columnCompliance(column),
    );
  });
  test('over a gap never grows as infill or walls are added to a large part', () => {
    const over = (density: number, wall: number) =>
      compliance('over-gap', { density, wall, depth: 6, floor: 5 });
    for (const wall of [0.45, 0.9, 1.7, 2.6, 3.9]) {
      for (const density of [0, 0.1, 0.2, 0.4, 0.6, 0.8, 1]) {
        expect(over(Math.min(1, density + 0.1), wall)).toBeLessThanOrEqual(over(density, wall) * (1 + 1e-12));
        expect(over(density, wall + 0.45)).toBeLessThanOrEqual(over(density, wall) * (1 + 1e-12));
      }
    }
  });
  test('of a far-side insert is the pressure cone in its shoulder', () => {
    const cone = frustumStiffness({ thickness: 2.7, faceDiameter: 5, holeDiameter: 3.4, modulus: 1800 });
    expectRelative(compliance('far-side', { floor: 2.7 }), 1 / cone.value);
    expect(compliance('far-side', { floor: 0 })).toBe(0);
  });
});
