import type { Insert } from '../inserts/insert.ts';
import { DRIVER_DEVIATION } from '../torque/tool-deviation.ts';
import type { Opening } from './assessment.ts';
import type { AnswerableJoint } from './stop.ts';
import { tighten } from './tightening.ts';

/** Wall lines and pull that are tried, [-]. */
const MORE_LINES = 3;
const LESS_PULL = 0.5;

/** One change to the joint, or undefined where it cannot be made. */
type Change = (joint: AnswerableJoint) => AnswerableJoint | undefined;

const CHANGES: readonly { readonly opening: Opening; readonly change: Change }[] = [
  {
    opening: 'seat-on-insert',
    change: (joint) =>
      joint.insertSide === 'near-side' ? { ...joint, gap: 0, sunk: 0, seatOverride: 'on-insert' } : undefined,
  },
  {
    opening: 'torque-driver',
    change: (joint) =>
      joint.tool.kind === 'hand'
        ? { ...joint, tool: { ...joint.tool, kind: 'torque-driver', deviation: DRIVER_DEVIATION } }
        : undefined,
  },
  {
    opening: 'finer-settings',
    change: (joint) =>
      joint.tool.settings.length > 0 ? { ...joint, tool: { ...joint.tool, settings: [] } } : undefined,
  },
  {
    opening: 'oiled-thread',
    change: (joint) => {
      const { friction } = joint.screw.alternatives;
      return friction && friction.id !== joint.screw.friction.id
        ? { ...joint, screw: { ...joint.screw, friction } }
        : undefined;
    },
  },
  {
    opening: 'washer',
    change: (joint) => {
      const { washer } = joint.screw.alternatives;
      return washer && !joint.screw.washer && joint.screw.head.shape !== 'countersunk'
        ? { ...joint, screw: { ...joint.screw, washer } }
        : undefined;
    },
  },
  {
    opening: 'stronger-screw',
    change: (joint) => {
      const { propertyClass } = joint.screw.alternatives;
      return propertyClass && propertyClass.yieldStrengthMin > joint.screw.propertyClass.yieldStrengthMin
        ? { ...joint, screw: { ...joint.screw, propertyClass } }
        : undefined;
    },
  },
  {
    opening: 'more-walls',
    change: (joint) => {
      const { wall } = joint.host;
      return wall.kind === 'lines'
        ? { ...joint, host: { ...joint.host, wall: { ...wall, count: wall.count + MORE_LINES } } }
        : undefined;
    },
  },
  {
    opening: 'solid-infill',
    change: (joint) => ({
      ...joint,
      host: { ...joint.host, infill: { ...joint.host.infill, density: 1 } },
    }),
  },
  {
    opening: 'less-pull',
    change: (joint) => ({
      ...joint,
      loads: { ...joint.loads, pull: LESS_PULL * joint.loads.pull, shear: LESS_PULL * joint.loads.shear },
    }),
  },
];

/**
 * Which single changes would open a closed torque window.
 *
 * Each is tried alone on the whole calculation: seat on the insert, a torque driver, settings between those of the
 * tool, an oiled thread, a washer, a stronger screw, three more wall lines, solid infill, half the loads.
 *
 * @param joint - a joint whose window is closed
 * @param insert - the insert it was closed for
 * @returns the changes that open it, the simplest first; empty where none alone does
 * @source own-model one change at a time
 */
export function openingsFor(joint: AnswerableJoint, insert: Insert): readonly Opening[] {
  return CHANGES.filter(({ change }) => {
    const changed = change(joint);
    return changed !== undefined && tighten(changed, insert).dial !== undefined;
  }).map(({ opening }) => opening);
}
