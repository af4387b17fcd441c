import { describe, expect, test } from 'vitest';
import { bedMouthChamfer, mouthLoss } from '../../../src/core/holes/first-layer-flare.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const flare = (perSide: number, layers: number, layerHeight = 0.2) => ({ perSide, layers, layerHeight });

describe('mouthLoss', () => {
  test('of 0.25 mm a side is 0.5 mm on the diameter (worked apart)', () => {
    expect(mouthLoss({ perSide: 0.25 })).toMatchObject({ value: 0.5, symbol: 'Δ_0', unit: 'mm' });
  });
});

describe('bedMouthChamfer', () => {
  test('of one flared layer clears it by 0.1 mm, and is never below the 0.5 mm of a free mouth (hand calculation)', () => {
    expectRelative(bedMouthChamfer(flare(0.55, 1)).value, 0.65);
    expect(bedMouthChamfer(flare(0.25, 1)).value).toBe(0.5);
    expect(bedMouthChamfer(flare(0, 1)).value).toBe(0.5);
  });
  test('of 0.25 mm over 3 layers of 0.2 mm is 0.583 mm (hand calculation)', () => {
    // The third layer starts at 0.4 mm and still flares 0.25/3 = 0.083 mm.
    expectPublished(bedMouthChamfer(flare(0.25, 3)).value, '0.583');
  });
  test('leaves 0.1 mm of room at every flared layer, and no more than it must', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.8, noNaN: true }),
        fc.integer({ min: 1, max: 8 }),
        fc.double({ min: 0.05, max: 0.4, noNaN: true }),
        (perSide, layers, layerHeight) => {
          const { value } = bedMouthChamfer({ perSide, layers, layerHeight });
          const rooms = Array.from({ length: layers }, (_, layer) => {
            // Worked example of slicer-settings-note: c_i = c0 − (c0/n) · i.
            const flared = perSide - (perSide / layers) * layer;
            return value - layer * layerHeight - flared;
          });
          const least = Math.min(...rooms);
          expect(least).toBeGreaterThanOrEqual(0.1 - 1e-12);
          expect(value === 0.5 || least < 0.1 + 1e-12).toBe(true);
        },
      ),
    );
  });
  test('can be worked out by hand from its derivation', () => {
    const found = bedMouthChamfer(flare(0.41, 2, 0.28));
    expectRelative(evaluated(found) ?? 0, found.value);
  });
});
