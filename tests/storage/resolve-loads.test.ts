import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { JointDocument } from '../../src/storage/document.ts';
import type { Refusal } from '../../src/storage/refusal.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { type Changes, givenJoint, jointDocument } from '../support/joints.ts';
import { expectRelative } from '../support/published.ts';

type Place = { readonly x: number; readonly y: number };
const screwsAt = (...positions_mm: readonly Place[]): JointDocument['joint']['pattern'] => ({
  kind: 'free',
  positions_mm: [...positions_mm],
});
const moments = (x: number, y: number, z: number) => ({ moment_Nm: { x, y, z } });
const SLANTING = screwsAt({ x: 20, y: 20 }, { x: -20, y: -20 });

function refusalsOf(changes: Changes): readonly Refusal[] {
  const found = resolveDocument(jointDocument(changes), CATALOGUE);
  if (found.kind === 'resolved') throw new Error('resolved');
  return found.refusals;
}

describe('the group of screws of a document', () => {
  test('carries forces in N, moments in N·mm and its largest pull and shear into the joint', () => {
    // 4 screws at (±40, ±30) mm: 83/4 + 2000/4/30 N of pull; a shear of 5 N along y alone: 1.25 N each.
    const joint = givenJoint({
      pattern: { kind: 'rectangular', columns: 2, rows: 2, spacingX_mm: 80, spacingY_mm: 60 },
      loads: { ...moments(2, 0, 0), shear_N: 0, shearAcross_N: 5 },
    });
    expectRelative(joint.loads.pull, 83 / 4 + 2000 / 120);
    expectRelative(joint.loads.shear, 5 / 4);
    expect(joint.group.loads.screws).toHaveLength(4);
    expect(joint.group.load.moment).toEqual({ x: 2000, y: 0, z: 0 });
  });
  test('of a circle shares its load round it', () => {
    const joint = givenJoint({
      pattern: { kind: 'circular', count: 3, diameter_mm: 44 },
      loads: { shear_N: 0 },
    });
    expectRelative(joint.loads.pull, 83 / 3);
  });
  test('takes a moment that the edge or another screw has an arm for', () => {
    const edge = givenJoint({
      loads: { pull_N: 0, ...moments(0.6, 0, 0), pivot: { kind: 'edge', x_mm: 9, y_mm: 12 } },
    });
    expectRelative(edge.loads.pull, 50);
    // Across the slanting line: 0.5 · √2 N·m over 40 · √2 mm.
    expectRelative(
      givenJoint({ pattern: SLANTING, loads: { pull_N: 0, ...moments(0.5, -0.5, 0) } }).loads.pull,
      12.5,
    );
  });
});

describe('a moment without arms', () => {
  test.each<[string, Changes, Partial<Refusal>]>([
    [
      'in the plane, on one screw',
      { loads: moments(0, 0, 0.7) },
      { code: 'twist-on-one-point', path: 'joint.loads.moment_Nm.z', facts: { moment: 700 } },
    ],
    [
      'in the plane, on screws in one place',
      {
        pattern: screwsAt({ x: 3, y: 4 }, { x: 3, y: 4 }),
        loads: { pull_N: 0, shear_N: 0, ...moments(0, 0, -0.3) },
      },
      { code: 'twist-on-one-point', path: 'joint.loads.moment_Nm.z' },
    ],
    [
      'by a load beside one screw',
      { loads: { shear_N: 0, at_mm: { x: 0, y: 8, z: 0 } } },
      { code: 'tilt-without-arm', path: 'joint.loads.pivot.kind', facts: { axis: 'x', moment: 8 * 83 } },
    ],
    [
      'by shear above one screw',
      { loads: { pull_N: 0, at_mm: { x: 0, y: 0, z: 13 } } },
      { code: 'tilt-without-arm', path: 'joint.loads.pivot.kind', facts: { axis: 'y' } },
    ],
    [
      'along a row',
      {
        pattern: { kind: 'rectangular', columns: 3, rows: 1, spacingX_mm: 20, spacingY_mm: 5 },
        loads: moments(0.4, 0, 0),
      },
      { code: 'tilt-without-arm', path: 'joint.loads.pivot.kind', facts: { axis: 'x', moment: 400 } },
    ],
    [
      'along a slanting row',
      { pattern: SLANTING, loads: moments(0.5, 0.5, 0) },
      { code: 'tilt-without-arm', path: 'joint.loads.pivot.kind' },
    ],
  ])('%s is refused where it was given', (_, changes, refusal) => {
    expect(refusalsOf(changes)).toMatchObject([refusal]);
  });
  test('of a slanting row is what it has no arm for: 0.5 · √2 N·m', () => {
    const [refusal] = refusalsOf({ pattern: SLANTING, loads: moments(0.5, 0.5, 0) });
    expectRelative(Math.abs(Number(refusal?.facts['moment'])), 500 * Math.SQRT2);
  });
});

describe('an edge', () => {
  const row: Changes['pattern'] = {
    kind: 'rectangular',
    columns: 2,
    rows: 2,
    spacingX_mm: 30,
    spacingY_mm: 22,
  };
  const edge = (x_mm: number, y_mm: number): Changes => ({
    pattern: row,
    loads: { pivot: { kind: 'edge', x_mm, y_mm } },
  });
  test('lies beyond every screw, along x and along y', () => {
    expect(refusalsOf(edge(15, 12))).toMatchObject([
      { code: 'screw-beyond-edge', path: 'joint.loads.pivot.x_mm', facts: { edge: 15, screw: 15 } },
    ]);
    expect(refusalsOf(edge(16, 10.5))).toMatchObject([
      { code: 'screw-beyond-edge', path: 'joint.loads.pivot.y_mm', facts: { edge: 10.5, screw: 11 } },
    ]);
    expect(refusalsOf(edge(3, 4)).map(({ path }) => path)).toEqual([
      'joint.loads.pivot.y_mm',
      'joint.loads.pivot.x_mm',
    ]);
    expect(givenJoint(edge(15.1, 11.1)).group.pivot).toEqual({ kind: 'edge', x: 15.1, y: 11.1 });
  });
});
