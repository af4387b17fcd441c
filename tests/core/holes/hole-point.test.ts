import { describe, expect, test } from 'vitest';
import { errorOfPoint, holePoint } from '../../../src/core/holes/hole-point.ts';
import { holeReading } from '../../support/hole-readings.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const PIN = { instrument: 'pin-gauge', gaugeStep: 0.06 } as const;

describe('errorOfPoint', () => {
  test('is the bore less the drawing: a 3.96 mm pin and half a step of 0.06 mm in a 4.1 mm hole (by hand)', () => {
    const error = errorOfPoint(holePoint(holeReading(4.1, 3.96, PIN)));
    expectRelative(error.value, 3.96 + 0.03 - 4.1, 1e-9);
    expect(error).toMatchObject({
      symbol: 'e',
      unit: 'mm',
      source: 'your-measurement',
      standing: 'measured',
    });
    expect(error.entries.map(({ symbol }) => symbol)).toEqual(['D_m', 'D_e']);
    expectWays([error]);
  });
  test('of a polygon is against its width across the flats', () => {
    const point = holePoint(holeReading(4.5, 4.2, { ...PIN, facets: 12 }));
    expectRelative(point.drawn, 4.5 * Math.cos(Math.PI / 12), 1e-12);
    expectRelative(errorOfPoint(point).value, 4.23 - 4.5 * Math.cos(Math.PI / 12), 1e-9);
    expectWays([errorOfPoint(point), ...(point.seen ? [point.seen] : [])]);
    expect(errorOfPoint(point).entries.at(-1)?.from).toBe(point.seen);
  });
});
