import { type Derived, entry, entryFrom } from '../sources/derived.ts';

/** A rig that pulls by a lever, with a scale at its long end. */
export interface LeverRig {
  /** Force at the part over force at the scale i, [-], > 0; 1 for a straight pull. */
  readonly leverRatio: number;
  /** Most that the scale reads, [N], > 0. */
  readonly scaleLimit: number;
}

export type LeverReading =
  | { readonly kind: 'reading'; readonly reading: Derived }
  | {
      readonly kind: 'refused';
      readonly code: 'scale-too-small';
      readonly reading: Derived;
      readonly scaleLimit: number;
      /** Lever ratio at which this scale would just do. */
      readonly leverRatio: Derived;
    };

/**
 * What the scale of a lever rig must show for a load at the part.
 *
 *     W = F/i
 *
 * The lever's own weight and friction at its pivot are not in it: weigh the idle lever and add it.
 *
 * @param load - force at the part F [N], > 0
 * @param rig - lever ratio i [-], limit of the scale [N]
 * @returns W [N]; or the refusal scale-too-small with the lever ratio F/limit that would do
 * @source own-model statics of a lever
 * @example 1200 N with 1 : 6 and a scale of 300 N reads 200 N
 */
export function leverReading(load: Derived, rig: LeverRig): LeverReading {
  const reading: Derived = {
    symbol: 'W_r',
    value: load.value / rig.leverRatio,
    unit: 'N',
    formula: `${load.symbol}/i_L`,
    entries: [entryFrom(load), entry('i_L', rig.leverRatio, '-')],
    source: 'own-model',
    standing: load.standing,
  };
  if (reading.value <= rig.scaleLimit) return { kind: 'reading', reading };
  const leverRatio: Derived = {
    symbol: 'i_n',
    value: load.value / rig.scaleLimit,
    unit: '-',
    formula: `${load.symbol}/W_max`,
    entries: [entryFrom(load), entry('W_max', rig.scaleLimit, 'N')],
    source: 'own-model',
    standing: load.standing,
  };
  return { kind: 'refused', code: 'scale-too-small', reading, scaleLimit: rig.scaleLimit, leverRatio };
}
