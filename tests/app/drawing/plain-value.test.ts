import { describe, expect, test } from 'vitest';
import { dimensionDocs, dimensionIds } from '../../../src/app/drawing/dimension-ids.ts';
import { dimensionValue, plainNumber, plainValue } from '../../../src/app/drawing/plain-value.ts';
import { section } from './section-inputs.ts';

describe('plainNumber', () => {
  test.each([
    [2.7, '2.7'],
    [3, '3.0'],
    [2.74, '2.74'],
    [2.7000000001, '2.7'],
    [10.25, '10.25'],
  ])('shows a thickness of %f as %s', (thickness, text) => {
    expect(plainNumber(section({ clamped: { thickness } }), 'clamped-thickness')).toBe(text);
  });

  test('always shows two digits of a bore, and none of a screw length', () => {
    expect(plainNumber(section({ hole: { borePrinted: 4.3 } }), 'bore-printed')).toBe('4.30');
    expect(plainNumber(section({ screw: { length: 12 } }), 'screw-length')).toBe('12');
  });

  test('shows a tenth of a small volume and none of a large one', () => {
    expect(plainNumber(section({ hole: { meltVolume: 9.43 } }), 'melt-volume')).toBe('9.4');
    expect(plainNumber(section({ hole: { meltVolume: 161.3 } }), 'melt-volume')).toBe('161');
  });

  test('shows the infill in per cent', () => {
    const infill = { density: 0.37, family: 'prismatic', pattern: 'grid' } as const;
    expect(plainNumber(section({ host: { infill } }), 'infill')).toBe('37');
  });
});

describe('plainValue', () => {
  test('marks the diameters below the drawing', () => {
    expect(plainValue(section(), 'bore-drawn')).toBe('⌀ 4.55');
    expect(plainValue(section(), 'hole-depth')).toBe('7.2');
  });
});

describe('dimensionValue', () => {
  test('takes the well as what the hole has beyond the insert', () => {
    const input = section({ insert: { length: 5.3, sunk: 0.4 }, hole: { depth: 7.9 } });
    expect(Math.abs(dimensionValue(input, 'well') - 2.2)).toBeLessThan(1e-9);
  });

  test('gives every place a finite number, and every doc a name of its own words', () => {
    const values = dimensionIds.map((id) => dimensionValue(section({ host: { bossDiameter: 10.1 } }), id));
    expect(values.every(Number.isFinite)).toBe(true);
    const measures = dimensionIds.map((id) => dimensionDocs[id].measures);
    expect(new Set(measures).size).toBe(dimensionIds.length);
  });
});
