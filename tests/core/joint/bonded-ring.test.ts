import { describe, expect, test } from 'vitest';
import {
  type BondedRing,
  columnCompliance,
  endHeldCompliance,
  lagFactor,
  pressedReach,
  pulledReach,
  rimHeldCompliance,
} from '../../../src/core/joint/bonded-ring.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rings: fc.Arbitrary<BondedRing> = fc
  .record({
    knurlDiameter: between(2, 12),
    widening: between(0.01, 2.5),
    length: between(1, 20),
    modulus: between(20, 6000),
    poissonRatio: between(0.3, 0.48),
  })
  .map(({ widening, ...ring }) => ({ ...ring, outerDiameter: ring.knurlDiameter * (1 + widening) }));
const scaled = (ring: BondedRing, k: number): BondedRing => ({
  ...ring,
  knurlDiameter: k * ring.knurlDiameter,
  outerDiameter: k * ring.outerDiameter,
  length: k * ring.length,
});

describe('the closed forms', () => {
  test.each([
    ['rim', rimHeldCompliance],
    ['end', endHeldCompliance],
  ] as const)(
    'held at its %s: k times as large in every length gives a k-th, twice the modulus a half',
    (_, form) => {
      fc.assert(
        fc.property(rings, between(0.2, 7), (ring, k) => {
          expectRelative(form(scaled(ring, k)), form(ring) / k, 1e-9);
          expectRelative(form({ ...ring, modulus: 2 * ring.modulus }), form(ring) / 2);
        }),
      );
    },
  );
  test('of a column too', () => {
    const column = {
      outerDiameter: 8.7,
      boreDiameter: 4.1,
      room: 1.3,
      solid: 5.9,
      modulus: 1700,
      poissonRatio: 0.37,
    };
    const large = { ...column, outerDiameter: 26.1, boreDiameter: 12.3, room: 3.9, solid: 17.7 };
    expectRelative(columnCompliance(large), columnCompliance(column) / 3);
  });
  test('reach in proportion to the insert', () => {
    for (const reach of [pulledReach, pressedReach]) {
      expectRelative(
        reach({ knurlDiameter: 9.2, length: 7.4 }),
        2 * reach({ knurlDiameter: 4.6, length: 3.7 }),
      );
    }
  });
  test('give less with more length and more with a wider rim held at the outside', () => {
    fc.assert(
      fc.property(rings, between(0.05, 3), (ring, by) => {
        const longer = { ...ring, length: ring.length + by };
        expect(rimHeldCompliance(longer)).toBeLessThan(rimHeldCompliance(ring));
        expect(endHeldCompliance(longer)).toBeLessThanOrEqual(endHeldCompliance(ring) * (1 + 1e-12));
        const wider = { ...ring, outerDiameter: ring.outerDiameter + by };
        expect(rimHeldCompliance(wider)).toBeGreaterThan(rimHeldCompliance(ring));
      }),
    );
  });
  test('have a lag factor that grows with the ring', () => {
    fc.assert(
      fc.property(between(1.0001, 5), between(0.001, 2), (p, by) => {
        expect(lagFactor(p + by)).toBeGreaterThan(lagFactor(p));
      }),
    );
  });
});
