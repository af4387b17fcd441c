import { describe, expect, test } from 'vitest';
import {
  engagementForEqualStrength,
  insertStrippingArea,
  insertStrippingAreaOf,
  screwStrippingArea,
  screwStrippingAreaOf,
} from '../../../src/core/screws/stripping-areas.ts';
import { type CoarseSize, coarseThread, threadOf } from '../../fixtures/iso-965/threads.ts';
import fc from '../../support/fast-check.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const sizes = ['M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8'] as const satisfies readonly CoarseSize[];
const anyThread = fc.constantFrom(...sizes).map(coarseThread);
const engagement = fc.double({ min: 0.5, max: 40, noNaN: true });

describe('screwStrippingAreaOf', () => {
  test.each([
    ['M5', 5, '35.366'],
    ['M6', 6, '51.875'],
    ['M8', 8, '97.290'],
  ] as const)('of %s over %f mm is %s mm² (bickford, strip-area table)', (size, LE, printed) => {
    expectRelative(screwStrippingAreaOf(coarseThread(size), LE), Number(printed), 1e-4);
  });
});

describe('insertStrippingAreaOf', () => {
  test.each([
    ['M5', 'M5', 5, '49.994'],
    ['strip.ASn.M6', 'M6', 6, '73.145'],
    ['strip.ASn.M8', 'M8', 8, '134.63'],
  ] as const)('%s: of %s over %f mm is %s mm² (bickford, strip-area table)', (_id, size, LE, printed) => {
    expectRelative(insertStrippingAreaOf(coarseThread(size), LE), Number(printed), 1e-4);
  });
  test('strip.LE.M10.true_min: 69 600 N in 130 MPa need 24.9 mm of M10 (derived)', () => {
    expectPublished(69600 / (130 * insertStrippingAreaOf(coarseThread('M10'), 1)), '24.9');
  });
  test('strip.LE.M10-10.9-aluminium: 21.6 mm with the diameter of the example, its largest (doi 10.1201/9781482273786-99)', () => {
    const M10 = coarseThread('M10');
    const asPrinted = threadOf(10, 1.5, 'metric', { ...M10.limits, externalMajorMin: 9.968 });
    expectPublished(69600 / (130 * insertStrippingAreaOf(asPrinted, 1)), '21.6');
  });
});

describe('both areas', () => {
  test('are proportional to the engagement and above zero', () => {
    fc.assert(
      fc.property(anyThread, engagement, (thread, LE) => {
        for (const area of [screwStrippingAreaOf, insertStrippingAreaOf]) {
          expect(area(thread, LE)).toBeGreaterThan(0);
          expectRelative(area(thread, 2.5 * LE), 2.5 * area(thread, LE));
        }
      }),
    );
  });
  test('are greater in the insert than on the screw', () => {
    fc.assert(
      fc.property(anyThread, engagement, (thread, LE) => {
        expect(insertStrippingAreaOf(thread, LE)).toBeGreaterThan(screwStrippingAreaOf(thread, LE));
      }),
    );
  });
  test('shrink when a limit moves the flanks apart', () => {
    const M4 = coarseThread('M4');
    const looser = (change: Partial<typeof M4.limits>) =>
      threadOf(4, 0.7, 'metric', { ...M4.limits, ...change });
    const area = { screw: screwStrippingAreaOf(M4, 5.3), insert: insertStrippingAreaOf(M4, 5.3) };
    expect(screwStrippingAreaOf(looser({ externalPitchMin: 3.4 }), 5.3)).toBeLessThan(area.screw);
    expect(insertStrippingAreaOf(looser({ internalPitchMax: 3.7 }), 5.3)).toBeLessThan(area.insert);
    expect(insertStrippingAreaOf(looser({ externalMajorMin: 3.8 }), 5.3)).toBeLessThan(area.insert);
  });
  test('are half a cylinder each at a thread without play or truncation', () => {
    const sharp = threadOf(6, 1, 'metric', {
      externalMajorMin: 5.4,
      externalPitchMin: 5.4,
      externalMinorMin: 4.6,
      internalPitchMax: 5.4,
      internalMinorMax: 5.4,
    });
    expectRelative(screwStrippingAreaOf(sharp, 7.3), (Math.PI * 5.4 * 7.3) / 2);
    expectRelative(insertStrippingAreaOf(sharp, 7.3), (Math.PI * 5.4 * 7.3) / 2);
  });
});

describe('engagementForEqualStrength', () => {
  test.each([
    ['M2', '1.69'],
    ['M2.5', '2.13'],
    ['M3', '2.58'],
    ['M4', '3.21'],
    ['M5', '4.01'],
    ['M6', '4.66'],
    ['M8', '6.02'],
  ] as const)(
    'of %s is %s mm where the insert is strong enough (values derived from the formula of machinery-handbook)',
    (size, printed) => {
      const pair = { thread: coarseThread(size), screwTensileStrength: 400, insertTensileStrength: 410 };
      expectPublished(engagementForEqualStrength(pair).value, printed);
    },
  );
  test('grows by J when the insert strips first', () => {
    const thread = coarseThread('M3');
    const pair = { thread, screwTensileStrength: 800, insertTensileStrength: 380 };
    const J = (screwStrippingAreaOf(thread, 4.1) * 800) / (insertStrippingAreaOf(thread, 4.1) * 380);
    expectRelative(
      engagementForEqualStrength(pair).value,
      J * engagementForEqualStrength({ ...pair, insertTensileStrength: 3800 }).value,
    );
    expectPublished(J, '1.48'); // 3.903 · 800/(5.547 · 380)
  });
  test('shows how both areas and J come about', () => {
    const pair = { thread: coarseThread('M4'), screwTensileStrength: 830, insertTensileStrength: 370 };
    const length = engagementForEqualStrength(pair);
    expectWays([length]);
    expectRelative(
      length.entries.find(({ symbol }) => symbol === 'A_Ss/L_E')?.value ?? 0,
      screwStrippingAreaOf(pair.thread, 4.1) / 4.1,
    );
  });
  test('carries J among what went in', () => {
    const shown = engagementForEqualStrength({
      thread: coarseThread('M3'),
      screwTensileStrength: 800,
      insertTensileStrength: 380,
    });
    expect(shown).toMatchObject({ symbol: 'L_e', unit: 'mm', source: 'machinery-handbook' });
    expectPublished(shown.entries.find(({ symbol }) => symbol === 'J')?.value ?? 0, '1.48');
  });
});

describe('the derived areas', () => {
  test('of the screw carry its limits', () => {
    const area = screwStrippingArea(coarseThread('M5'), given('L_E', 5, 'mm'));
    expect(area).toMatchObject({
      symbol: 'A_Ss',
      unit: 'mm²',
      source: 'fed-std-h28-2',
      standing: 'published',
    });
    expect(area.entries.map(({ symbol, value }) => [symbol, value])).toEqual([
      ['L_E', 5],
      ['P', 0.8],
      ['D_1max', 4.334],
      ['d_2min', 4.361],
    ]);
    expectPublished(area.value, '35.37');
  });
  test('of the insert carry its limits', () => {
    const area = insertStrippingArea(coarseThread('M6'), given('L_E', 6, 'mm'));
    expect(area).toMatchObject({ symbol: 'A_Sn', unit: 'mm²', source: 'fed-std-h28-2' });
    expect(area.entries.map(({ symbol, value }) => [symbol, value])).toEqual([
      ['L_E', 6],
      ['P', 1],
      ['d_min', 5.794],
      ['D_2max', 5.5],
    ]);
    expectPublished(area.value, '73.15');
  });
});
