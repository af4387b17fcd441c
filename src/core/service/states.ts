import { REFERENCE_TEMPERATURE } from '../host/temperature.ts';
import type { Insert } from '../inserts/insert.ts';
import type { Limit } from '../joint/assessment.ts';
import { creepLawOf } from '../joint/clamp-loop.ts';
import { slipFriction } from '../joint/demand.ts';
import { greatestClampForce, leastClampForce } from '../joint/limits.ts';
import { situationOf } from '../joint/situation-of.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { frameOf, type Tightening, tighten } from '../joint/tightening.ts';
import type { ActiveMode } from '../joint/torque-window.ts';
import type { Situation } from '../pull-out/situation.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { pullShare } from './load-factor.ts';
import type { ClosedCheck, ServiceState, StateId } from './service-state.ts';
import { sustainedCapacity } from './sustained.ts';

/** The joint as it is at a time, with all that was found about it then. */
interface Moment {
  readonly joint: AnswerableJoint;
  readonly tightening: Tightening;
  readonly situation: Situation;
  readonly share: Derived;
}

/** The loads of a joint at a time: none while it is tightened, all of them from then on. */
function jointAt(joint: AnswerableJoint, id: StateId): AnswerableJoint {
  const { loads } = joint;
  switch (id) {
    case 'assembly':
      return {
        ...joint,
        loads: { ...loads, pull: 0, shear: 0, serviceTemperature: REFERENCE_TEMPERATURE, duration: 0 },
      };
    case 'in-service':
      return { ...joint, loads: { ...loads, duration: 0 } };
    case 'after':
      return joint;
  }
}

function momentAt(joint: AnswerableJoint, insert: Insert, id: StateId): Moment {
  const then = jointAt(joint, id);
  const frame = frameOf(then);
  const tightening = tighten(then, insert, frame);
  const situation = situationOf(frame.surroundings, tightening.found);
  return { joint: then, tightening, situation, share: pullShare(then, situation, tightening.grip) };
}

/**
 * A joint at one time: what every mode bears and what loads it, and whether it stays closed.
 *
 *     clamp path:  F_high · R + Φ · P against R_k        pull path: P against R_k
 *     torque path: while it is tightened only
 *     opens:       F_low · R against S_c · (1 − Φ) · P
 *     slips:       μ · (F_low · R − (1 − Φ) · P) against S_c · Q
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @param torque - torque dialled [N·mm]
 * @param id - the time
 * @returns limits, conditions of staying closed, and the smallest margin
 * @source own-model the joint through its life
 * @source shigley ch. 8, load factor and separation
 */
export function serviceState(
  joint: AnswerableJoint,
  insert: Insert,
  torque: Derived,
  id: StateId,
): ServiceState {
  const moment = momentAt(joint, insert, id);
  const limits = limitsAt(moment, torque, id);
  const closed = id === 'assembly' ? [] : closedChecks(moment, torque);
  const margins = [
    ...limits.flatMap((limit) =>
      limit.factor === undefined ? [] : [{ by: limit.mode, margin: limit.factor / joint.factors.limits }],
    ),
    ...closed.map(({ by, margin }) => ({ by, margin })),
  ];
  const worst = margins.reduce((one, other) => (other.margin < one.margin ? other : one));
  return {
    id,
    hours: moment.joint.loads.duration,
    temperature: moment.joint.loads.serviceTemperature,
    preloadLeft: moment.tightening.left,
    limits,
    closed,
    ...worst,
  };
}

function limitsAt(
  { joint, tightening, situation, share }: Moment,
  torque: Derived,
  id: StateId,
): readonly Limit[] {
  const { conversion, left } = tightening;
  const { pull, duration } = joint.loads;
  const high = greatestClampForce(torque, joint, conversion);
  const law = creepLawOf(situation.material);
  const demandOn = (active: ActiveMode): Derived => {
    const common = { source: 'own-model', standing: 'estimate' } as const;
    switch (active.path) {
      case 'pull':
        return {
          symbol: 'P',
          value: pull,
          unit: 'N',
          formula: 'P',
          entries: [entry('P', pull, 'N')],
          ...common,
        };
      case 'clamp':
        return {
          symbol: 'F_d',
          value: high.value * left.value + share.value * pull,
          unit: 'N',
          formula: 'F_high · R_F + Φ · P',
          entries: [entryFrom(high), entryFrom(left), entryFrom(share), entry('P', pull, 'N')],
          ...common,
        };
      case 'torque': {
        const turning =
          id === 'assembly' ? conversion.threadShare * torque.value * (1 + joint.tool.deviation) : 0;
        return {
          symbol: 'T_d',
          value: turning,
          unit: 'N·mm',
          formula: id === 'assembly' ? 'a · T · (1 + δ)' : '0, only tightening turns it',
          entries: [entry('a', conversion.threadShare, '-'), entryFrom(torque)],
          ...common,
        };
      }
    }
  };
  const rows = tightening.actives.map((active) => {
    const capacity = sustainedCapacity(active.mode, active.capacity, law, duration);
    const demand = demandOn(active);
    const factor = demand.value > 0 ? capacity.characteristic.value / demand.value : undefined;
    return { ...active, capacity, demand, ...(factor === undefined ? {} : { factor }) };
  });
  const smallest = Math.min(...rows.flatMap(({ factor }) => factor ?? []));
  const governing = rows.findIndex(({ factor }) => factor === smallest);
  return rows.map((row, index) => ({ ...row, governs: index === governing }));
}

function closedChecks(
  { joint, tightening, situation, share }: Moment,
  torque: Derived,
): readonly ClosedCheck[] {
  const { conversion, left } = tightening;
  const { pull, shear } = joint.loads;
  const { closed } = joint.factors;
  const low = leastClampForce(torque, joint, conversion, left);
  const relieved = (1 - share.value) * pull;
  const checks: ClosedCheck[] = [];
  if (relieved > 0) {
    const needed: Derived = {
      symbol: 'F_req',
      value: closed * relieved,
      unit: 'N',
      formula: 'S_c · (1 − Φ) · P',
      entries: [entry('S_c', closed, '-'), entryFrom(share), entry('P', pull, 'N')],
      source: 'shigley',
      standing: 'published',
    };
    checks.push({ by: 'opens', left: low, needed, margin: low.value / needed.value });
  }
  if (shear > 0) {
    const friction = slipFriction(joint, situation);
    const held: Derived = {
      symbol: 'Q_held',
      value: friction * Math.max(0, low.value - relieved),
      unit: 'N',
      formula: 'μ_s · max(0, F_low − (1 − Φ) · P)',
      entries: [entry('μ_s', friction, '-'), entryFrom(low), entryFrom(share), entry('P', pull, 'N')],
      source: 'own-model',
      standing: 'estimate',
    };
    const needed: Derived = {
      symbol: 'Q_req',
      value: closed * shear,
      unit: 'N',
      formula: 'S_c · Q',
      entries: [entry('S_c', closed, '-'), entry('Q', shear, 'N')],
      source: 'own-model',
      standing: 'estimate',
    };
    checks.push({ by: 'slips', left: held, needed, margin: held.value / needed.value });
  }
  return checks;
}
