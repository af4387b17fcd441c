import { describe, expect, test } from 'vitest';
import { type InsertShape, insertProfile } from '../../../src/app/drawing/insert-profile.ts';
import { extent } from '../../../src/app/drawing/points.ts';
import { sectionGrid } from './odd-sections.ts';

const shapes = sectionGrid().map(([name, { insert, screw }]): readonly [string, InsertShape] => [
  name,
  { ...insert, nominalDiameter: screw.nominalDiameter, minorDiameter: screw.minorDiameter },
]);

describe('insertProfile', () => {
  test.each(shapes)('of %s fills the measured length and knurl diameter exactly', (_, insert) => {
    const { left, right, top, bottom } = extent(insertProfile(insert).half);
    expect(Math.abs(right - insert.knurlDiameter / 2)).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(left - insert.minorDiameter / 2)).toBeLessThanOrEqual(1e-9);
    expect([top, Math.abs(bottom - insert.length) <= 1e-9]).toEqual([0, true]);
  });

  test.each(shapes)('of %s divides the knurled length between two bands', (_, insert) => {
    const lengths = insertProfile(insert).bands.map(({ top, bottom }) => bottom - top);
    expect(lengths).toHaveLength(2);
    expect(Math.abs(lengths.reduce((sum, each) => sum + each, 0) - insert.knurledLength)).toBeLessThan(1e-9);
  });

  test.each(shapes)('of %s goes down along the outside without turning back', (_, insert) => {
    const levels = insertProfile(insert).outside.map(({ y }) => y);
    expect(levels).toEqual(levels.toSorted((a, b) => a - b));
  });

  test.each(shapes)('of %s leaves brass between groove and thread', (_, insert) => {
    expect(insertProfile(insert).grooveRadius).toBeGreaterThan(insert.nominalDiameter / 2);
  });

  test('ends in a pilot of the measured diameter', () => {
    const insert = {
      nominalDiameter: 3,
      minorDiameter: 2.4,
      knurlDiameter: 4.87,
      pilotDiameter: 4.13,
      length: 6.1,
      knurledLength: 4.2,
    };
    const { outside, bands } = insertProfile(insert);
    const end = bands[1]?.bottom ?? 0;
    const pilot = outside.filter(({ y }) => y > end);
    expect(pilot.length).toBeGreaterThan(1);
    expect(extent(pilot).right).toBe(4.13 / 2);
  });
});
