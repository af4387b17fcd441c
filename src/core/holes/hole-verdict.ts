import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { ENOUGH_BITE, PILOT_MELTS_IN } from './fit-window.ts';

/**
 * What an existing hole is to an insert.
 *
 *     no-bite       the knurl does not touch the wall: the insert falls in
 *     too-small     the pilot finds no way in: plastic is pushed ahead of it, the insert tilts, the part bulges
 *     too-shallow   the hole does not take the insert and the melt
 *     loose         less than the share of the bite that counts as enough
 *     tight         the pilot does not drop in, but melts its way
 *     fits          all else
 */
export type HoleVerdict = 'fits' | 'loose' | 'tight' | 'too-small' | 'too-shallow' | 'no-bite';

/** Guards a depth that is just enough against binary dust, mm. */
const DUST = 1e-9;

/** Sizes that a verdict follows from, mm. */
export interface HoleAndInsert {
  readonly pilot: number;
  readonly knurl: number;
  /** Bore that the insert wants. */
  readonly intended: number;
  /** Bore that is there. */
  readonly bore: number;
  /** Depth that insert and melt need. */
  readonly depthNeeded: number;
  /** Depth that is there; absent: not known, not judged. */
  readonly depth?: number;
}

/**
 * What an existing hole is to an insert, the gravest first.
 *
 *     no-bite      D ≥ Dk
 *     too-small    D < Dp − 0.10 mm
 *     too-shallow  T < depth needed
 *     loose        D > Dk − 0.7 · (Dk − Dt)
 *     tight        D < Dp
 *
 * The limits are those of fitWindow. A taper, a hole out of round and glue are not in it.
 *
 * @param sizes - pilot Dp, knurl Dk, wanted bore Dt, bore D, depth T and depth needed [mm]
 * @returns the verdict
 * @source own-model ends of the window
 * @source trade-practice a tenth of a millimetre has decided between holding and falling in
 * @example pilot 4.25, knurl 5.0, wanted 4.30, bore 4.6 mm is loose
 */
export function holeVerdict(sizes: HoleAndInsert): HoleVerdict {
  const { pilot, knurl, intended, bore, depthNeeded, depth } = sizes;
  if (bore >= knurl) return 'no-bite';
  if (bore < pilot - PILOT_MELTS_IN) return 'too-small';
  if (depth !== undefined && depth < depthNeeded - DUST) return 'too-shallow';
  if (bore > knurl - ENOUGH_BITE * (knurl - intended)) return 'loose';
  return bore < pilot ? 'tight' : 'fits';
}

/**
 * Depth that an insert and what it displaces need in a hole.
 *
 *     Tn = sunk + L + m          m = 0 in a hole that goes through, and in front of a far-side shoulder
 *
 * Room for a screw that stands out below the insert is not in it: the screw is chosen for the depth that is there.
 *
 * @param room - sunk, insert length L [mm], melt height m [mm] or none
 * @returns Tn [mm]
 * @source own-model all displaced plastic goes down
 * @example insert of 5 mm flush with 0.63 mm of melt needs 5.63 mm
 */
export function depthNeeded(room: {
  readonly sunk: number;
  readonly length: Derived;
  readonly meltHeight?: Derived;
}): Derived {
  const { sunk, length, meltHeight } = room;
  return {
    symbol: 'T_n',
    value: sunk + length.value + (meltHeight?.value ?? 0),
    unit: 'mm',
    formula: meltHeight ? 'sunk + L + m' : 'sunk + L',
    entries: [entry('sunk', sunk, 'mm'), entryFrom(length), ...(meltHeight ? [entryFrom(meltHeight)] : [])],
    source: 'own-model',
    standing: 'estimate',
  };
}
