import type { End } from '../host/little-known.ts';
import { creepOf } from '../joint/clamp-loop.ts';
import { preloadLeftAt } from '../joint/preload-left.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Tightening } from '../joint/tightening.ts';
import { creepFactorOf } from '../relaxation/findley.ts';
import type { Derived } from '../sources/derived.ts';
import { type Growth, growthBetween } from './scatter.ts';

/** What creep takes of a joint in the time under load. */
export interface CreepScatter {
  /** What the clamp force has lost over what is left of it, (1 − R)/R: where the least is left, and at the end. */
  readonly lost: Growth;
  readonly lostAtEnd: Growth;
  /** What the compliance of the printed part has grown by at the end, c − 1. */
  readonly crept: Growth;
}

/**
 * What creep takes of a joint, between the ends of what is known of it.
 *
 *     g = (1 − R)/R of the clamp force, c − 1 of the printed part's compliance
 *
 * @param joint - a joint that may be answered
 * @param tightening - with what is left of the clamp force
 * @returns growths [-], lognormal through both ends
 * @source own-model range of a little known share
 */
export function creepScatter(joint: AnswerableJoint, { left, loop }: Tightening): CreepScatter {
  const { duration } = joint.loads;
  const { host } = creepOf(joint);
  const grownAt = (end: End) => creepFactorOf(host[end], duration) - 1;
  return {
    lost: lossOf(left.from),
    lostAtEnd: lossOf(preloadLeftAt(loop, joint.loads, duration)),
    crept: growthBetween({ low: grownAt('high'), high: grownAt('low') }),
  };
}

/** What is lost over what is left of the clamp force: the least at the high end of what is left. */
function lossOf({ value, range = { low: value, high: value } }: Derived): Growth {
  return growthBetween({ low: 1 / range.high - 1, high: 1 / range.low - 1 });
}
