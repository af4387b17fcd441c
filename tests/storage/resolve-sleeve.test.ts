import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { Refusal } from '../../src/storage/refusal.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { type Changes, givenJoint, jointDocument } from '../support/joints.ts';

const spacer = (outsideDiameter_mm: number, material = 'aluminium'): Changes => ({
  clamped: { material: 'petg', sleeve: { material, outsideDiameter_mm } },
});
function refusalsOf(changes: Changes): readonly Refusal[] {
  const found = resolveDocument(jointDocument(changes), CATALOGUE);
  if (found.kind === 'resolved') throw new Error('resolved');
  return found.refusals;
}

describe('the spacer of a document', () => {
  test('is of a metal of the tables, wider than its hole', () => {
    expect(givenJoint(spacer(5.3)).clamped.sleeve).toMatchObject({
      outsideDiameter: 5.3,
      material: { kind: 'metal', id: 'aluminium' },
    });
    expect(givenJoint().clamped.sleeve).toBeUndefined();
  });
  test('proposes steel where there is none', () => {
    expect(givenJoint().alternatives.sleeveMaterial).toMatchObject({ id: 'steel', modulus: 205_000 });
  });
  test.each<[string, Changes, Partial<Refusal>]>([
    [
      'no wider than the hole',
      spacer(3.4),
      {
        code: 'sleeve-not-wider',
        path: 'joint.clamped.sleeve.outsideDiameter_mm',
        facts: { value: 3.4, hole: 3.4 },
      },
    ],
    [
      'of plastic',
      spacer(5.3, 'pla'),
      {
        code: 'unknown-row',
        path: 'joint.clamped.sleeve.material',
        facts: { value: 'pla', choices: 'aluminium, steel, stainless' },
      },
    ],
    [
      'under a countersunk head',
      { ...spacer(5.3), screw: { head: 'ISO 10642' } },
      { code: 'sleeve-under-countersunk', path: 'joint.clamped.sleeve', facts: { head: 'ISO 10642' } },
    ],
  ])('%s is refused', (_, changes, refusal) => {
    expect(refusalsOf(changes)).toMatchObject([refusal]);
  });
});
