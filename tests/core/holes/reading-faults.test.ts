import { describe, expect, test } from 'vitest';
import type { HoleReading } from '../../../src/core/holes/hole-reading.ts';
import {
  type HoleReadingFault,
  holeReadingFaults,
  isSwapped,
} from '../../../src/core/holes/reading-faults.ts';
import fc from '../../support/fast-check.ts';
import { holeReading } from '../../support/hole-readings.ts';
import { expectRelative } from '../../support/published.ts';

const faultOf = (drawn: number, measured: number | readonly number[], changes: Partial<HoleReading> = {}) =>
  holeReadingFaults([holeReading(drawn, measured, changes)])[0];
const othersOf = (fault: HoleReadingFault | undefined): number =>
  fault?.code === 'drawn-and-measured-swapped' ? fault.others : Number.NaN;
const SOUND = [holeReading(4, 3.71), holeReading(5, 4.76), holeReading(6, 5.79)];

describe('holeReadingFaults', () => {
  test.each([
    [0.165, 4.5, 'measured', 0.165],
    [4.19, 0.1772, 'drawn', 0.1772],
    [0.165, 0.1772, 'both', 0.165],
  ])('takes measured %f beside drawn %f for inches: %s', (measured, drawn, field, value) => {
    expect(faultOf(drawn, measured)).toEqual({
      code: 'looks-like-inches',
      field,
      value,
      inMillimetres: value * 25.4,
    });
  });
  test('takes about half of the drawing for a radius, either way round', () => {
    expect(faultOf(4.5, 2.1)).toEqual({
      code: 'looks-like-radius',
      field: 'measured',
      value: 2.1,
      diameter: 4.2,
    });
    expect(faultOf(2.25, 4.2)).toEqual({
      code: 'looks-like-radius',
      field: 'drawn',
      value: 2.25,
      diameter: 4.5,
    });
  });
  test('looks at each value of a hole', () => {
    expect(faultOf(4.5, [4.21, 4.19, 2.11])).toMatchObject({ code: 'looks-like-radius', value: 2.11 });
  });
  test('refuses what no printer does, and admits the worst hole met in print: 3.5 mm at 2.33 mm', () => {
    expect(faultOf(8, 6.2)).toEqual({
      code: 'error-implausible',
      drawn: 8,
      measured: 6.2,
      error: 6.2 - 8,
      limit: -1.5,
    });
    expect(faultOf(4.5, 42)).toMatchObject({ code: 'error-implausible', limit: 0.8 });
    // Sound by itself, but not with jaws of 3 mm: √(4.4² + 3²) = 5.33 mm.
    expect(faultOf(4.5, 4.4, { jawFlat: 3 })).toMatchObject({ code: 'error-implausible', limit: 0.8 });
    expect(faultOf(3.5, 2.33)).toBeUndefined();
  });
  test('refuses a polygon of two corners, and measures one of six across its flats', () => {
    expect(faultOf(4.5, 4.2, { facets: 2 })).toEqual({ code: 'too-few-facets', facets: 2, least: 3 });
    expect(faultOf(10, 8.4, { facets: 6 })).toBeUndefined();
    expect(faultOf(10, 8.4)).toMatchObject({ code: 'error-implausible' });
  });
  test('finds the one hole whose diameters were swapped', () => {
    const faults = holeReadingFaults([...SOUND, holeReading(4.24, 4.5)]);
    expect(faults.slice(0, 3)).toEqual([undefined, undefined, undefined]);
    expect(faults[3]).toMatchObject({ code: 'drawn-and-measured-swapped', drawn: 4.24, measured: 4.5 });
    // Median of −0.29, −0.24 and −0.21.
    expectRelative(othersOf(faults[3]), -0.24, 1e-9);
  });
  test('compares a swapped hole with the others alone, of an even number too', () => {
    const faults = holeReadingFaults([holeReading(4.2, 4.5), ...SOUND, holeReading(8, 7.83)]);
    // Median of −0.29, −0.24, −0.21 and −0.17; with +0.30 it were −0.21.
    expectRelative(othersOf(faults[0]), -0.225, 1e-9);
    expect(faults.slice(1)).toEqual([undefined, undefined, undefined, undefined]);
  });
  test('suspects no swap of a printer that makes holes large, nor of two holes that differ', () => {
    expect(holeReadingFaults([4, 5, 6].map((drawn) => holeReading(drawn, drawn + 0.2)))).not.toContainEqual(
      expect.anything(),
    );
    expect(holeReadingFaults([holeReading(4.5, 4.2), holeReading(4.2, 4.5)])).toEqual([undefined, undefined]);
  });
  test('says nothing of nothing, and of usual holes whatever their number', () => {
    expect(holeReadingFaults([])).toEqual([]);
    const hole = fc.record({
      drawn: fc.double({ min: 1.2, max: 20, noNaN: true }),
      error: fc.double({ min: -0.55, max: -0.02, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(hole, { maxLength: 20 }), (holes) => {
        const readings = holes.map(({ drawn, error }) => holeReading(drawn, drawn + error));
        expect(holeReadingFaults(readings)).toEqual(readings.map(() => undefined));
      }),
    );
  });
  test('knows inches and radius of every usual hole from 3 mm on', () => {
    const usual = fc.double({ min: -0.5, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 3, max: 20, noNaN: true }), usual, (drawn, error) => {
        const bore = drawn + error;
        expect(faultOf(drawn, bore / 25.4)).toMatchObject({ code: 'looks-like-inches', field: 'measured' });
        expect(faultOf(drawn, bore / 2)).toMatchObject({ code: 'looks-like-radius', field: 'measured' });
      }),
    );
  });
});

describe('isSwapped', () => {
  const others = { median: -0.24, count: 2 };
  test('needs an error the other way round, as much as the others close', () => {
    expect(isSwapped(0.24, others)).toBe(true);
    expect(isSwapped(0.38, others)).toBe(true);
    expect(isSwapped(0.4, others)).toBe(false);
    expect(isSwapped(0.1, others)).toBe(true);
    expect(isSwapped(0.08, others)).toBe(false);
    expect(isSwapped(-0.24, others)).toBe(false);
  });
  test('needs two others that close', () => {
    expect(isSwapped(0.24, { ...others, count: 1 })).toBe(false);
    expect(isSwapped(0.15, { median: -0.05, count: 9 })).toBe(false);
  });
});
