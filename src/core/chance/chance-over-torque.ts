import type { ChanceModel } from './chance-model.ts';
import { type Chance, chanceOf } from './chance-result.ts';
import { forEachJoint } from './draw-block.ts';
import type { Generator } from './generator.ts';
import { type JointBlock, roomForBlock } from './joint-block.ts';

/** Chances at one setting [N·mm]. */
export interface ChanceAtTorque {
  readonly torque: number;
  readonly harm: Chance;
  readonly loose: Chance;
  readonly anything: Chance;
}

/** Running counts over ascending torques. */
export interface TorqueCounters {
  samples: number;
  readonly torques: readonly number[];
  /** How many joints begin to be harmed, or end to be loose, at each torque; the last place is beyond all. */
  readonly harmedFrom: Uint32Array;
  readonly tightFrom: Uint32Array;
  /** Change of how many are harmed and loose together, from each torque on. */
  readonly bothChange: Int32Array;
  /** Joints drawn, and not all of them counted yet. */
  readonly block: JointBlock;
}

/** Counts at nothing yet, for torques [N·mm] in any order. */
export function emptyTorqueCounters(model: ChanceModel, torques: readonly number[]): TorqueCounters {
  const places = torques.length + 1;
  return {
    samples: 0,
    torques: [...torques].sort((one, other) => one - other),
    harmedFrom: new Uint32Array(places),
    tightFrom: new Uint32Array(places),
    bothChange: new Int32Array(places),
    block: roomForBlock(model),
  };
}

/** Place of the first torque at which a statement that stays true once it is true holds. */
function firstPlace(torques: readonly number[], holds: (torque: number) => boolean): number {
  let low = 0;
  let high = torques.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(torques[middle] ?? 0)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * Draws joints and counts at which torques each is harmed and at which it is loose.
 *
 * Every joint is tightened at every torque: the same random numbers serve the whole curve, so that it rises and falls
 * without steps of chance.
 *
 * @param model - joint and insert; its own torque plays no part
 * @param generator - moves on by the draws of all joints
 * @param count - joints to draw [-], ≥ 0
 * @param into - counts, added to
 * @source own-model a mode fails where the clamp force is above what it allows
 */
export function sampleOverTorque(
  model: ChanceModel,
  generator: Generator,
  count: number,
  into: TorqueCounters,
): void {
  forEachJoint(model, { generator, block: into.block }, count, (from, to) => countJoints(from, to, into));
  into.samples += count;
}

function countJoints(from: number, to: number, into: TorqueCounters): void {
  const { torques, harmedFrom, tightFrom, bothChange, block } = into;
  for (let place = from; place < to; place += 1) {
    const forcePerTorque = block.forcePerTorque[place] ?? 0;
    const weakest = block.weakest[place] ?? 0;
    const forceNeeded = block.forceNeeded[place] ?? 0;
    const harmed = firstPlace(torques, (torque) => torque * forcePerTorque > weakest);
    const tight = firstPlace(torques, (torque) => torque * forcePerTorque >= forceNeeded);
    harmedFrom[harmed] = (harmedFrom[harmed] ?? 0) + 1;
    tightFrom[tight] = (tightFrom[tight] ?? 0) + 1;
    if (harmed < tight) {
      bothChange[harmed] = (bothChange[harmed] ?? 0) + 1;
      bothChange[tight] = (bothChange[tight] ?? 0) - 1;
    }
  }
}

/** The counts as chances, torque by torque, ascending; at least one joint has been drawn. */
export function chancesOverTorque(counters: TorqueCounters): readonly ChanceAtTorque[] {
  const { samples, torques, harmedFrom, tightFrom, bothChange } = counters;
  let harmed = 0;
  let tight = 0;
  let both = 0;
  return torques.map((torque, place) => {
    harmed += harmedFrom[place] ?? 0;
    tight += tightFrom[place] ?? 0;
    both += bothChange[place] ?? 0;
    const loose = samples - tight;
    return {
      torque,
      harm: chanceOf(harmed, samples),
      loose: chanceOf(loose, samples),
      anything: chanceOf(harmed + loose - both, samples),
    };
  });
}

/**
 * Chance of harm and of a loose joint over the setting of the tool.
 *
 * @param model - joint and insert
 * @param torques - settings [N·mm], > 0, at least one, in any order
 * @param sampling - generator and number of joints [-], ≥ 1
 * @returns chances at each torque, ascending
 * @source own-model a mode fails where the clamp force is above what it allows
 */
export function chanceOverTorque(
  model: ChanceModel,
  torques: readonly number[],
  sampling: { readonly generator: Generator; readonly count: number },
): readonly ChanceAtTorque[] {
  const counters = emptyTorqueCounters(model, torques);
  sampleOverTorque(model, sampling.generator, sampling.count, counters);
  return chancesOverTorque(counters);
}
