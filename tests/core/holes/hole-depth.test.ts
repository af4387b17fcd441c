import { describe, expect, test } from 'vitest';
import {
  farSideDepth,
  holeDepth,
  meltHeight,
  meltVolume,
  wholeLayers,
} from '../../../src/core/holes/hole-depth.ts';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import fc from '../../support/fast-check.ts';
import { given, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const mm = (symbol: string, value: number) => given(symbol, value, 'mm');
const insert = insertDimensions(
  theInsert({ knurlDiameter_mm: [5], pilotDiameter_mm: [4.25], knurledLength_mm: [3.6] }),
);
const room = (length: number, melt: number, changes: object = {}) => ({
  length: mm('L', length),
  sunk: 0,
  meltHeight: mm('m', melt),
  layerHeight: 0.1,
  ...changes,
});

describe('meltVolume', () => {
  test('of knurl 5, bore 4.3, knurled 3.6 mm is 9.2 mm³ (hand calculation: ½ · π/4 · 6.51 · 3.6)', () => {
    expectPublished(meltVolume(insert, mm('D_t', 4.3)).value, '9.20');
  });
  test('is half the ring between knurl and bore (Pappus: mean circumference times section)', () => {
    const bore = 4.37;
    const section = ((5 - bore) / 2) * 3.6;
    expectRelative(meltVolume(insert, mm('D_t', bore)).value, 0.5 * Math.PI * ((5 + bore) / 2) * section);
  });
});

describe('meltHeight', () => {
  test('of 9.2 mm³ in a bore of 4.3 mm is 0.63 mm (hand calculation: 9.2/14.52)', () => {
    expectPublished(meltHeight(given('V', 9.2, 'mm³'), mm('D_t', 4.3)).value, '0.63');
  });
});

describe('holeDepth', () => {
  test.each([
    ['M3', 5.7, '6.7'],
    ['M4', 8.1, '9.1'],
    ['M5', 9.5, '10.5'],
    ['short M3', 3, '4.0'],
    ['short M4', 4, '5.0'],
    ['short M5', 5.8, '6.8'],
  ])('of the %s insert of %f mm is %s mm (common practice: L + 1 throughout)', (_, length, printed) => {
    expectPublished(holeDepth(room(length, 0.63)).value, printed);
  });
  test('makes room for the tip of the screw, and half a millimetre more (hand calculation)', () => {
    // 0.4 + 5.3 + (0.61 + 1.7 + 0.5) = 8.51, up to 8.6
    expectPublished(holeDepth(room(5.3, 0.61, { sunk: 0.4, tip: mm('l_o', 1.7) })).value, '8.6');
  });
  test('goes down by more than 1 mm where the melt asks for more', () => {
    expectPublished(holeDepth(room(5.3, 1.23)).value, '6.6');
  });
  test('is a whole number of layers, less than one above what is asked', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 25, noNaN: true }),
        fc.double({ min: 0.04, max: 1, noNaN: true }),
        (length, layerHeight) => {
          const { value } = holeDepth(room(length, 0.3, { layerHeight }));
          expect(value).toBeGreaterThan(length + 1 - 1e-6);
          expect(value).toBeLessThan(length + 1 + layerHeight);
          expect(Math.abs(value / layerHeight - Math.round(value / layerHeight))).toBeLessThan(1e-6);
        },
      ),
    );
  });
});

describe('farSideDepth', () => {
  test('is the length of the insert (common practice), up to whole layers', () => {
    expect(farSideDepth({ length: mm('L', 9.5), sunk: 0, layerHeight: 0.25 }).value).toBe(9.5);
    expectPublished(farSideDepth({ length: mm('L', 9.5), sunk: 0.3, layerHeight: 0.25 }).value, '10.0');
  });
});

describe('wholeLayers', () => {
  test.each([
    [6, 0.2, 6],
    [6.01, 0.2, 6.2],
    [0.6, 0.2, 0.6],
    [5.9999999999, 0.2, 6],
    [0, 0.3, 0],
  ])('of %f mm in layers of %f mm is %f mm', (depth, layer, whole) => {
    expect(wholeLayers(depth, layer)).toBe(whole);
  });
});
