import { describe, expect, test } from 'vitest';
import { supportRadius } from '../../../src/app/drawing/frame.ts';
import { extent, type Point } from '../../../src/app/drawing/points.ts';
import type { SectionGeometry } from '../../../src/app/drawing/section-geometry.ts';
import { EXACT, expectExact, geometryOf, widthOf } from './exact-geometry.ts';
import { sectionGrid } from './odd-sections.ts';
import { section } from './section-inputs.ts';

function outlinesOf({ host, clamped, insert, screw, melt, structure, force }: SectionGeometry) {
  return [
    host.body,
    host.hole,
    ...host.supports,
    ...clamped.halves,
    ...insert.halves,
    screw.head,
    screw.shank,
    ...screw.washer,
    ...melt.collar,
    ...melt.bulges,
    ...structure.solids,
    force.corners,
  ];
}

/** Twice the area between the corners; a shape that is no shape has none. */
function doubleArea(points: readonly Point[]): number {
  const sum = points.reduce((total, { x, y }, index) => {
    const next = points[(index + 1) % points.length] ?? { x, y };
    return total + x * next.y - next.x * y;
  }, 0);
  return Math.abs(sum);
}

describe('sectionGeometry', () => {
  test.each(sectionGrid())('of %s has closed outlines of finite corners and some area', (_, input) => {
    for (const outline of outlinesOf(geometryOf(input))) {
      expect(outline.length).toBeGreaterThanOrEqual(3);
      expect(outline.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
      expect(doubleArea(outline)).toBeGreaterThan(0);
    }
  });

  test.each(sectionGrid())('of %s draws every diameter as wide as it is', (_, input) => {
    const { insert, screw, host } = geometryOf(input);
    const [left = [], right = []] = insert.halves;
    expectExact(widthOf([...left, ...right]), input.insert.knurlDiameter);
    expectExact(widthOf(screw.shank), input.screw.nominalDiameter);
    expectExact(widthOf(screw.head), input.screw.head.diameter);
    expectExact(widthOf(host.hole), input.hole.borePrinted);
    expectExact(extent(right).left, input.screw.minorDiameter / 2);
  });

  test.each(sectionGrid())('of %s draws every length as long as it is', (_, input) => {
    const { levels, insert, screw } = geometryOf(input);
    const heights = extent(insert.halves[1] ?? []);
    expectExact(heights.bottom - heights.top, input.insert.length);
    expectExact(heights.top, levels.insert.top);
    expectExact(levels.clamped.bottom - levels.clamped.top, input.clamped.thickness);
    expectExact(levels.host.bottom - levels.host.top, input.host.thickness);
    expectExact(extent(screw.shank).bottom, levels.shank.bottom);
  });

  test.each(sectionGrid())('of %s keeps the insert in its hole and the hole in the part', (_, input) => {
    const { levels, host } = geometryOf(input);
    const body = extent(host.body);
    const hole = extent(host.hole);
    expect(levels.insert.top).toBeGreaterThanOrEqual(levels.hole.top - EXACT);
    expect(levels.insert.bottom).toBeLessThanOrEqual(levels.hole.bottom + EXACT);
    expect(hole.top).toBeGreaterThanOrEqual(body.top - EXACT);
    expect(hole.bottom).toBeLessThanOrEqual(body.bottom + EXACT);
    expect(hole.right).toBeLessThan((input.host.bossDiameter ?? widthOf(host.body)) / 2);
  });

  test.each(sectionGrid())('of %s keeps the melt in the part and clear of the screw', (_, input) => {
    const { melt, host, levels } = geometryOf(input);
    const outer = (input.host.bossDiameter ?? widthOf(host.body)) / 2;
    for (const collar of melt.collar) {
      expect(extent(collar).right).toBeLessThan(outer);
      expect(extent(collar).top).toBeGreaterThanOrEqual(levels.insert.top - EXACT);
      expect(extent(collar).bottom).toBeLessThanOrEqual(levels.insert.bottom + EXACT);
    }
    for (const bulge of melt.bulges) {
      const inner = Math.min(...bulge.map(({ x }) => Math.abs(x)));
      const isReached = levels.shank.bottom > levels.well.top;
      expect(inner).toBeGreaterThanOrEqual(isReached ? input.screw.nominalDiameter / 2 : 0);
      expect(extent(bulge).top).toBeGreaterThanOrEqual(levels.well.top - EXACT);
      expect(extent(bulge).bottom).toBeLessThanOrEqual(levels.well.bottom + EXACT);
    }
  });

  test.each(sectionGrid())('of %s is the same on both sides of the axis', (_, input) => {
    const { host, screw, clamped, insert } = geometryOf(input);
    for (const shape of [host.hole, screw.head, screw.shank, clamped.halves.flat(), insert.halves.flat()]) {
      const { left, right } = extent(shape);
      expectExact(left, -right);
    }
  });

  test('stops the walls at the end of the hole', () => {
    const input = section();
    const { structure, levels } = geometryOf(input);
    const ends = structure.wallLines.map((line) => extent(line).bottom);
    expect(ends).toHaveLength(2 * (input.host.wallCount - 1));
    for (const end of ends) expectExact(end, levels.hole.bottom);
  });

  test('spaces the infill so that its lines take the share of the density', () => {
    const input = section({ host: { infill: { density: 0.37, family: 'prismatic', pattern: 'grid' } } });
    const columns = geometryOf(input).structure.infill.map(([first]) => first?.x ?? Number.NaN);
    const spacings = columns.slice(1).map((x, index) => x - (columns[index] ?? Number.NaN));
    expect(spacings.length).toBeGreaterThan(5);
    for (const spacing of spacings) expectExact(input.host.lineWidth / spacing, 0.37);
  });

  test('lays prismatic infill level across the build and upright along it', () => {
    const infill = { density: 0.31, family: 'prismatic', pattern: 'grid' } as const;
    const [along] = geometryOf(section({ host: { infill } })).structure.infill;
    const [across] = geometryOf(section({ host: { infill, axis: 'across-build' } })).structure.infill;
    expect(along?.[0]?.x).toBe(along?.[1]?.x);
    expect(across?.[0]?.y).toBe(across?.[1]?.y);
  });

  test('opens a space of the gap between the supports', () => {
    const input = section({ gap: 1.3, seat: 'over-gap' });
    const { host, frame } = geometryOf(input);
    const [left = [], right = []] = host.supports;
    expectExact(extent(right).bottom - extent(right).top, 1.3);
    expectExact(extent(right).left, supportRadius(input, frame));
    expectExact(extent(left).right, -extent(right).left);
    expect(extent(right).left).toBeGreaterThan(input.hole.bossLeast / 2);
  });
});
