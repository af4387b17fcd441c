import type { ExistingHole } from '../core/holes/existing-hole.ts';
import type { Joint } from '../core/joint/joint.ts';
import { boreOfExisting } from '../core/joint/joint-bore.ts';
import type { JointDocument } from './document.ts';
import { LEAST_HOLE_MM } from './least-values.ts';
import type { Faults } from './resolve.ts';

const AT = 'joint.holes.existing';

/**
 * The hole of a document that is there already, checked against the part it is in; faults are reported at their keys.
 * Absent where the hole is designed.
 */
export function resolveExistingHole(
  { joint, caliper }: JointDocument,
  holes: Joint['holes'],
  faults: Faults,
): ExistingHole | undefined {
  const given = joint.holes.existing;
  if (given === undefined) return undefined;
  const { diameter_mm: diameter, known, depth_mm: depth } = given;
  const existing: ExistingHole = {
    diameter,
    known,
    permissibleError: known === 'as-measured' ? caliper.permissibleError_mm : 0,
    ...(depth === undefined ? {} : { depth }),
  };
  const bore = boreOfExisting({ holes }, existing).value;
  const boss = joint.host.bossDiameter_mm;
  const thickness = joint.host.thickness_mm;
  if (bore < LEAST_HOLE_MM) {
    faults.add(`${AT}.diameter_mm`, 'hole-prints-shut', { drawn: diameter });
  }
  if (boss !== undefined && bore >= boss) {
    faults.add(`${AT}.diameter_mm`, 'hole-beyond-boss', { bore, boss });
  }
  if (depth !== undefined && depth > thickness) {
    faults.add(`${AT}.depth_mm`, 'hole-beyond-part', { depth, thickness });
  }
  return existing;
}
