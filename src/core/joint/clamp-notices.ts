import type { NoticeCode } from './assessment.ts';
import type { NoticeRule } from './notice-rule.ts';

/** Less than this the time under load takes nothing worth saying off the most torque, [-]. */
const TIME_TAKES = 0.01;

/** What to know about seat, screw, tool and loads. */
export const CLAMP_NOTICES = {
  'seat-overruled': ({ found: { seat } }) =>
    seat.reason === 'overruled' ? { chosen: seat.kind, geometry: seat.fromGeometry } : undefined,
  'printed-part-on-insert-ring': ({ joint, found }) =>
    joint.clamped.material.kind === 'printed' && !joint.clamped.sleeve && found.seat.kind === 'on-insert'
      ? { material: joint.clamped.material.name }
      : undefined,
  'countersunk-wedges-printed-part': ({ joint }) =>
    joint.screw.head.shape === 'countersunk' &&
    joint.clamped.material.kind === 'printed' &&
    !joint.clamped.sleeve
      ? { material: joint.clamped.material.name }
      : undefined,
  'dial-above-breaking-torque': ({ joint, found }) => {
    const { breakingTorque } = joint.screw;
    return found.torque.kind === 'window' && breakingTorque && found.torque.dial.value > breakingTorque.torque
      ? { dial: found.torque.dial, breaking: breakingTorque.torque }
      : undefined;
  },
  'most-torque-by-time': ({ joint, found: { torque } }) =>
    torque.mostAtOnce.value > torque.most.value * (1 + TIME_TAKES)
      ? { atOnce: torque.mostAtOnce, most: torque.most, hours: joint.loads.duration }
      : undefined,
  'tightened-by-hand': ({ joint }) =>
    joint.tool.kind === 'hand' ? { percent: 100 * joint.tool.deviation } : undefined,
  'no-load-given': ({ joint: { loads } }) =>
    loads.pull === 0 && loads.shear === 0 ? { pull: loads.pull } : undefined,
  vibration: ({ joint }) => (joint.vibration === 'present' ? { locking: joint.threadLocking } : undefined),
  'breaking-torque-unknown': ({ joint: { screw } }) =>
    screw.breakingTorque ? undefined : { propertyClass: screw.propertyClass.designation },
  'setting-above-breaking-torque': ({ joint: { screw, tool } }) => {
    const beyond = screw.breakingTorque
      ? tool.settings.filter((one) => one > (screw.breakingTorque?.torque ?? one))
      : [];
    const [first] = beyond;
    return first !== undefined && screw.breakingTorque
      ? { setting: first, breaking: screw.breakingTorque.torque, screw: screw.thread.designation }
      : undefined;
  },
} as const satisfies Partial<Record<NoticeCode, NoticeRule>>;
