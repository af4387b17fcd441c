import { describe, expect, test } from 'vitest';
import { extent, type Point } from '../../../src/app/drawing/points.ts';
import { EXACT, expectExact, geometryOf, widthOf } from './exact-geometry.ts';
import { oddSections } from './odd-sections.ts';
import { section } from './section-inputs.ts';

describe('sectionGeometry, other ways to build the joint,', () => {
  test('turns a far-side insert over: pilot up, knurl at the bottom face', () => {
    const input = section({ seat: 'far-side', insert: { side: 'far-side' }, hole: { depth: 5.3 } });
    const [, right = []] = geometryOf(input).insert.halves;
    const knurl = right.filter(({ x }) => x > input.insert.pilotDiameter / 2 + 0.1);
    const { top, bottom } = extent(right);
    expect(extent(knurl).top - top).toBeGreaterThan(bottom - extent(knurl).bottom);
    expectExact(bottom, input.host.thickness);
  });

  test('leaves a sunk far-side insert above the bottom face', () => {
    const insert = { side: 'far-side', sunk: 0.7 } as const;
    const input = section({ seat: 'far-side', insert, hole: { depth: 6.1 } });
    const { levels } = geometryOf(input);
    expectExact(levels.insert.bottom, input.host.thickness - 0.7);
    expectExact(levels.insert.top, input.host.thickness - 0.7 - input.insert.length);
    expectExact(levels.well.bottom - levels.well.top, 0.1);
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
