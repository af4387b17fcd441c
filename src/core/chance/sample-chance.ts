import type { FailureMode } from '../pull-out/limit.ts';
import type { ChanceModel } from './chance-model.ts';
import { forEachJoint } from './draw-block.ts';
import { countForce, emptyBins, type ForceBins } from './force-bins.ts';
import type { Generator } from './generator.ts';
import { type JointBlock, roomForBlock } from './joint-block.ts';

/** What can become of a joint when it is tightened; several can be true of one joint. */
export const OUTCOMES = ['pulls-out', 'turns', 'strips', 'screw-yields', 'crushes', 'loose'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** What comes of a mode that fails. */
export const HARM_OF: Readonly<Record<FailureMode, Exclude<Outcome, 'loose'>>> = {
  'knurl-shear': 'pulls-out',
  'wall-plug': 'pulls-out',
  'boss-tear': 'pulls-out',
  'boss-split': 'pulls-out',
  'shoulder-yield': 'pulls-out',
  'shoulder-punch': 'pulls-out',
  'torque-out': 'turns',
  'insert-thread': 'strips',
  'screw-thread': 'strips',
  'screw-yield': 'screw-yields',
  'head-bearing': 'crushes',
  'seat-bearing': 'crushes',
};

export const bitOf = (outcome: Outcome): number => 1 << OUTCOMES.indexOf(outcome);
const LOOSE_BIT = bitOf('loose');
export const EVERY_BIT = (1 << OUTCOMES.length) - 1;

/** Deviations to which the range of the histogram reaches. */
const REACH = 3;
/** How far the range follows the capacity: to twice its median, but not beyond three times the force. */
const CAPACITY_IN_RANGE = 2;
const MOST_OF_FORCE = 3;

/** Running counts of a sampling. */
export interface Counters {
  samples: number;
  /** Joints by the set of their outcomes, one bit each. */
  readonly byOutcomes: Uint32Array;
  readonly byMode: Uint32Array;
  readonly clampForce: ForceBins;
  readonly weakestPlastic: ForceBins;
  /** Joints drawn, and not all of them counted yet. */
  readonly block: JointBlock;
  readonly bitOfMode: Uint8Array;
}

/** Force that a chart of the model reaches to: all but the rarest clamp forces, and the capacity if it lies near. */
function topOf(model: ChanceModel): number {
  const { threadFriction, headFriction } = model;
  const slippery = ({ centre, deviation }: typeof threadFriction) => Math.exp(centre - REACH * deviation);
  const inThread = (friction: number) => model.pitchTorque + model.threadTorque * friction;
  const perForce = inThread(slippery(threadFriction)) + model.headTorque * slippery(headFriction);
  const force = (model.torque * (1 + REACH * model.toolDeviation)) / perForce;
  const usual = inThread(Math.exp(threadFriction.centre));
  const capacities = model.modes
    .filter(({ scatter }) => scatter !== 'metal')
    .map(({ path, median, isWorn }) => {
      if (path === 'torque') return median / usual;
      if (!isWorn) return median - model.pull;
      return (median / (1 + model.crept.median) - model.pull) * (1 + model.lostAtEnd.median);
    });
  return Math.min(MOST_OF_FORCE * force, Math.max(force, CAPACITY_IN_RANGE * Math.min(...capacities)));
}

/** Counts at nothing yet. */
export function emptyCounters(model: ChanceModel): Counters {
  const top = topOf(model);
  return {
    samples: 0,
    byOutcomes: new Uint32Array(EVERY_BIT + 1),
    byMode: new Uint32Array(model.modes.length),
    clampForce: emptyBins(top),
    weakestPlastic: emptyBins(top),
    block: roomForBlock(model),
    bitOfMode: Uint8Array.from(model.modes, ({ mode }) => bitOf(HARM_OF[mode])),
  };
}

/**
 * Draws joints, tightens them at the model's torque and counts what became of them.
 *
 * @param model - joint, insert and torque
 * @param generator - moves on by the draws of all joints
 * @param count - joints to draw [-], ≥ 0
 * @param into - counts, added to
 * @source own-model a mode fails where the clamp force is above what it allows
 */
export function sampleChance(model: ChanceModel, generator: Generator, count: number, into: Counters): void {
  forEachJoint(model, { generator, block: into.block }, count, (from, to) =>
    countJoints(model.torque, from, to, into),
  );
  into.samples += count;
}

function countJoints(torque: number, from: number, to: number, into: Counters): void {
  const { block, byOutcomes, clampForce, weakestPlastic } = into;
  for (let place = from; place < to; place += 1) {
    const force = torque * (block.forcePerTorque[place] ?? 0);
    const loose = force < (block.forceNeeded[place] ?? 0) ? LOOSE_BIT : 0;
    const outcomes = force > (block.weakest[place] ?? 0) ? loose | countHarm(force, place, into) : loose;
    byOutcomes[outcomes] = (byOutcomes[outcomes] ?? 0) + 1;
    countForce(clampForce, force);
    countForce(weakestPlastic, block.weakestPlastic[place] ?? 0);
  }
}

/** Counts the modes in which a joint fails; their outcomes as bits. */
function countHarm(force: number, place: number, { block, byMode, bitOfMode }: Counters): number {
  let outcomes = 0;
  for (let mode = 0; mode < bitOfMode.length; mode += 1) {
    if (force <= (block.allowed[mode]?.[place] ?? 0)) continue;
    outcomes |= bitOfMode[mode] ?? 0;
    byMode[mode] = (byMode[mode] ?? 0) + 1;
  }
  return outcomes;
}
