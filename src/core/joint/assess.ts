import type { Insert } from '../inserts/insert.ts';
import type { JointAssessment, TorqueWindow } from './assessment.ts';
import { designHole } from './hole-design.ts';
import { leastBy } from './least-by.ts';
import { demandOn, greatestClampForce, leastClampForce, limitsOf } from './limits.ts';
import { loadReserve } from './load-reserve.ts';
import { openingsFor } from './openings.ts';
import { bestPreloadLeft } from './preload-left.ts';
import type { AnswerableJoint } from './stop.ts';
import { type Tightening, tighten } from './tightening.ts';
import { type ActiveMode, settingInside, torqueAllowedBy, torqueAllowedByOf } from './torque-window.ts';
import { weakestHold } from './weakest-hold.ts';

/**
 * Everything about one joint with one insert: the pure call behind every answer.
 *
 * @param joint - a joint that may be answered (stopOf gives nothing)
 * @param insert - an insert with the screw's thread
 * @returns hole, seat, screw, limits, torque and reserve; a closed window or a missing screw is data in it
 * @source own-model order of the steps
 */
export function assess(joint: AnswerableJoint, insert: Insert): JointAssessment {
  const tightening = tighten(joint, insert);
  const { found, actives, conversion, least } = tightening;
  const torque = torqueWindow(joint, insert, tightening);
  // Without a setting the demand is shown at the largest torque that the limits allow.
  const shownTorque = torque.kind === 'window' ? torque.dial : torque.most;
  const clampForce = greatestClampForce(shownTorque, joint, conversion);
  const limits = limitsOf(
    actives.map((active) => ({
      active,
      demand: demandOn(active, joint, clampForce, shownTorque, conversion),
      ...(active.path === 'pull' ? {} : { allows: torqueAllowedBy(active, joint, conversion).torque }),
    })),
  );
  const held = weakestHold(actives);
  const reserve = loadReserve(actives, joint, conversion, least);
  return {
    insertId: insert.id,
    dimensions: found.insert,
    hole: designHole(joint, found.insert, tightening.bore, found.hole),
    seat: found.seat,
    screw: found.screw,
    limits,
    governing: limits.find((limit) => limit.governs)?.mode ?? held.mode,
    torque,
    preloadLeft: tightening.left.from,
    ...(tightening.left.from.range === undefined
      ? {}
      : { preloadLeftAtBest: bestPreloadLeft(tightening.loop, tightening.life) }),
    ...(reserve === undefined ? {} : { loadReserve: reserve }),
    holds: held.capacity,
    holdsMode: held.mode,
  };
}

function torqueWindow(joint: AnswerableJoint, insert: Insert, tightening: Tightening): TorqueWindow {
  const { actives, conversion, left, least, most, dial } = tightening;
  const tightened = actives.filter(({ path }) => path !== 'pull');
  const unworn = tightened.map(({ mode, path, capacity }): ActiveMode => ({ mode, path, capacity }));
  const strictest = leastBy(unworn, (active) => torqueAllowedByOf(active, joint, conversion)).one;
  const mostAtOnce = torqueAllowedBy(strictest, joint, conversion).torque;
  if (dial === undefined) {
    return {
      kind: 'refused',
      code: least.value > most.torque.value ? 'no-window' : 'no-setting',
      least,
      most: most.torque,
      mostAtOnce,
      limitedBy: most.mode,
      openedBy: openingsFor(joint, insert),
    };
  }
  const setting = settingInside(dial, { least, most: most.torque });
  return {
    kind: 'window',
    least,
    most: most.torque,
    mostAtOnce,
    dial: setting,
    limitedBy: most.mode,
    clampForceLow: leastClampForce(setting, joint, conversion, left.from),
    clampForceHigh: greatestClampForce(setting, joint, conversion),
  };
}
