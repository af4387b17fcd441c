import { describe, expect, test } from 'vitest';
import {
  stressAreaOf,
  stressDiameter,
  stressDiameterOf,
  tensileStressArea,
} from '../../../src/core/screws/stress-area.ts';
import { threadOf, unifiedThread } from '../../fixtures/iso-965/threads.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

describe('stressAreaOf', () => {
  test.each([
    ['thread.As.M2', 2, 0.4, '2.0732'],
    ['M2.5', 2.5, 0.45, '3.3908'],
    ['thread.As.M3', 3, 0.5, '5.0308'],
  ])('%s: M%f × %f is %s mm² (published table of exact areas)', (_id, d, P, printed) => {
    expectPublished(stressAreaOf(threadOf(d, P)), printed);
  });
  test.each([
    ['thread.As.M4', 4, 0.7, '8.78'],
    ['thread.As.M5', 5, 0.8, '14.18'],
    ['M6', 6, 1, '20.12'],
    ['thread.As.M8', 8, 1.25, '36.61'],
  ])('%s: M%f × %f is %s mm² (stress-area table, formula as iso-898-1)', (_id, d, P, printed) => {
    expectPublished(stressAreaOf(threadOf(d, P)), printed);
  });
  test.each([
    ['6-32', 0.138, 32, '0.00909'],
    ['8-32', 0.164, 32, '0.0140'],
    ['10-24', 0.19, 24, '0.0175'],
    ['1/4-20', 0.25, 20, '0.0318'],
    ['3/4-16', 0.75, 16, '0.373'],
    ['5/8-11', 0.625, 11, '0.226'],
  ])('of %s is the printed one (asme-b1.1; the last two as shigley prints them)', (_name, D, n, printed) => {
    expectPublished(stressAreaOf(unifiedThread(D, n)) / 25.4 ** 2, printed);
  });
  test('of 4-40 is 0.0060328 in² by hand, 0.12 % below the 0.00604 that tables print (asme-b1.1)', () => {
    const area = stressAreaOf(unifiedThread(0.112, 40)) / 25.4 ** 2;
    expectPublished(area, '0.0060328'); // π/4 · (0.112 − 0.0243575)² = π/4 · 0.0076812
    expectRelative(area, 0.00604, 0.0013);
  });
  test.each([
    ['4-40', 0.112, 40],
    ['1/4-20', 0.25, 20],
  ])('of %s by the metric form would be a part of 0.017 to 0.021 more', (_name, D, n) => {
    const excess = stressAreaOf(threadOf(D * 25.4, 25.4 / n)) / stressAreaOf(unifiedThread(D, n)) - 1;
    expect(excess).toBeGreaterThan(0.0165);
    expect(excess).toBeLessThan(0.0215);
  });
  test.each(['metric', 'unified'] as const)('grows with the square when the %s thread scales', (system) => {
    expectRelative(
      stressAreaOf(threadOf(3 * 5, 3 * 0.8, system)),
      9 * stressAreaOf(threadOf(5, 0.8, system)),
    );
  });
  test.each(['metric', 'unified'] as const)(
    'approaches the full circle as the pitch goes to zero, %s',
    (system) => {
      expectRelative(stressAreaOf(threadOf(7, 1e-9, system)), (Math.PI / 4) * 7 ** 2, 1e-8);
    },
  );
  test.each(['metric', 'unified'] as const)(
    'stays above zero at the coarsest %s thread the door admits',
    (system) => {
      expect(stressAreaOf(threadOf(4, 2, system))).toBeGreaterThan(0);
    },
  );
});

describe('stressDiameterOf', () => {
  test('is d − 0.938194·P for a metric thread (standards of stress area)', () => {
    expectPublished(stressDiameterOf(threadOf(6, 1)), '5.061806');
  });
});

describe('tensileStressArea', () => {
  test('carries both diameters with their own way for a metric thread', () => {
    const area = tensileStressArea(threadOf(6, 1));
    expect(area).toMatchObject({ symbol: 'A_s', unit: 'mm²', source: 'iso-898-1', standing: 'published' });
    expect(area.entries.map(({ symbol, from }) => [symbol, from?.symbol])).toEqual([
      ['d_2', 'd_2'],
      ['d_3', 'd_3'],
    ]);
    expectPublished(area.entries[0]?.value ?? 0, '5.350');
    expectPublished(area.value, '20.12');
  });
  test('carries diameter and pitch for a unified thread', () => {
    const area = tensileStressArea(unifiedThread(0.25, 20));
    expect(area).toMatchObject({ formula: 'π/4 · (d − 0.9743 · P)²', source: 'asme-b1.1' });
    expect(area.entries.map(({ symbol }) => symbol)).toEqual(['d', 'P']);
    expectPublished(area.value / 25.4 ** 2, '0.0318');
  });
});

describe('stressDiameter', () => {
  test('of M8 × 1.25 is that of the circle of 36.61 mm² (published area)', () => {
    const diameter = stressDiameter(threadOf(8, 1.25));
    expectPublished((Math.PI / 4) * diameter.value ** 2, '36.61');
    expect(diameter).toMatchObject({ symbol: 'd_0', formula: '(d_2 + d_3)/2', source: 'iso-898-1' });
  });
  test('of a unified thread takes 0.9743 pitches off', () => {
    // 6.35 − 0.9743 · 1.27
    expectRelative(stressDiameter(unifiedThread(0.25, 20)).value, 5.112639, 1e-7);
  });
});
