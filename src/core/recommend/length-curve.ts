import type { Insert } from '../inserts/insert.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { deviationOfRange } from '../pull-out/bond.ts';
import type { Capacity } from '../pull-out/limit.ts';
import { capacityOf, jointsOverLength } from './joints-over-length.ts';

/** What half of all joints hold, and 19 of 20, and 1 of 20: N or N·mm. */
export interface HoldBand {
  readonly median: number;
  readonly characteristic: number;
  readonly upper: number;
}

/** Strength and torque of one length of an otherwise unchanged insert; the band itself is that of knurl shear, N. */
export interface LengthPoint extends HoldBand {
  /** mm */
  readonly length: number;
  /** Torque at the insert that turns it, N·mm. */
  readonly torqueOut: HoldBand;
  /** Torque on the screw that pulls the insert out, at any friction of its range, N·mm. */
  readonly jackOut: HoldBand;
  /** Torque that pulls the insert out where the clamp force passes through the plastic, N·mm, median. */
  readonly jackOutTorque: number;
  /** Setting for this joint, N·mm; absent where none fits. */
  readonly dial?: number;
}

/**
 * How strength and torque change with the length of an insert, everything else kept.
 *
 * The length without knurl stays as it is; the printed part, and a hole
 * that is there, are taken as deep enough for every length. Jack-out that
 * limits a torque is the knurl shear force at the low end of friction, whatever
 * the seat of this joint. Its band for a coupon, whose friction nobody measured,
 * lies about the middle of the range and is wider by it:
 *
 *     T = F · √(k_low · k_high)        s = √(s_F² + r²),   r = ln(k_high/k_low)/(2 · 1.645)
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
  const at = jointsOverLength(joint, insert, lengths);
  return lengths.flatMap((length) => {
    const found = at(length);
    if (found === undefined) return [];
    const { near, asBuilt } = found;
    const pulled = bandOf(capacityOf(near, 'knurl-shear'));
    const { slippery, sticky } = near.conversion;
    const { dial } = asBuilt;
    return {
      length,
      ...pulled,
      torqueOut: bandOf(capacityOf(near, 'torque-out')),
      jackOut: jackedOut(pulled, { slippery, sticky, quantile: near.found.bond.scatter.quantile.value }),
      jackOutTorque: pulled.median * slippery,
      ...(dial === undefined ? {} : { dial }),
    };
  });
}

// A knurl that does not bite holds nothing, and nothing scatters.
const NOTHING: HoldBand = { median: 0, characteristic: 0, upper: 0 };

/** What is held by half of all joints and by 19 of 20, with what 1 of 20 hold: as far above as those lie below. */
export const bandOf = ({
  median: { value: median },
  characteristic: { value: characteristic },
}: Capacity): HoldBand =>
  characteristic > 0 ? { median, characteristic, upper: median ** 2 / characteristic } : NOTHING;

/** A pull through the screw: about the middle of friction, and as much wider as its range. */
function jackedOut(
  { median, characteristic }: HoldBand,
  friction: { readonly slippery: number; readonly sticky: number; readonly quantile: number },
): HoldBand {
  if (characteristic <= 0) return NOTHING;
  const { slippery, sticky, quantile } = friction;
  const middle = median * Math.sqrt(slippery * sticky);
  const ofFriction = quantile * deviationOfRange({ low: slippery, high: sticky });
  const spread = Math.exp(Math.hypot(Math.log(median / characteristic), ofFriction));
  return { median: middle, characteristic: middle / spread, upper: middle * spread };
}
