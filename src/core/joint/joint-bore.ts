import { boreAsPrinted } from '../holes/bore.ts';
import {
  boreOfDrawn,
  type ExistingHole,
  givenDiameter,
  measuredBore,
  measuredDeviationOf,
} from '../holes/existing-hole.ts';
import { acrossFlatsOf, effectiveDrawnOf } from '../holes/facets.ts';
import { meltHeight, meltVolume } from '../holes/hole-depth.ts';
import { holeToDraw } from '../holes/hole-to-draw.ts';
import { boreDeviationOf, printError, printErrorOf } from '../holes/print-error.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import { type Derived, type Entry, entryFrom } from '../sources/derived.ts';
import type { Joint } from './joint.ts';

/** All that a bore asks of a joint. */
export type HoleHabits = Pick<Joint, 'holes'>;

/**
 * Bore to be expected from the drawn one, as a plain number.
 *
 *     D = D_e + e        e = 0 where the slicer compensates; D_e = D_CAD · cos(π/N) for a polygon of N corners
 *
 * @param joint - hole habits
 * @param drawn - drawn diameter D_CAD [mm], > 0
 * @returns D [mm]
 * @source hole-metrology-note see printError
 */
export function expectedBoreOf({ holes }: HoleHabits, drawn: number): number {
  const { behaviour, compensation } = holes;
  const seen = seenBySlicer(holes, drawn);
  return seen + (compensation === 'in-slicer' ? 0 : printErrorOf(behaviour, seen));
}

/** Diameter that the slicer sees of a drawn one. */
const seenBySlicer = ({ facets }: HoleHabits['holes'], diameter: number): number =>
  effectiveDrawnOf(facets === undefined ? { diameter } : { diameter, facets });

/** The same put in with its way. */
export const seenEntry = ({ facets }: HoleHabits['holes'], drawn: Derived): Entry =>
  entryFrom(facets === undefined ? drawn : acrossFlatsOf(entryFrom(drawn), facets));

/** The part of the hole that does not wait for the screw: bore, melt. */
export interface Bore {
  /** Bore that the insert wants. */
  readonly intended: Derived;
  /** Bore that it is set into: the same, or that of the hole that is there. */
  readonly printed: Derived;
  /** Bore to be expected, mm: of the hole as drawn in whole steps, or of the one that is there. */
  readonly expected: number;
  readonly drawn: Derived;
  readonly meltVolume: Derived;
  readonly meltHeight: Derived;
}

/** Bore and melt of an insert in a joint; see the functions in holes for each equation. */
export function boreOf(joint: Joint, insert: InsertDimensions): Bore {
  const wanted = boreAsPrinted(insert, joint.holes.fit);
  const { existing } = joint.holes;
  if (existing) {
    const printed = boreOfExisting(joint, existing);
    // Two bores in one derivation need two symbols; the one that is there is the bore as printed.
    const intended: Derived = { ...wanted, symbol: 'D_f', unit: 'mm' };
    const given = { intended, printed, expected: printed.value, drawn: givenDiameter(existing) };
    return { ...given, ...meltIn(insert, printed) };
  }
  const drawn = holeToDraw(wanted, joint.holes);
  const expected = expectedBoreOf(joint, drawn.value);
  return { intended: wanted, printed: wanted, expected, drawn, ...meltIn(insert, wanted) };
}

function meltIn(insert: InsertDimensions, bore: Derived): Pick<Bore, 'meltVolume' | 'meltHeight'> {
  const volume = meltVolume(insert, bore);
  return { meltVolume: volume, meltHeight: meltHeight(volume, bore) };
}

/** Printed less drawn diameter where the joint's hole is drawn; 0 where the slicer compensates. */
export function printErrorIn({ holes }: HoleHabits, drawn: Derived): Derived {
  const error = printError(holes.behaviour, seenEntry(holes, drawn));
  return holes.compensation === 'in-slicer' ? { ...error, value: 0, formula: '0', entries: [] } : error;
}

/**
 * Bore of a hole that is there: as measured, or as a drawn one comes out of this printer.
 *
 * @param joint - hole habits
 * @param existing - the hole
 * @returns Dt [mm]
 * @source own-model see measuredBore and boreOfDrawn
 */
export const boreOfExisting = (joint: HoleHabits, existing: ExistingHole): Derived =>
  existing.known === 'as-measured'
    ? measuredBore(existing)
    : boreOfDrawn(existing, printErrorIn(joint, givenDiameter(existing)));

/**
 * Standard deviation of the bore about the expected one, as a plain number: of the printer for a drawn hole, of the
 * measurement for a measured one.
 *
 * @param joint - hole habits, the hole that is there or none
 * @param drawn - drawn diameter [mm], > 0
 * @param pilotUncertainty - standard uncertainty of the pilot diameter [mm], ≥ 0
 * @returns s [mm], > 0
 * @source jcgm-100 combination
 */
export const boreDeviationIn = (joint: Joint, drawn: number, pilotUncertainty: number): number => {
  const { existing, behaviour } = joint.holes;
  return existing?.known === 'as-measured'
    ? measuredDeviationOf(existing, pilotUncertainty)
    : boreDeviationOf(behaviour, drawn, pilotUncertainty);
};
