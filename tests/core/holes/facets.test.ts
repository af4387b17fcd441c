import { describe, expect, test } from 'vitest';
import {
  drawnForFacets,
  effectiveDrawnOf,
  facetLossOf,
  sidesForTolerance,
} from '../../../src/core/holes/facets.ts';
import fc from '../../support/fast-check.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const sides = fc.integer({ min: 3, max: 400 });
const size = fc.double({ min: 0.5, max: 40, noNaN: true });

describe('facetLossOf', () => {
  test.each([
    [10, '5'],
    [22, '1'],
  ])('with %i corners is %s % of the diameter (polygon-hole-articles)', (corners, printed) => {
    expectPublished(100 * facetLossOf({ diameter: 1, sides: corners }), printed);
  });
  test('of a hexagon is the difference of its two widths: 1 − √3/2 (hand calculation)', () => {
    expectRelative(facetLossOf({ diameter: 7.3, sides: 6 }), 7.3 * (1 - Math.sqrt(3) / 2));
  });
  test('leaves the circle that touches the middles of the sides', () => {
    fc.assert(
      fc.property(size, sides, (diameter, count) => {
        const step = (2 * Math.PI) / count;
        const middle = { x: (1 + Math.cos(step)) / 2, y: Math.sin(step) / 2 };
        const inscribed = diameter * Math.hypot(middle.x, middle.y);
        expectRelative(diameter - facetLossOf({ diameter, sides: count }), inscribed, 1e-12);
      }),
    );
  });
  test('keeps its digits where the cosine has none left', () => {
    // 1 − cos x = x²/2 to a part of x²/12
    expectRelative(facetLossOf({ diameter: 3.7, sides: 1e6 }), (3.7 * (Math.PI / 1e6) ** 2) / 2, 1e-11);
  });
});

describe('sidesForTolerance', () => {
  test.each([
    [1.3, 0.65, 3], // acos ½ = 60°
    [2.5, 0.005, 50], // π/acos 0.998 = 49.66
    [4.1, 0.041, 23], // π/acos 0.99 = 22.20
  ])('of a radius of %f mm within %f mm is %i (hand calculation)', (radius, tolerance, count) => {
    expect(sidesForTolerance({ radius, tolerance })).toBe(count);
  });
  test('keeps the polygon within the tolerance, and one side less does not', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1e-4, max: 0.4, noNaN: true }), (radius, share) => {
        const tolerance = share * radius;
        const count = sidesForTolerance({ radius, tolerance });
        const sagitta = (N: number) => facetLossOf({ diameter: 2 * radius, sides: N }) / 2;
        expect(sagitta(count)).toBeLessThanOrEqual(tolerance * (1 + 1e-6));
        expect(count === 3 || sagitta(count - 1) > tolerance).toBe(true);
      }),
    );
  });
  test('never falls below a triangle', () => {
    expect(sidesForTolerance({ radius: 1.7, tolerance: 1.6 })).toBe(3);
  });
});

describe('effectiveDrawnOf and drawnForFacets', () => {
  test.each([
    [3, 6, '3.464'],
    [4, 8, '4.330'],
    [5, 10, '5.257'],
    [6, 12, '6.212'],
  ])(
    'a hole of %f mm with %i corners is drawn on a circle of %s mm (polygon-hole-articles)',
    (wanted, corners, printed) => {
      const drawn = drawnForFacets(given('D_CAD', wanted, 'mm'), corners);
      expectPublished(drawn.value, printed);
      expect(drawn).toMatchObject({ symbol: 'D_N', source: 'polygon-hole-articles' });
    },
  );
  test('undo one another', () => {
    fc.assert(
      fc.property(size, sides, (diameter, facets) => {
        const drawn = drawnForFacets(given('D_CAD', diameter, 'mm'), facets);
        expectRelative(effectiveDrawnOf({ diameter: drawn.value, facets }), diameter, 1e-11);
      }),
    );
  });
  test('leave a true circle alone', () => {
    const circle = given('D_CAD', 4.55, 'mm');
    expect(drawnForFacets(circle, undefined)).toBe(circle);
    expect(effectiveDrawnOf({ diameter: 4.55 })).toBe(4.55);
  });
});
