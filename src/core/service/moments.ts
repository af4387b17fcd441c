import { REFERENCE_TEMPERATURE } from '../host/temperature.ts';
import type { Insert } from '../inserts/insert.ts';
import type { CreepingLoop, JointCreep } from '../joint/clamp-loop.ts';
import type { TorqueToForce } from '../joint/demand.ts';
import { preloadLeftAt, preloadOnCreptHost } from '../joint/preload-left.ts';
import { situationOf } from '../joint/situation-of.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { frameOf, tighten } from '../joint/tightening.ts';
import type { ActiveMode } from '../joint/torque-window.ts';
import type { Situation } from '../pull-out/situation.ts';
import type { Derived } from '../sources/derived.ts';
import { type PullShares, pullShares } from './load-factor.ts';
import type { StateId } from './service-state.ts';

/** The joint as it is at a time, with all that is known about it then. */
export interface Moment {
  readonly id: StateId;
  /** Its loads are those of the time. */
  readonly joint: AnswerableJoint;
  readonly situation: Situation;
  readonly creep: JointCreep;
  readonly actives: readonly ActiveMode[];
  readonly conversion: TorqueToForce;
  /** Smallest share of the preload up to this time: what keeps the joint closed, [-]. */
  readonly leastLeft: Derived;
  /** Share of the preload at this time: what loads the modes of a host that has crept, [-]. */
  readonly left: Derived;
  /** Share of the pull that the screw feels, [-]. */
  readonly shares: PullShares;
}

/**
 * The three times at which a joint is asked, in the order in which they come: tightened at room temperature and not
 * yet loaded; warm and loaded at once; after the time under load.
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @returns assembly, in service, after
 * @source own-model the joint through its life
 */
export function momentsOf(joint: AnswerableJoint, insert: Insert): readonly Moment[] {
  const { loads } = joint;
  const unloaded = { ...loads, pull: 0, shear: 0, serviceTemperature: REFERENCE_TEMPERATURE, duration: 0 };
  const { loop, ...after } = momentOf('after', joint, insert);
  const whole = preloadLeftAt(loop, loads, 0);
  return [
    momentOf('assembly', { ...joint, loads: unloaded }, insert),
    {
      ...after,
      id: 'in-service',
      joint: { ...joint, loads: { ...loads, duration: 0 } },
      leastLeft: whole,
      left: whole,
    },
    after,
  ];
}

function momentOf(
  id: StateId,
  joint: AnswerableJoint,
  insert: Insert,
): Moment & { readonly loop: CreepingLoop } {
  const frame = frameOf(joint);
  const { found, actives, conversion, left, grip, loop, life } = tighten(joint, insert, frame);
  const situation = situationOf(frame.surroundings, found);
  return {
    id,
    joint,
    situation,
    creep: frame.creep,
    actives,
    conversion,
    leastLeft: left.from,
    left: preloadOnCreptHost(loop, life),
    shares: pullShares(joint, situation, grip),
    loop,
  };
}
