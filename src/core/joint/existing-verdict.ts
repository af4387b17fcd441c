import { depthNeeded, type HoleAndInsert, type HoleVerdict, holeVerdict } from '../holes/hole-verdict.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import type { Derived } from '../sources/derived.ts';
import type { Joint } from './joint.ts';
import type { Bore } from './joint-bore.ts';

/** Whether the hole that is there goes through the part. */
export const goesThrough = ({ host, holes }: Joint): boolean =>
  holes.existing?.depth !== undefined && holes.existing.depth >= host.thickness;

/** Depth that an insert needs in the hole that is there; see depthNeeded. */
export function neededIn(joint: Joint, length: Derived, meltHeight: Derived): Derived {
  const room = { sunk: joint.sunk, length };
  const meltGoesOn = joint.insertSide === 'far-side' || goesThrough(joint);
  return depthNeeded(meltGoesOn ? room : { ...room, meltHeight });
}

/** Why an insert cannot be set into the hole that is there as it is; lengths in mm. */
export type HopelessHole =
  | { readonly code: 'hole-without-bite'; readonly bore: number; readonly knurl: number }
  | { readonly code: 'hole-too-small'; readonly bore: number; readonly pilot: number }
  | { readonly code: 'hole-too-shallow'; readonly depth: number; readonly depthNeeded: number };

function sizesIn(joint: Joint, insert: InsertDimensions, hole: Bore): HoleAndInsert {
  const depth = joint.holes.existing?.depth;
  return {
    pilot: insert.pilotDiameter.estimate.value,
    knurl: insert.knurlDiameter.estimate.value,
    intended: hole.intended.value,
    bore: hole.printed.value,
    depthNeeded: neededIn(joint, insert.length.estimate, hole.meltHeight).value,
    ...(depth === undefined ? {} : { depth }),
  };
}

/** What the joint's hole is to an insert; a hole that is designed fits. */
export const verdictIn = (joint: Joint, insert: InsertDimensions, hole: Bore): HoleVerdict =>
  joint.holes.existing ? holeVerdict(sizesIn(joint, insert, hole)) : 'fits';

/**
 * Why nothing is set into the hole that is there as it is, or undefined.
 *
 * @param joint - with or without a hole that is there
 * @param insert - dimensions [mm]
 * @param hole - what boreOf gave for them
 * @returns the code with the two sizes [mm] that exclude each other; undefined where the insert can be set
 * @source own-model see holeVerdict
 */
export function hopelessHole(joint: Joint, insert: InsertDimensions, hole: Bore): HopelessHole | undefined {
  if (!joint.holes.existing) return undefined;
  const sizes = sizesIn(joint, insert, hole);
  const { pilot, knurl, bore, depthNeeded: needed, depth = needed } = sizes;
  switch (holeVerdict(sizes)) {
    case 'no-bite':
      return { code: 'hole-without-bite', bore, knurl };
    case 'too-small':
      return { code: 'hole-too-small', bore, pilot };
    case 'too-shallow':
      return { code: 'hole-too-shallow', depth, depthNeeded: needed };
    case 'loose':
    case 'tight':
    case 'fits':
      return undefined;
  }
}
