import { type ExistingHole, givenDepth } from '../holes/existing-hole.ts';
import { meltVolume } from '../holes/hole-depth.ts';
import { type HoleVerdict, holeVerdict } from '../holes/hole-verdict.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import type { JointAssessment } from './assessment.ts';
import { goesThrough, neededIn } from './existing-verdict.ts';
import type { Joint } from './joint.ts';

/** What a hole that is there is to one insert. */
export interface ExistingFinding {
  readonly verdict: HoleVerdict;
  readonly existing: ExistingHole;
  /** Bore that is there, and the one that the insert wants. */
  readonly bore: Derived;
  readonly wanted: Derived;
  /** Where the bore would have to lie, ascending: pilot melts in, pilot drops in, knurl bites enough, knurl touches. */
  readonly limits: {
    readonly smallest: Derived;
    readonly pilot: Derived;
    readonly largest: Derived;
    readonly knurl: Derived;
  };
  readonly bite: Derived;
  /** Share of the hold that the bite leaves. */
  readonly biteFactor: Derived;
  /** Chance that the hole fits as it is known. */
  readonly chance: Derived;
  readonly meltVolume: Derived;
  /** Melt in a bore as the insert wants it. */
  readonly meltVolumeWanted: Derived;
  readonly meltHeight: Derived;
  readonly depthNeeded: Derived;
  /** Depth that is there, and what it leaves below the insert; absent where it is not known. */
  readonly given?: { readonly depth: Derived; readonly well: Derived; readonly goesThrough: boolean };
  /** What the insert holds in this hole: 19 of 20 do. */
  readonly holds: Derived;
}

/**
 * What the hole that is there is to the insert of an assessment.
 *
 * @param joint - with or without a hole that is there
 * @param assessment - of this joint
 * @returns verdict with its limits, bite, melt and depth; undefined where the hole is designed
 * @source own-model see holeVerdict
 */
export function existingFinding(joint: Joint, assessment: JointAssessment): ExistingFinding | undefined {
  const { existing } = joint.holes;
  if (!existing) return undefined;
  const { dimensions, hole, holds } = assessment;
  const [pilot, knurl] = [dimensions.pilotDiameter.estimate, dimensions.knurlDiameter.estimate];
  const needed = neededIn(joint, dimensions.length.estimate, hole.meltHeight);
  const verdict = holeVerdict({
    pilot: pilot.value,
    knurl: knurl.value,
    intended: hole.intended.value,
    bore: hole.boreAsPrinted.value,
    depthNeeded: needed.value,
    ...(existing.depth === undefined ? {} : { depth: existing.depth }),
  });
  return {
    verdict,
    existing,
    bore: hole.boreAsPrinted,
    wanted: hole.intended,
    limits: { smallest: hole.window.smallest, pilot, largest: hole.window.largest, knurl },
    bite: hole.bite,
    biteFactor: hole.biteFactor,
    chance: hole.window.chance,
    meltVolume: hole.meltVolume,
    meltVolumeWanted: meltVolume(dimensions, asBore(hole.intended)),
    meltHeight: hole.meltHeight,
    depthNeeded: needed,
    ...(existing.depth === undefined
      ? {}
      : { given: { depth: givenDepth(existing.depth), well: hole.well, goesThrough: goesThrough(joint) } }),
    holds: holds.characteristic,
  };
}

/** The wanted bore put in as the bore that melt is reckoned with. */
const asBore = (wanted: Derived): Derived => ({
  ...wanted,
  symbol: 'D_t',
  formula: wanted.symbol,
  entries: [entryFrom(wanted)],
});
