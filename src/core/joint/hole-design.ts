import { bite, biteFactor, boreAsPrinted } from '../holes/bore.ts';
import { leastBossDiameter, mouthChamfer, wallLines } from '../holes/boss.ts';
import {
  boreOfDrawn,
  type ExistingHole,
  givenDepth,
  givenDiameter,
  measuredBore,
  measuredDeviationOf,
} from '../holes/existing-hole.ts';
import { fitWindow } from '../holes/fit-window.ts';
import { farSideDepth, holeDepth, meltHeight, meltVolume } from '../holes/hole-depth.ts';
import { holeToDraw } from '../holes/hole-to-draw.ts';
import { boreDeviationOf, printError, printErrorOf } from '../holes/print-error.ts';
import { wallThickness } from '../host/wall-thickness.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { HoleDesign } from './assessment.ts';
import type { Joint } from './joint.ts';

/** All that a bore asks of a joint. */
type HoleHabits = Pick<Joint, 'holes'>;

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
    const intended: Derived = { ...wanted, symbol: 'D_f' };
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
function printErrorIn({ holes: { behaviour, compensation } }: HoleHabits, drawn: number): Derived {
  const error = printError(behaviour, drawn);
  return compensation === 'in-slicer' ? { ...error, value: 0, formula: '0' } : error;
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
    : boreOfDrawn(existing, printErrorIn(joint, existing.diameter));

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

/** The part of the hole that the failure modes ask for. */
export type SeatedHole = Pick<HoleDesign, 'boreAsPrinted' | 'depth' | 'floor' | 'bite' | 'biteFactor'>;

/**
 * Bore to be expected from the drawn one, as a plain number.
 *
 *     D = D_CAD + e        e = 0 where the slicer compensates
 *
 * @param joint - hole habits
 * @param drawn - drawn diameter D_CAD [mm], > 0
 * @returns D [mm]
 * @source hole-metrology-note see printError
 */
export const expectedBoreOf = ({ holes: { behaviour, compensation } }: Joint, drawn: number): number =>
  drawn + (compensation === 'in-slicer' ? 0 : printErrorOf(behaviour, drawn));

/**
 * Depth of the hole, floor under it and bite of the knurl in it; a depth that is given stays as it is.
 *
 * @param joint - printed part, hole habits
 * @param insert - dimensions [mm]
 * @param bore - what boreOf gave for the same joint and insert
 * @param tipBeyondInsert - how far the screw's tip stands beyond the insert [mm], ≥ 0
 * @returns the part of the hole that the failure modes ask for
 * @source own-model see the single equations in holes
 */
export function seatedHole(
  joint: Joint,
  insert: InsertDimensions,
  bore: Bore,
  tipBeyondInsert: number,
): SeatedHole {
  const { intended, printed, expected } = bore;
  const room = {
    length: insert.length.estimate,
    sunk: joint.sunk,
    layerHeight: joint.host.layerHeight,
    meltHeight: bore.meltHeight,
    tipBeyondInsert,
  };
  const given = joint.holes.existing?.depth;
  const wanted = () => (joint.insertSide === 'far-side' ? farSideDepth(room) : holeDepth(room));
  const depth = given === undefined ? wanted() : givenDepth(given);
  return {
    boreAsPrinted: printed,
    depth,
    floor: floorUnder(joint, depth),
    bite: bite(insert, printed),
    biteFactor: biteFactor(insert, intended, expected),
  };
}

/**
 * The hole for an insert, ready for the drawing.
 *
 * @param joint - printed part, hole habits
 * @param insert - dimensions [mm]
 * @param bore - what boreOf gave for the same joint and insert
 * @param seated - what seatedHole gave for them
 * @returns diameters, depth, mouth, boss, walls and the chance of landing in the window
 * @source own-model see the single equations in holes
 */
export function designHole(
  joint: Joint,
  insert: InsertDimensions,
  bore: Bore,
  seated: SeatedHole,
): HoleDesign {
  const { existing } = joint.holes;
  const { intended, printed, drawn, expected, meltVolume: volume, meltHeight: height } = bore;
  const standardDeviation = boreDeviationIn(
    joint,
    drawn.value,
    insert.pilotDiameter.standardUncertainty.value,
  );
  const bossDiameter = leastBossDiameter(insert);
  return {
    ...seated,
    intended,
    printError: printErrorIn(joint, drawn.value),
    drawn,
    meltVolume: volume,
    meltHeight: height,
    well: wellBelow(joint, insert, seated.depth),
    chamfer: mouthChamfer(),
    bossDiameter,
    wall: wallThickness(joint.host),
    wallLines: wallLines(bossDiameter, printed, joint.host),
    window: fitWindow(insert, intended, { expected, standardDeviation }),
    ...(existing ? { existing } : {}),
  };
}

function wellBelow(joint: Joint, insert: InsertDimensions, depth: Derived): Derived {
  const length = insert.length.estimate;
  return {
    symbol: 'l_w',
    value: depth.value - joint.sunk - length.value,
    unit: 'mm',
    formula: 'T − sunk − L',
    entries: [entryFrom(depth), entry('sunk', joint.sunk, 'mm'), entryFrom(length)],
    source: 'your-measurement',
    standing: 'measured',
  };
}

function floorUnder(joint: Joint, depth: Derived): Derived {
  return {
    symbol: 'f',
    // A hole deeper than the part leaves no floor; recommend refuses such an insert with both numbers.
    value: Math.max(0, joint.host.thickness - depth.value),
    unit: 'mm',
    formula: 'max(0, part − T)',
    entries: [entry('part', joint.host.thickness, 'mm'), entryFrom(depth)],
    source: 'your-measurement',
    standing: 'measured',
  };
}
