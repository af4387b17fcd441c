import { bite, biteFactor } from '../holes/bore.ts';
import { leastBossDiameter, mouthChamfer, wallLines } from '../holes/boss.ts';
import { givenDepth } from '../holes/existing-hole.ts';
import { fitWindow } from '../holes/fit-window.ts';
import { farSideDepth, holeDepth } from '../holes/hole-depth.ts';
import { wallThickness } from '../host/wall-thickness.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import { type Derived, type Entry, entry, entryBy, entryFrom } from '../sources/derived.ts';
import type { HoleDesign } from './assessment.ts';
import type { Joint } from './joint.ts';
import { type Bore, boreDeviationIn, printErrorIn } from './joint-bore.ts';

/** The part of the hole that the failure modes ask for. */
export type SeatedHole = Pick<HoleDesign, 'boreAsPrinted' | 'depth' | 'floor' | 'bite' | 'biteFactor'>;

/**
 * Depth of the hole, floor under it and bite of the knurl in it; a depth that is given stays as it is.
 *
 * @param joint - printed part, hole habits
 * @param insert - dimensions [mm]
 * @param bore - what boreOf gave for the same joint and insert
 * @param tip - how far the screw's tip stands beyond the insert [mm], > 0; undefined where it does not
 * @returns the part of the hole that the failure modes ask for
 * @source own-model see the single equations in holes
 */
export function seatedHole(
  joint: Joint,
  insert: InsertDimensions,
  bore: Bore,
  tip: Derived | undefined,
): SeatedHole {
  const { intended, printed } = bore;
  const room = {
    length: insert.length.estimate,
    sunk: joint.sunk,
    layerHeight: joint.host.layerHeight,
    meltHeight: bore.meltHeight,
    ...(tip === undefined ? {} : { tip }),
  };
  const given = joint.holes.existing?.depth;
  const wanted = () => (joint.insertSide === 'far-side' ? farSideDepth(room) : holeDepth(room));
  const depth = given === undefined ? wanted() : givenDepth(given);
  return {
    boreAsPrinted: printed,
    depth,
    floor: floorUnder(joint, depth),
    bite: bite(insert, printed),
    biteFactor: biteFactor(insert, intended, expectedEntry(joint, bore)),
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
  const { intended, printed, drawn, meltVolume: volume, meltHeight: height } = bore;
  const bossDiameter = leastBossDiameter(insert);
  return {
    ...seated,
    intended,
    printError: printErrorIn(joint, drawn),
    drawn,
    meltVolume: volume,
    meltHeight: height,
    well: wellBelow(joint, insert, seated.depth),
    chamfer: mouthChamfer(),
    bossDiameter,
    wall: wallThickness(joint.host),
    wallLines: wallLines(bossDiameter, printed, joint.host),
    window: fitWindow(insert, intended, {
      expected: expectedEntry(joint, bore),
      standardDeviation: deviationEntry(joint, insert, drawn),
    }),
    ...(existing ? { existing } : {}),
  };
}

const expectedEntry = (joint: Joint, bore: Bore): Entry =>
  entryBy('D', bore.expected, 'mm', (steps) => steps.expectedBore(joint, bore));

function deviationEntry(joint: Joint, insert: InsertDimensions, drawn: Derived): Entry {
  const pilot = insert.pilotDiameter.standardUncertainty;
  const value = boreDeviationIn(joint, drawn.value, pilot.value);
  return entryBy('s', value, 'mm', (steps) =>
    steps.boreScatter(joint, { drawn: entryFrom(drawn), pilotUncertainty: entryFrom(pilot) }),
  );
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
