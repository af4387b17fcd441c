import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { type Tightening, tighten } from '../joint/tightening.ts';
import type { Capacity } from '../pull-out/limit.ts';

/** Depth of the part over the longest insert drawn, [-]. */
const DEEP_ENOUGH = 3;

/** What a joint comes to with one length of an insert. */
export interface AtLength {
  /** On the near side, sitting on the insert: what the knurl itself holds. */
  readonly near: Tightening;
  /** As the joint is built. */
  readonly asBuilt: Tightening;
}

/**
 * What a joint comes to with any length of an insert, everything else kept.
 *
 * The length without knurl stays as it is; the printed part, and a hole that is there, are taken as deep enough for the
 * longest.
 *
 * @param joint - a joint that may be answered
 * @param insert - the insert whose diameters and plain parts are kept
 * @param lengths - all lengths over all that will be asked [mm]
 * @returns for a length what the joint comes to; undefined for one that leaves no knurl
 * @source own-model knurl shear over length
 */
export function jointsOverLength(
  joint: AnswerableJoint,
  insert: Insert,
  lengths: readonly number[],
): (length: number) => AtLength | undefined {
  const { length, knurledLength } = insertDimensions(insert);
  const unknurled = length.estimate.value - knurledLength.estimate.value;
  const longest = Math.max(...lengths, length.estimate.value);
  const host = { ...joint.host, thickness: Math.max(joint.host.thickness, DEEP_ENOUGH * longest) };
  const asBuilt = { ...joint, host, holes: withoutDepth(joint.holes) };
  const near = { ...asBuilt, insertSide: 'near-side', gap: 0, sunk: 0, seatOverride: 'on-insert' } as const;
  return (one) => {
    if (one <= unknurled) return undefined;
    const readings = (value: number) => ({ values: [value], permissibleError: 0 });
    const longer: Insert = { ...insert, length: readings(one), knurledLength: readings(one - unknurled) };
    return { near: tighten(near, longer), asBuilt: tighten(asBuilt, longer) };
  };
}

/** What one mode of the knurl bears on the near side. */
export function capacityOf({ actives }: Tightening, mode: 'knurl-shear' | 'torque-out'): Capacity {
  const active = actives.find((candidate) => candidate.mode === mode);
  if (active === undefined) throw new Error('the knurl is sheared and turned on the near side');
  return active.capacity;
}

/** A hole that is there, taken as deep enough for every length. */
function withoutDepth(holes: AnswerableJoint['holes']): AnswerableJoint['holes'] {
  if (holes.existing === undefined) return holes;
  const { depth: _, ...existing } = holes.existing;
  return { ...holes, existing };
}
