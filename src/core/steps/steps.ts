import { bondCentre, bondDeviation, bondFreedom } from '../evidence/bond-posterior-steps.ts';
import { diameterSolved } from '../holes/diameter-solved.ts';
import { lineSpacing } from '../holes/line-spacing.ts';
import { rememberedStrength } from '../host/remembered-strength-steps.ts';
import { readingScatter, rectangularSpread } from '../inserts/reading-steps.ts';
import { boreScatter, expectedBore } from '../joint/bore-steps.ts';
import { hostCompliance } from '../joint/host-compliance-steps.ts';
import { lidCompliance } from '../joint/lid-compliance-steps.ts';
import { screwCompliance } from '../joint/screw-compliance-steps.ts';
import { screwLengthWays } from '../joint/screw-length-ways.ts';
import { pullOnScrew, shearOnScrew } from '../loads/worst-screw.ts';
import { innerDiameter, ringRatio } from '../pull-out/boss-steps.ts';
import { characteristicQuantile, priorDeviation, widerDeviation } from '../pull-out/scatter-steps.ts';
import { creepFactorWay, mostCreep } from '../relaxation/creep-ways.ts';
import { faceOnSpacer, holeUnderWasher } from '../screws/bearing-face-steps.ts';
import { type Derived, type Entry, entry, StepEntry, type Steps } from '../sources/derived.ts';

declare module '../sources/derived.ts' {
  interface Steps {
    readonly readingScatter: typeof readingScatter;
    readonly rectangularSpread: typeof rectangularSpread;
    readonly lineSpacing: typeof lineSpacing;
    readonly screwLengthWays: typeof screwLengthWays;
    readonly pullOnScrew: typeof pullOnScrew;
    readonly shearOnScrew: typeof shearOnScrew;
    readonly diameterSolved: typeof diameterSolved;
    readonly expectedBore: typeof expectedBore;
    readonly boreScatter: typeof boreScatter;
    readonly screwCompliance: typeof screwCompliance;
    readonly hostCompliance: typeof hostCompliance;
    readonly lidCompliance: typeof lidCompliance;
    readonly creepFactorWay: typeof creepFactorWay;
    readonly mostCreep: typeof mostCreep;
    readonly rememberedStrength: typeof rememberedStrength;
    readonly bondCentre: typeof bondCentre;
    readonly bondDeviation: typeof bondDeviation;
    readonly bondFreedom: typeof bondFreedom;
    readonly characteristicQuantile: typeof characteristicQuantile;
    readonly priorDeviation: typeof priorDeviation;
    readonly widerDeviation: typeof widerDeviation;
    readonly ringRatio: typeof ringRatio;
    readonly innerDiameter: typeof innerDiameter;
    readonly faceOnSpacer: typeof faceOnSpacer;
    readonly holeUnderWasher: typeof holeUnderWasher;
  }
}

const STEPS: Steps = {
  readingScatter,
  rectangularSpread,
  diameterSolved,
  shearOnScrew,
  pullOnScrew,
  screwLengthWays,
  lineSpacing,
  expectedBore,
  boreScatter,
  screwCompliance,
  hostCompliance,
  lidCompliance,
  creepFactorWay,
  mostCreep,
  rememberedStrength,
  bondCentre,
  bondDeviation,
  bondFreedom,
  characteristicQuantile,
  priorDeviation,
  widerDeviation,
  ringRatio,
  innerDiameter,
  faceOnSpacer,
  holeUnderWasher,
};

/** The way to a value put into a formula, made now where only its maker was told; undefined for a given value. */
export const wayOf = (one: Entry): Derived | undefined =>
  one instanceof StepEntry ? one.made(STEPS) : one.from;

/** A number with all ways made that lead to it: what is sent to another thread keeps nothing that is made later. */
export const settled = (derived: Derived): Derived => ({
  ...derived,
  entries: derived.entries.map((one) => {
    const { symbol, value, unit } = one;
    const way = wayOf(one);
    return way === undefined ? entry(symbol, value, unit) : { symbol, value, unit, from: settled(way) };
  }),
});
