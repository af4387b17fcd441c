import { bite, biteFactor, boreAsPrinted } from '../holes/bore.ts';
import { leastBossDiameter, mouthChamfer, wallLines } from '../holes/boss.ts';
import { fitWindow } from '../holes/fit-window.ts';
import { farSideDepth, holeDepth, meltHeight, meltVolume } from '../holes/hole-depth.ts';
import { holeToDraw } from '../holes/hole-to-draw.ts';
import { boreDeviationOf, printError, printErrorOf } from '../holes/print-error.ts';
import { wallThickness } from '../host/wall-thickness.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { HoleDesign } from './assessment.ts';
import type { Joint } from './joint.ts';

/** The part of the hole that does not wait for the screw: bore, melt. */
export interface Bore {
  readonly intended: Derived;
  readonly drawn: Derived;
  readonly meltVolume: Derived;
  readonly meltHeight: Derived;
}

/** Bore and melt of an insert in a joint; see the functions in holes for each equation. */
export function boreOf(joint: Joint, insert: InsertDimensions): Bore {
  const intended = boreAsPrinted(insert, joint.holes.fit);
  const volume = meltVolume(insert, intended);
  return {
    intended,
    drawn: holeToDraw(intended, joint.holes),
    meltVolume: volume,
    meltHeight: meltHeight(volume, intended),
  };
}

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
 * Depth of the hole, floor under it and bite of the knurl in it.
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
  const { intended, drawn } = bore;
  const room = {
    length: insert.length.estimate,
    sunk: joint.sunk,
    layerHeight: joint.host.layerHeight,
    meltHeight: bore.meltHeight,
    tipBeyondInsert,
  };
  const depth = joint.insertSide === 'far-side' ? farSideDepth(room) : holeDepth(room);
  return {
    boreAsPrinted: intended,
    depth,
    floor: floorUnder(joint, depth),
    bite: bite(insert, intended),
    biteFactor: biteFactor(insert, intended, expectedBoreOf(joint, drawn.value)),
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
  const { behaviour, compensation } = joint.holes;
  const { intended, drawn, meltVolume: volume, meltHeight: height } = bore;
  const standardDeviation = boreDeviationOf(
    behaviour,
    drawn.value,
    insert.pilotDiameter.standardUncertainty.value,
  );
  const bossDiameter = leastBossDiameter(insert);
  return {
    ...seated,
    printError:
      compensation === 'in-slicer'
        ? { ...printError(behaviour, drawn.value), value: 0, formula: '0' }
        : printError(behaviour, drawn.value),
    drawn,
    meltVolume: volume,
    meltHeight: height,
    well: wellBelow(joint, insert, seated.depth),
    chamfer: mouthChamfer(),
    bossDiameter,
    wall: wallThickness(joint.host),
    wallLines: wallLines(bossDiameter, intended, joint.host),
    window: fitWindow(insert, intended, { expected: expectedBoreOf(joint, drawn.value), standardDeviation }),
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
