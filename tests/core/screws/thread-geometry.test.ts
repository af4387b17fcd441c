import { describe, expect, test } from 'vitest';
import {
  externalMinorDiameter,
  externalMinorDiameterOf,
  internalMinorDiameter,
  internalMinorDiameterOf,
  pitchDiameter,
  pitchDiameterOf,
} from '../../../src/core/screws/thread-geometry.ts';
import { threadOf, unifiedThread } from '../../fixtures/iso-965/threads.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Printed inch sizes: D, threads an inch, d2, minor external, minor internal (asme-b1.1, reprints). */
const UNC = [
  ['4-40', 0.112, 40, '0.0958', '0.0822', '0.0849'],
  ['6-32', 0.138, 32, '0.1177', '0.1008', '0.1042'],
  ['8-32', 0.164, 32, '0.1437', '0.1268', '0.1302'],
  ['10-24', 0.19, 24, '0.1629', '0.1404', '0.1449'],
  ['1/4-20', 0.25, 20, '0.2175', '0.1905', '0.1959'],
] as const;

/** The door's own ranges: 0 < P ≤ d/2. */
const size = fc
  .tuple(fc.double({ min: 1, max: 30, noNaN: true }), fc.double({ min: 0.01, max: 0.5, noNaN: true }))
  .map(([d, share]) => ({ d, P: d * share }));

describe('pitchDiameterOf', () => {
  test.each([
    ['thread.d2.M2', 2, 0.4, '1.7402'],
    ['thread.d2.M2.5', 2.5, 0.45, '2.2077'],
  ])('%s: M%f × %f is %s mm (published table of exact areas)', (_id, d, P, printed) => {
    expectPublished(pitchDiameterOf(threadOf(d, P)), printed);
  });
  test.each(UNC)('of %s is the printed one (asme-b1.1)', (_name, D, n, d2) => {
    expectPublished(pitchDiameterOf(unifiedThread(D, n)) / 25.4, d2);
  });
});

describe('externalMinorDiameterOf', () => {
  test('thread.A3.M2: core area of M2 × 0.4 is 1.789 mm² (published table of exact areas)', () => {
    expectPublished((Math.PI / 4) * externalMinorDiameterOf(threadOf(2, 0.4)) ** 2, '1.789');
  });
  test.each([
    [2.5, 0.45, '2.9801'],
    [3, 0.5, '4.4734'],
  ])('core area of M%f × %f is %s mm² (published table of exact areas)', (d, P, printed) => {
    expectPublished((Math.PI / 4) * externalMinorDiameterOf(threadOf(d, P)) ** 2, printed);
  });
  test.each(UNC)('of %s is the printed one (asme-b1.1)', (_name, D, n, _d2, minor) => {
    expectPublished(externalMinorDiameterOf(unifiedThread(D, n)) / 25.4, minor);
  });
});

describe('internalMinorDiameterOf', () => {
  test.each([
    ['thread.D1.M6', 6, 1, '4.917'],
    ['thread.D1.M8', 8, 1.25, '6.647'],
    ['M5', 5, 0.8, '4.134'],
  ])('%s: M%f × %f is %s mm (iso-724, tap limit table)', (_id, d, P, printed) => {
    expectPublished(internalMinorDiameterOf(threadOf(d, P)), printed);
  });
  test.each(UNC)('of %s is the printed one (asme-b1.1)', (_name, D, n, _d2, _external, minor) => {
    expectPublished(internalMinorDiameterOf(unifiedThread(D, n)) / 25.4, minor);
  });
});

describe('the diameters of one thread', () => {
  test.each(['metric', 'unified'] as const)('stand in order and above zero, %s', (system) => {
    fc.assert(
      fc.property(size, ({ d, P }) => {
        const thread = threadOf(d, P, system);
        expect(externalMinorDiameterOf(thread)).toBeGreaterThan(0);
        expect(internalMinorDiameterOf(thread)).toBeGreaterThan(externalMinorDiameterOf(thread));
        expect(pitchDiameterOf(thread)).toBeGreaterThan(internalMinorDiameterOf(thread));
        expect(d).toBeGreaterThan(pitchDiameterOf(thread));
      }),
    );
  });
  test('scale with the thread', () => {
    for (const diameter of [pitchDiameterOf, externalMinorDiameterOf, internalMinorDiameterOf]) {
      expectRelative(diameter(threadOf(3 * 5, 3 * 0.8)), 3 * diameter(threadOf(5, 0.8)));
    }
  });
});

describe('the derived diameters', () => {
  test.each([
    [pitchDiameter, 'd_2', '4.480'],
    [externalMinorDiameter, 'd_3', '4.019'],
    [internalMinorDiameter, 'D_1', '4.134'],
  ] as const)('%o of M5 is shown as %s = %s mm, with what went in', (diameter, symbol, printed) => {
    const shown = diameter(threadOf(5, 0.8));
    expect(shown).toMatchObject({ symbol, unit: 'mm', source: 'iso-724', standing: 'published' });
    expect(shown.entries).toEqual([
      { symbol: 'd', value: 5, unit: 'mm' },
      { symbol: 'P', value: 0.8, unit: 'mm' },
    ]);
    expectPublished(shown.value, printed);
  });
  test('name the inch standard and its own root for a unified thread', () => {
    expect(externalMinorDiameter(unifiedThread(0.138, 32))).toMatchObject({
      formula: 'd − 11/8 · √3/2 · P',
      source: 'asme-b1.1',
    });
  });
});
