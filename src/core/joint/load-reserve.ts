import { creepEntry } from '../relaxation/polymer-creep.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { TorqueToForce } from './demand.ts';
import type { Joint } from './joint.ts';
import { leastBy } from './least-by.ts';
import { pullEntry } from './load-entries.ts';
import { type ActiveMode, borneBy, forceOnMode } from './torque-window.ts';

/** The mode that uses up its reserve first as the loads grow together. */
export interface LimitingMode {
  readonly mode: ActiveMode;
  /** λ, [-] */
  readonly multiple: number;
}

/**
 * The mode that uses up its reserve first; see loadReserve for the equations.
 *
 * @param actives - every mode of the joint, at least one
 * @param joint - pull P, shear Q [N], factors, tool
 * @param conversion - torque per force [mm], thread's share [-]
 * @param least - least torque at the given loads [N·mm]
 * @returns the mode and its λ [-], ≥ 0; undefined when no load is given
 * @source own-model loads scaled together
 */
export function limitingMode(
  actives: readonly ActiveMode[],
  joint: Joint,
  conversion: TorqueToForce,
  least: number,
): LimitingMode | undefined {
  const { pull, shear } = joint.loads;
  if (pull === 0 && shear === 0) return undefined;
  const multipleOf = (active: ActiveMode): number => {
    const allowed = borneBy(active, joint);
    switch (active.path) {
      case 'pull':
        return pull === 0 ? Number.POSITIVE_INFINITY : allowed / pull;
      case 'clamp':
        return allowed / (least * forceOnMode(active, joint, conversion) + pull);
      case 'torque':
        return allowed / (conversion.threadShare * (1 + joint.tool.deviation)) / least;
    }
  };
  const { one, size } = leastBy(actives, multipleOf);
  return { mode: one, multiple: size };
}

/**
 * Largest multiple of the given loads at which the joint still has every answer.
 *
 *     pull path:   λ = (Rk/(S · c))/P
 *     clamp path:  λ = (Rk/(S · c))/(T_least · R_F · (1 + δ)/k_low + P)        least and most torque meet
 *     torque path: λ = T_out,k/S/(a · (1 + δ))/T_least
 *
 * The smallest of all modes. c and R_F are what the time under load does to plastic, 1 elsewhere. Below 1 the joint fails
 * its loads or has no torque.
 *
 * @param actives - every mode of the joint
 * @param joint - pull P, shear Q [N], not both 0; factors, tool
 * @param conversion - torque per force [mm], thread's share [-]
 * @param least - least torque at the given loads [N·mm]
 * @returns λ [-], ≥ 0; undefined when no load is given
 * @source own-model loads scaled together
 */
export function loadReserve(
  actives: readonly ActiveMode[],
  joint: Joint,
  conversion: TorqueToForce,
  least: Derived,
): Derived | undefined {
  const found = limitingMode(actives, joint, conversion, least.value);
  if (found === undefined) return undefined;
  const { mode: limiting, multiple } = found;
  const { wear, path } = limiting;
  const crept = wear === undefined ? [] : [creepEntry(wear.creep, wear.hours), entry('t', wear.hours, 'h')];
  const common = [
    entryFrom(limiting.capacity.characteristic),
    entry('S', joint.factors.limits, '-'),
    ...crept,
  ];
  const pull = pullEntry(joint);
  const tool = entry('δ', joint.tool.deviation, '-');
  const ways = {
    pull: { formula: wear === undefined ? 'R_k/S/P' : 'R_k/(S · c)/P', entries: [...common, pull] },
    clamp: {
      formula:
        wear === undefined
          ? 'R_k/S/(T_least · (1 + δ)/k_low + P)'
          : 'R_k/(S · c)/(T_least · R_F · (1 + δ)/k_low + P)',
      entries: [
        ...common,
        pull,
        entryFrom(conversion.ways.slippery),
        tool,
        ...(wear === undefined ? [] : [wear.left]),
        entryFrom(least),
      ],
    },
    torque: {
      formula: 'R_k/S/(a · (1 + δ))/T_least',
      entries: [...common, entryFrom(conversion.ways.threadShare), tool, entryFrom(least)],
    },
  };
  return {
    symbol: 'λ',
    value: multiple,
    unit: '-',
    ...ways[path],
    source: 'own-model',
    standing: 'estimate',
  };
}
