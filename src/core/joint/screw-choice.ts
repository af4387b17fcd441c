import { TIP_CLEARANCE } from '../holes/hole-depth.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import { type Derived, entry, entryBy, entryFrom } from '../sources/derived.ts';
import type { ScrewChoice } from './assessment.ts';
import type { Joint } from './joint.ts';

/** Incomplete thread at the screw's tip that carries nothing, in pitches (VDI 2230, from memory). */
const RUN_OUT_PITCHES = 0.8;
/** Least length of screw in the insert, in thread diameters, unless the insert itself is shorter. */
const LEAST_OVERLAP_DIAMETERS = 1;
/** Engagement that asks for no longer screw, in thread diameters (NASA/TM-2017-219475, secondary). */
const ENOUGH_ENGAGEMENT_DIAMETERS = 1.5;
/** The same for a short insert, as a share of its length. */
const ENOUGH_INSERT_SHARE = 0.9;
/** How far a screw may stand out behind a far-side insert, in thread diameters. */
const STAND_OUT_DIAMETERS = 2;
/** Least printed floor under a hole, mm; below it the hole breaks through. */
export const LEAST_FLOOR = 1;

/**
 * Distance from under the head to the insert's thread.
 *
 *     g = washer + clamped part + gap + sunk                      near side
 *     g = washer + clamped part + gap + printed part − L − sunk   far side
 *
 * A countersunk head is let in: its length counts from the top face, and no washer lies under it.
 *
 * @param joint - thicknesses [mm], side of the insert
 * @param insert - length L [mm]
 * @returns g [mm]
 * @source own-model stack of parts
 * @example lid 3 mm on a flush insert gives 3 mm
 */
export function gripLength(joint: Joint, insert: InsertDimensions): Derived {
  const thickness = joint.screw.washer?.thickness ?? 0;
  const length = insert.length.estimate;
  const farSide = joint.insertSide === 'far-side';
  const behind = farSide ? joint.host.thickness - length.value - joint.sunk : joint.sunk;
  const washer = entry('washer', thickness, 'mm');
  const lid = entry('lid', joint.clamped.thickness, 'mm');
  const gap = entry('gap', joint.gap, 'mm');
  const sunk = entry('sunk', joint.sunk, 'mm');
  return {
    symbol: 'g',
    value: thickness + joint.clamped.thickness + joint.gap + behind,
    unit: 'mm',
    formula: farSide ? 'washer + lid + gap + part − L − sunk' : 'washer + lid + gap + sunk',
    entries: farSide
      ? [washer, lid, gap, entry('part', joint.host.thickness, 'mm'), entryFrom(length), sunk]
      : [washer, lid, gap, sunk],
    source: 'your-measurement',
    standing: 'measured',
  };
}

/**
 * Screw length for a joint: the shortest standard one that engages min(1.5 d, 0.9 L) without bottoming; where none
 * does, the one that engages most. A length that a person has fixed is checked in the same way.
 *
 *     least = g + min(d, L)        greatest = g + L + room below − melt − 0.5 mm
 *
 * Behind a far-side insert, and in a hole that goes through, the screw may stand out by 2 d.
 *
 * @param joint - grip, standard lengths [mm], printed part [mm]
 * @param insert - length L [mm]
 * @param meltHeight - height that the displaced plastic fills m [mm]
 * @returns the length with grip, engagement and overrun [mm]; or a refusal too-short or bottoms with both ends
 * @source vdi-2230 run-out of 0.8 P
 * @source iso-888 standard lengths
 */
