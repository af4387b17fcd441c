import { describe, expect, test } from 'vitest';
import { screwYields } from '../../../src/core/pull-out/screw-yield.ts';
import { situationWith } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const forceOf = (screw: Parameters<typeof situationWith>[0]) =>
  screwYields.capacity(situationWith(screw)).characteristic.value;

describe('screwYields', () => {
  test('of M3 8.8 at μG 0.10 is 2.90 kN (vdi-2230, hand calculation)', () => {
    // d2 2.6752, d3 2.3866, d0 2.5309, As 5.0308; 3/2 · 1.05702 · (0.059493 + 0.115470) = 0.27741
    // 5.0308 · 640/√(1 + 3 · 0.27741²) = 3219.7/1.10944
    expectRelative(forceOf({}), 2902, 2e-4);
  });
  test('of a button or countersunk head is taken at 80 % (iso-7380-1, figure from memory)', () => {
    expectRelative(forceOf({ screw: { head: 'ISO 7380-1' } }), 0.8 * forceOf({}));
    expectRelative(forceOf({ screw: { head: 'ISO 10642' } }), 0.8 * forceOf({}));
  });
  test('follows the yield strength of the class, 640 and 940 MPa (iso-898-1)', () => {
    expectRelative(forceOf({ screw: { propertyClass: '10.9' } }) / forceOf({}), 940 / 640);
  });
  test('is less where the thread is less slippery at best', () => {
    expect(forceOf({ screw: { friction: 'dry' } })).toBeLessThan(forceOf({}));
    expect(forceOf({ screw: { friction: 'greased' } })).toBeGreaterThan(forceOf({}));
  });
});
