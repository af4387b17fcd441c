import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { tighten } from '../joint/tightening.ts';

/** Strength and torque of one length of an otherwise unchanged insert. */
export interface LengthPoint {
  /** mm */
  readonly length: number;
  /** Knurl shear, N: half of all joints hold it, and 19 of 20, and 1 of 20. */
  readonly median: number;
  readonly characteristic: number;
  readonly upper: number;
  /** Torque that pulls the insert out where the clamp force passes through the plastic, N·mm, median. */
  readonly jackOutTorque: number;
  /** Setting for this joint, N·mm; absent where none fits. */
  readonly dial?: number;
}

/**
 * How strength and torque change with the length of an insert, everything else kept.
 *
 * The length without knurl stays as it is; the printed part, and a hole
 * that is there, are taken as deep enough for every length. Jack-out is the
 * knurl shear force at the low end of friction, whatever the seat of this joint.
 *
 * @param joint - a joint that may be answered
 * @param insert - the insert whose diameters and plain parts are kept
 * @param lengths - lengths over all [mm], each longer than what is not knurled
 * @returns one point a length
 * @source own-model knurl shear over length
 */
export function lengthCurve(
  joint: AnswerableJoint,
  insert: Insert,
  lengths: readonly number[],
): readonly LengthPoint[] {
  const { length, knurledLength } = insertDimensions(insert);
  const unknurled = length.estimate.value - knurledLength.estimate.value;
  const longest = Math.max(...lengths, length.estimate.value);
  const holes = withoutDepth(joint.holes);
  const deepEnough = { ...joint.host, thickness: Math.max(joint.host.thickness, DEEP_ENOUGH * longest) };
  return lengths
    .filter((one) => one > unknurled)
    .map((one) => {
      const readings = (value: number) => ({ values: [value], permissibleError: 0 });
      const longer: Insert = { ...insert, length: readings(one), knurledLength: readings(one - unknurled) };
      const near = tighten(
        {
          ...joint,
          holes,
          host: deepEnough,
          insertSide: 'near-side',
          gap: 0,
          sunk: 0,
          seatOverride: 'on-insert',
        },
        longer,
      );
      const asBuilt = tighten({ ...joint, holes, host: deepEnough }, longer);
      const knurl = near.actives.find((active) => active.mode === 'knurl-shear');
      if (knurl === undefined) throw new Error('knurl shear is always there on the near side');
      const { median, characteristic } = knurl.capacity;
      return {
        length: one,
        median: median.value,
        characteristic: characteristic.value,
        // A knurl that does not bite holds nothing, and nothing scatters.
        upper: characteristic.value > 0 ? median.value ** 2 / characteristic.value : 0,
        jackOutTorque: median.value * near.conversion.slippery,
        ...(asBuilt.dial === undefined ? {} : { dial: asBuilt.dial }),
      };
    });
}

/** A hole that is there, taken as deep enough for every length. */
function withoutDepth(holes: AnswerableJoint['holes']): AnswerableJoint['holes'] {
  if (holes.existing === undefined) return holes;
  const { depth: _, ...existing } = holes.existing;
  return { ...holes, existing };
}

/** Depth of the part over the longest insert drawn, [-]. */
const DEEP_ENOUGH = 3;