export function chooseScrew(joint: Joint, insert: InsertDimensions, meltHeight: Derived): ScrewChoice {
  const { screw } = joint;
  const grip = gripLength(joint, insert);
  const length = insert.length.estimate;
  const { least, most } = screwLengths(joint, {
    grip: grip.value,
    length: length.value,
    meltHeight: meltHeight.value,
  });
  const available = screw.fixedLength === undefined ? screw.standardLengths : [screw.fixedLength];
  const carried = (one: number) => engagedLength(one, grip.value, length.value, screw.thread.pitch);
  const enough = Math.min(
    ENOUGH_ENGAGEMENT_DIAMETERS * screw.thread.nominalDiameter,
    ENOUGH_INSERT_SHARE * length.value,
  );
  let best: number | undefined;
  for (const one of available) {
    if (one < least || one > most) continue;
    if (best === undefined || (carried(best) < enough && carried(one) > carried(best))) best = one;
  }
  if (best === undefined) {
    const longest = Math.max(...available);
    return {
      kind: 'refused',
      code: longest < least ? 'too-short' : 'bottoms',
      grip,
      leastLength: least,
      greatestLength: most,
      available,
    };
  }
  const chosen: Derived =
    screw.fixedLength === undefined
      ? {
          symbol: 'l',
          value: best,
          unit: 'mm',
          formula: 'shortest standard length from l_least to l_most that engages enough',
          entries: [
            entryBy(
              'l_least',
              least,
              'mm',
              (steps) => steps.screwLengthWays(joint, insert, meltHeight).least,
            ),
            entryBy(
              'l_most',
              most,
              'mm',
              (steps) => steps.screwLengthWays(joint, insert, meltHeight).greatest,
            ),
          ],
          source: 'iso-888',
          standing: 'common-practice',
        }
      : givenLength(screw.fixedLength);
  return {
    kind: 'chosen',
    length: chosen,
    grip,
    engagement: engagement(chosen, grip, length, screw.thread.pitch),
    overrun: {
      symbol: 'l_o',
      value: best - grip.value - length.value,
      unit: 'mm',
      formula: 'l − g − L',
      entries: [entryFrom(chosen), entryFrom(grip), entryFrom(length)],
      source: 'your-measurement',
      standing: 'measured',
    },
    choice: screw.fixedLength === undefined ? 'standard' : 'fixed',
  };
}

const givenLength = (length: number): Derived => ({
  symbol: 'l',
  value: length,
  unit: 'mm',
  formula: 'l',
  entries: [entry('l', length, 'mm')],
  source: 'your-measurement',
  standing: 'measured',
});

/** Between what lengths a screw must lie, mm; see chooseScrew. */
export function screwLengths(
  joint: Joint,
  { grip, length, meltHeight }: Readonly<Record<'grip' | 'length' | 'meltHeight', number>>,
): { readonly least: number; readonly most: number } {
  const { nominalDiameter: d } = joint.screw.thread;
  const greatest = isOpenBehind(joint)
    ? grip + length + STAND_OUT_DIAMETERS * d
    : grip - joint.sunk + deepestHole(joint) - meltHeight - TIP_CLEARANCE;
  return {
    least: grip + Math.min(LEAST_OVERLAP_DIAMETERS * d, length),
    most: Math.max(greatest, grip + length),
  };
}

/** Whether the screw may stand out behind the insert: set from behind, or into a hole that goes through. */
export const isOpenBehind = ({ insertSide, holes, host }: Joint): boolean =>
  insertSide === 'far-side' ||
  (holes.existing?.depth !== undefined && holes.existing.depth >= host.thickness);

/** The depth of the hole that is there, or the deepest that leaves a floor, mm. */
const deepestHole = ({ holes, host }: Joint): number => holes.existing?.depth ?? host.thickness - LEAST_FLOOR;

const engagedLength = (screwLength: number, grip: number, insertLength: number, pitch: number): number =>
  Math.min(screwLength - grip - RUN_OUT_PITCHES * pitch, insertLength);

/**
 * Length of thread that carries.
 *
 *     LE = min(l − g − 0.8·P, L)
 *
 * @param screwLength - l [mm]
 * @param grip - g [mm]
 * @param insertLength - L [mm]
 * @param pitch - P [mm]
 * @returns LE [mm], above 0 for every screw that chooseScrew takes
 * @source vdi-2230 run-out of 0.8 P
 * @example M3 × 8 through 3 mm into an insert of 5 mm carries 4.6 mm
 */
export function engagement(
  screwLength: Derived,
  grip: Derived,
  insertLength: Derived,
  pitch: number,
): Derived {
  return {
    symbol: 'L_E',
    value: engagedLength(screwLength.value, grip.value, insertLength.value, pitch),
    unit: 'mm',
    formula: 'min(l − g − 0.8 · P, L)',
    entries: [entryFrom(screwLength), entryFrom(grip), entry('P', pitch, 'mm'), entryFrom(insertLength)],
    source: 'vdi-2230',
    standing: 'published',
  };
}
