import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { JointDocument } from '../../src/storage/document.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { type Changes, givenJoint, jointDocument } from '../support/joints.ts';

type Existing = NonNullable<JointDocument['joint']['holes']['existing']>;

const withHole = (existing: Existing, changes: Changes = {}) =>
  jointDocument({ ...changes, holes: { existing } });

function refusalsOf(document: JointDocument) {
  const found = resolveDocument(document, CATALOGUE);
  return found.kind === 'refused' ? found.refusals : [];
}

describe('a hole that is there', () => {
  test('is none where the document names none', () => {
    expect(givenJoint().holes.existing).toBeUndefined();
  });
  test('as measured carries the caliper’s error', () => {
    const { existing } = givenJoint({
      holes: { existing: { diameter_mm: 4.42, known: 'as-measured', depth_mm: 7.1 } },
      permissibleError_mm: 0.02,
    }).holes;
    expect(existing).toEqual({ diameter: 4.42, known: 'as-measured', permissibleError: 0.02, depth: 7.1 });
  });
  test('as drawn carries none', () => {
    const { existing } = givenJoint({ holes: { existing: { diameter_mm: 4.7, known: 'as-drawn' } } }).holes;
    expect(existing).toEqual({ diameter: 4.7, known: 'as-drawn', permissibleError: 0 });
  });
});

describe('a hole that is there is refused', () => {
  test('where it would print shut', () => {
    expect(refusalsOf(withHole({ diameter_mm: 0.6, known: 'as-drawn' }))).toEqual([
      { path: 'joint.holes.existing.diameter_mm', code: 'hole-prints-shut', facts: { drawn: 0.6 } },
    ]);
    expect(refusalsOf(withHole({ diameter_mm: 0.6, known: 'as-measured' }))).toEqual([]);
  });
  test('where it leaves nothing of the boss', () => {
    const boss = { host: { bossDiameter_mm: 8.9 } };
    expect(refusalsOf(withHole({ diameter_mm: 8.9, known: 'as-measured' }, boss))).toEqual([
      { path: 'joint.holes.existing.diameter_mm', code: 'hole-beyond-boss', facts: { bore: 8.9, boss: 8.9 } },
    ]);
    expect(refusalsOf(withHole({ diameter_mm: 8.8, known: 'as-measured' }, boss))).toEqual([]);
  });
  test('where it is deeper than the part, and taken where it just goes through', () => {
    const hole = { diameter_mm: 4.4, known: 'as-measured' } as const;
    expect(refusalsOf(withHole({ ...hole, depth_mm: 11.4 }))).toEqual([
      {
        path: 'joint.holes.existing.depth_mm',
        code: 'hole-beyond-part',
        facts: { depth: 11.4, thickness: 11.3 },
      },
    ]);
    expect(refusalsOf(withHole({ ...hole, depth_mm: 11.3 }))).toEqual([]);
  });
});
