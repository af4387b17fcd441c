import { describe, expect, test } from 'vitest';
import { leastHalfWidth, supportRadius } from '../../../src/app/drawing/frame.ts';
import { extent, type Point } from '../../../src/app/drawing/points.ts';
import { type SectionGeometry, sectionGeometry } from '../../../src/app/drawing/section-geometry.ts';
import type { SectionInput } from '../../../src/app/drawing/section-input.ts';
import { oddSections, section, sectionGrid } from './section-inputs.ts';

const EXACT = 1e-9;

function geometryOf(input: SectionInput): SectionGeometry {
  return sectionGeometry(input, { halfWidth: leastHalfWidth(input, 'ample'), wobble: 0.1 });
}

function widthOf(points: readonly Point[]): number {
  const { left, right } = extent(points);
  return right - left;
}

function expectExact(found: number, wanted: number): void {
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(EXACT);
}

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

  test('turns a far-side insert over: pilot up, knurl at the bottom face', () => {
    const input = section({ seat: 'far-side', insert: { side: 'far-side' }, hole: { depth: 5.3 } });
    const [, right = []] = geometryOf(input).insert.halves;
    const knurl = right.filter(({ x }) => x > input.insert.pilotDiameter / 2 + 0.1);
    const { top, bottom } = extent(right);
    expect(extent(knurl).top - top).toBeGreaterThan(bottom - extent(knurl).bottom);
    expectExact(bottom, input.host.thickness);
  });

  test('narrows the hole of a far side to the clearance above the shoulder', () => {
    const input = section({ seat: 'far-side', insert: { side: 'far-side' }, hole: { depth: 5.3 } });
    const { host, levels } = geometryOf(input);
    const above = host.hole.filter(({ y }) => y < levels.hole.top - EXACT);
    expectExact(widthOf(above), input.clamped.clearanceHole);
    expectExact(levels.hole.top, input.host.thickness - 5.3);
  });

  test.each(['near-side', 'far-side'] as const)('puts a boss between face and plate, %s', (side) => {
    const input = section({ insert: { side }, host: { bossDiameter: 10.3 } });
    const { host, frame } = geometryOf(input);
    const face = side === 'near-side' ? 0 : input.host.thickness;
    const atFace = host.body.filter(({ y }) => Math.abs(y - face) < EXACT);
    expectExact(widthOf(atFace), 10.3);
    expect(widthOf(host.body)).toBeGreaterThanOrEqual(2 * frame.halfWidth - 0.2);
  });

  test('closes the force in metal on the insert, and takes it through plastic over a gap', () => {
    const inBrass = extent(geometryOf(section()).force.corners);
    const overGap = section({ gap: 0.7, seat: 'over-gap' });
    const inPlastic = extent(geometryOf(overGap).force.corners);
    expect(-inBrass.left).toBeLessThan(section().screw.head.diameter / 2);
    expect(-inPlastic.left).toBeGreaterThan(overGap.hole.bossLeast / 2);
  });

  test('sinks a countersunk head into the clamped part', () => {
    const [, input] = oddSections().find(([name]) => name === 'countersunk') ?? ['', section()];
    const { levels, screw, clamped } = geometryOf(input);
    expectExact(levels.head.top, levels.clamped.top);
    expectExact(extent(screw.shank).bottom - levels.head.top, input.screw.length);
    const top = (clamped.halves[1] ?? []).filter(({ y }) => Math.abs(y - levels.clamped.top) < EXACT);
    expectExact(extent(top).left, input.screw.head.diameter / 2);
  });

  test('keeps the head of a countersunk screw out of the clamped part', () => {
    const { head } = section().screw;
    const input = section({
      screw: { head: { ...head, shape: 'countersunk', diameter: 6.9, height: 1.95 } },
    });
    const { screw, clamped } = geometryOf(input);
    const cone = screw.head.filter(({ x }) => x > 0).toSorted((a, b) => a.y - b.y);
    const bore = (clamped.halves[1] ?? []).slice(0, 2);
    const slope = (points: readonly Point[]) =>
      ((points[1]?.x ?? 0) - (points[0]?.x ?? 0)) / ((points[1]?.y ?? 0) - (points[0]?.y ?? 1));
    expectExact(slope(cone), slope(bore));
  });
});
