import type { Limit } from '../joint/assessment.ts';
import { askedPull, asSetting, greatestClampForce } from '../joint/limits.ts';
import { pullEntry } from '../joint/load-entries.ts';
import { sustainedCapacity } from '../joint/sustained.ts';
import type { ActiveMode } from '../joint/torque-window.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { closedChecks } from './closed-checks.ts';
import type { Moment } from './moments.ts';
import type { ServiceState } from './service-state.ts';

/**
 * A joint at one time: what every mode bears and what loads it, and whether it stays closed.
 *
 *     clamp path:  F_high · R + Φ · P against R_k        pull path: P against R_k
 *     torque path: while it is tightened only
 *     opens:       F_low · R against S_c · (1 − Φ) · P
 *     slips:       μ · (F_low · R − (1 − Φ) · P) against S_c · Q
 *
 * Strength is asked with the force at the time, closing with the smallest force up to it; both where the printed part may
 * have crept the most.
 *
 * @param moment - the joint at the time
 * @param torque - torque dialled [N·mm], above 0
 * @returns limits, conditions of staying closed, and the smallest margin
 * @source own-model the joint through its life
 * @source shigley ch. 8, load factor and separation
 */
export function serviceState(moment: Moment, torque: Derived): ServiceState {
  const { id, joint } = moment;
  const limits = limitsAt(moment, torque);
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
    hours: joint.loads.duration,
    temperature: joint.loads.serviceTemperature,
    preloadLeft: moment.leastLeft,
    limits,
    closed,
    ...worst,
  };
}

function limitsAt(moment: Moment, torque: Derived): readonly Limit[] {
  const { id, joint, creep, conversion, left } = moment;
  const share = moment.shares.most;
  const { pull, duration } = joint.loads;
  const high = greatestClampForce(torque, joint, conversion);
  const demandOn = (active: ActiveMode): Derived => {
    const common = { source: 'own-model', standing: 'estimate' } as const;
    switch (active.path) {
      case 'pull':
        return askedPull(joint);
      case 'clamp':
        return {
          symbol: 'F_d',
          value: high.value * left.value + share.value * pull,
          unit: 'N',
          formula: 'F_high · R_F + Φ · P',
          entries: [entryFrom(high), entryFrom(left), entryFrom(share), pullEntry(joint)],
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
          entries: [
            entryFrom(conversion.ways.threadShare),
            asSetting(torque),
            entry('δ', joint.tool.deviation, '-'),
          ],
          ...common,
        };
      }
    }
  };
  // Key by key: spreads of every row cost a seventh of all sensitivities.
  const rows = moment.actives.map((active): Limit => {
    const { mode, path } = active;
    const capacity = sustainedCapacity(mode, active.capacity, creep.host, duration);
    const demand = demandOn(active);
    if (!(demand.value > 0)) return { mode, path, capacity, demand, governs: false };
    const factor = capacity.characteristic.value / demand.value;
    return { mode, path, capacity, demand, factor, governs: false };
  });
  const smallest = Math.min(...rows.flatMap(({ factor }) => factor ?? []));
  const governing = rows.findIndex(({ factor }) => factor === smallest);
  return rows.map((row, index) => (index === governing ? { ...row, governs: true } : row));
}
