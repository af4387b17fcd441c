import type { End } from '../host/little-known.ts';
import type { Insert } from '../inserts/insert.ts';
import { slipFriction as lowSlipFriction } from '../joint/demand.ts';
import { jointAt } from '../joint/joint-at.ts';
import { boreDeviationIn } from '../joint/joint-bore.ts';
import { situationOf, surroundingsOf } from '../joint/situation-of.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { type Tightening, tighten } from '../joint/tightening.ts';
import type { Situation } from '../pull-out/situation.ts';
import type { FrictionRange } from '../screws/screw.ts';
import { headTorquePerForce, threadTorquePerForce } from '../torque/tightening-torque.ts';
import { torsionFactor } from '../torque/yield-preload.ts';
import { type CreepScatter, creepScatter } from './creep-scatter.ts';
import { type DrawnFrom, drawnFrom } from './drawn-from.ts';
import { knurlFreedomOf, type SampledMode, sampledModes } from './sampled-modes.ts';
import { frictionScatter, type Lognormal, toolScatter } from './scatter.ts';

/** Everything that the sampling needs of a joint, worked out once: plain numbers, mm, N, N·mm. */
export interface ChanceModel extends CreepScatter {
  /** Setting of the tool. */
  readonly torque: number;
  /** Standard deviation of the tool, relative, [-]. */
  readonly toolDeviation: number;
  readonly threadFriction: Lognormal;
  readonly headFriction: Lognormal;
  /** Between the faces that must not slip. */
  readonly slipFriction: Lognormal;
  /** Torque per force in the thread without friction, and what each friction adds at 1. */
  readonly pitchTorque: number;
  readonly threadTorque: number;
  readonly headTorque: number;
  readonly pull: number;
  readonly shear: number;
  /** Bore to be expected, its standard deviation, and the bore that the full bite asks for. */
  readonly expectedBore: number;
  readonly boreDeviation: number;
  readonly intendedBore: number;
  readonly knurlDiameter: number;
  readonly knurlDeviation: number;
  /** √(σred²/σ² − 1) of the tightened screw is a straight line over thread friction: at 0, and per 1 of friction. */
  readonly torsionAtNone: number;
  readonly torsionPerFriction: number;
  /** σred/σ that the capacity of the screw was worked out with. */
  readonly torsionTaken: number;
  /** Degrees of freedom of the knurl's scatter. */
  readonly knurlFreedom: number;
  readonly modes: readonly SampledMode[];
  /** The ranges of all this, for whoever reads the result; no joint is drawn from it. */
  readonly drawnFrom: DrawnFrom;
}

/**
 * Joint, insert and setting as the sampling takes them.
 *
 * Medians and characteristic values are those of the failure modes; here they only get their scatter:
 * - friction in the thread, under the head and between the faces: lognormal through both ends of its range, each for
 *   itself;
 * - tool: normal, its deviation ±δ holding 95 of 100;
 * - knurl: one scatter for shear and turning, times the bite that a normally scattered bore leaves;
 * - printed host, printed clamped part: one scatter each between set-ups, a smaller one of each mode within;
 * - knurl diameter, wall: normal, by the slope of each capacity;
 * - creep: one doubt about the plastics for all of a joint, lognormal through the ends of what is lost to it: it loosens
 *   the joint, and wears down what a lasting force loads; the warmth's doubt lies in the deviation of each capacity;
 * - screw: minimum values, so none; its yield follows the sampled friction of the thread.
 * No factor of safety is in it: it asks what happens, not what is allowed.
 *
 * @param joint - a joint that may be answered
 * @param insert - an insert with the screw's thread
 * @param torque - setting of the tool [N·mm], > 0
 * @returns the model
 * @source own-model what scatters and how
 */
export function chanceModel(joint: AnswerableJoint, insert: Insert, torque: number): ChanceModel {
  const tightening = tighten(joint, insert);
  const { conversion } = tightening;
  const situation = situationAt('middle', joint, tightening);
  const { knurlDiameter } = situation.insert;
  const { thread } = joint.screw;
  const slipFriction = slipFrictionRange(joint, situation);
  const creep = creepScatter(joint, tightening);
  const torsionPart = (friction: number) => Math.sqrt(torsionFactor(thread, friction) ** 2 - 1);
  return {
    torque,
    toolDeviation: toolScatter(joint.tool.deviation),
    threadFriction: frictionScatter(conversion.threadFriction),
    headFriction: frictionScatter(conversion.headFriction),
    slipFriction: frictionScatter(slipFriction),
    pitchTorque: threadTorquePerForce(thread, 0),
    threadTorque: threadTorquePerForce(thread, 1) - threadTorquePerForce(thread, 0),
    headTorque: headTorquePerForce(conversion.bearingDiameter, 1),
    pull: joint.loads.pull,
    shear: joint.loads.shear,
    ...creep,
    ...boreScatter(joint, tightening),
    knurlDiameter: knurlDiameter.estimate.value,
    knurlDeviation: knurlDiameter.standardUncertainty.value,
    torsionAtNone: torsionPart(0),
    torsionPerFriction: torsionPart(1) - torsionPart(0),
    torsionTaken: torsionFactor(thread, conversion.threadFriction.low),
    knurlFreedom: knurlFreedomOf(situation),
    modes: sampledModes(joint, { expected: situation, careful: situationAt('low', joint, tightening) }),
    drawnFrom: drawnFrom({ joint, tightening, slipFriction, lost: creep.lost }),
  };
}

/** What the failure modes are asked with, where warmth and creep are taken within what is known of them. */
const situationAt = (end: End, joint: AnswerableJoint, { found }: Tightening): Situation =>
  atIntendedBite(situationOf(surroundingsOf(jointAt(joint, end)), found));

/** Both ends of the friction whose low end the torque window takes. */
function slipFrictionRange(joint: AnswerableJoint, situation: Situation): FrictionRange {
  const { friction } = joint.screw;
  const highOf = ({ high }: FrictionRange): FrictionRange => ({ low: high, high });
  const sticky = {
    ...friction,
    headOnMetal: highOf(friction.headOnMetal),
    headOnPlastic: highOf(friction.headOnPlastic),
  };
  return {
    low: lowSlipFriction(joint, situation),
    high: lowSlipFriction({ ...joint, screw: { ...joint.screw, friction: sticky } }, situation),
  };
}

/** The pilot's uncertainty is not in the printed bore: what was drawn is drawn. The knurl's comes in by itself. */
function boreScatter(
  joint: AnswerableJoint,
  { bore }: Tightening,
): Pick<ChanceModel, 'expectedBore' | 'boreDeviation' | 'intendedBore'> {
  return {
    expectedBore: bore.expected,
    boreDeviation: boreDeviationIn(joint, bore.drawn.value, 0),
    intendedBore: bore.intended.value,
  };
}

const atIntendedBite = (situation: Situation): Situation => ({
  ...situation,
  biteFactor: { ...situation.biteFactor, value: 1 },
});
