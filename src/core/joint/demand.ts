import type { Situation } from '../pull-out/situation.ts';
import { frictionDiameter } from '../screws/head-bearing.ts';
import type { FrictionRange } from '../screws/screw.ts';
import type { Derived } from '../sources/derived.ts';
import {
  headTorquePerForce,
  threadShareOfTorque,
  threadTorquePerForce,
  torqueForEachNewton,
} from '../torque/tightening-torque.ts';
import type { Joint } from './joint.ts';

/** How the torque on the screw turns into clamp force and into torque on the insert, at the ends of friction. */
export interface TorqueToForce {
  /** N·mm per N at the low end of friction: the most force for a torque. */
  readonly slippery: number;
  /** N·mm per N at the high end: the least force for a torque. */
  readonly sticky: number;
  /** Largest share of the torque that reaches the insert: thread sticky, head slippery, [-]. */
  readonly threadShare: number;
  readonly threadFriction: FrictionRange;
  readonly headFriction: FrictionRange;
  readonly bearingDiameter: number;
  /** The first three with their ways. */
  readonly ways: {
    readonly slippery: Derived;
    readonly sticky: Derived;
    readonly threadShare: Derived;
  };
}

/**
 * Torque per clamp force at both ends of friction, and the thread's largest share.
 *
 * @param joint - screw with its friction condition, clamped part
 * @param situation - face under the head [mm]
 * @returns torque per force [mm] and the share [-]
 * @source vdi-2230 tightening torque
 */
export function torqueToForce(
  joint: Joint,
  situation: Pick<Situation, 'bearingFace' | 'clamped'>,
): TorqueToForce {
  const { friction, thread, washer } = joint.screw;
  const metal = washer !== undefined || situation.clamped.contact.kind === 'metal';
  const headFriction = metal ? friction.headOnMetal : friction.headOnPlastic;
  const bearing = frictionDiameter(situation.bearingFace);
  const bearingDiameter = bearing.value;
  const face = { thread, bearingDiameter, bearing };
  const inThread = (coefficient: number) => threadTorquePerForce(thread, coefficient);
  const underHead = (coefficient: number) => headTorquePerForce(bearingDiameter, coefficient);
  const { low, high } = friction.thread;
  return {
    slippery: inThread(low) + underHead(headFriction.low),
    sticky: inThread(high) + underHead(headFriction.high),
    threadShare: inThread(high) / (inThread(high) + underHead(headFriction.low)),
    threadFriction: friction.thread,
    headFriction,
    bearingDiameter,
    ways: {
      slippery: torqueForEachNewton('k_low', {
        ...face,
        threadFriction: low,
        headFriction: headFriction.low,
      }),
      sticky: torqueForEachNewton('k_high', {
        ...face,
        threadFriction: high,
        headFriction: headFriction.high,
      }),
      threadShare: threadShareOfTorque({ ...face, threadFriction: high, headFriction: headFriction.low }),
    },
  };
}

/**
 * Friction between clamped part and what it bears on, low end: what keeps the joint from slipping, [-].
 *
 * @param joint - friction condition of the screw; metal faces take its low end under the head
 * @param situation - seat
 * @returns μ [-]
 * @source friction-judgement ranges
 */
export function slipFriction(joint: Joint, situation: Situation): number {
  const metalOnBrass = situation.seat === 'on-insert' && situation.clamped.contact.kind === 'metal';
  return metalOnBrass ? joint.screw.friction.headOnMetal.low : joint.screw.friction.headOnPlastic.low;
}
