import { bondCentre, bondDeviation, bondFreedom } from '../evidence/bond-posterior-steps.ts';
import { rememberedStrength } from '../host/remembered-strength-steps.ts';
import { hostCompliance } from '../joint/host-compliance-steps.ts';
import { lidCompliance } from '../joint/lid-compliance-steps.ts';
import { screwCompliance } from '../joint/screw-compliance-steps.ts';
import { innerDiameter, ringRatio } from '../pull-out/boss-steps.ts';
import { characteristicQuantile, priorDeviation, widerDeviation } from '../pull-out/scatter-steps.ts';
import { creepFactorWay, mostCreep } from '../relaxation/creep-ways.ts';
import { faceOnSpacer, holeUnderWasher } from '../screws/bearing-face-steps.ts';
import { type Derived, type Entry, entry, StepEntry, type Steps } from '../sources/derived.ts';

declare module '../sources/derived.ts' {
  interface Steps {
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
