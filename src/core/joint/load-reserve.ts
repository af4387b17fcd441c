import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { TorqueToForce } from './demand.ts';
import type { Joint } from './joint.ts';
import type { ActiveMode } from './torque-window.ts';

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
  const strongestTurn = 1 + joint.tool.deviation;
  const perForce = conversion.slippery / strongestTurn;
  const multipleOf = ({ path, capacity }: ActiveMode): number => {
    const allowed = capacity.characteristic.value / joint.factors.limits;
    switch (path) {
      case 'pull':
        return pull === 0 ? Number.POSITIVE_INFINITY : allowed / pull;
      case 'clamp':
        return (allowed * perForce) / (least + pull * perForce);
      case 'torque':
        return allowed / (conversion.threadShare * strongestTurn) / least;
    }
  };
  return actives
    .map((mode) => ({ mode, multiple: multipleOf(mode) }))
    .reduce((one, other) => (other.multiple < one.multiple ? other : one));
}

/**
 * Largest multiple of the given loads at which the joint still has every answer.
 *
 *     pull path:   λ = (Rk/S)/P
 *     clamp path:  λ = (Rk/S) · k/(T_least + P · k)        k = k_low/(1 + δ): least and most torque meet
 *     torque path: λ = T_out,k/S/(a · (1 + δ))/T_least
 *
 * The smallest of all modes. Below 1 the joint fails its loads or has no torque.
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
  const { deviation } = joint.tool;
  return {
    symbol: 'λ',
    value: multiple,
    unit: '-',
    formula:
      limiting.path === 'pull'
        ? 'R_k/S/P'
        : limiting.path === 'clamp'
          ? 'R_k/S · k/(T_least + P · k)'
          : 'R_k/S/(a · (1 + δ))/T_least',
    entries: [
      entryFrom(limiting.capacity.characteristic),
      entry('S', joint.factors.limits, '-'),
      entry('P', joint.loads.pull, 'N'),
      ...(limiting.path === 'clamp' ? [entry('k', conversion.slippery / (1 + deviation), 'mm')] : []),
      ...(limiting.path === 'torque'
        ? [entryFrom(conversion.ways.threadShare), entry('δ', deviation, '-')]
        : []),
      ...(limiting.path === 'pull' ? [] : [entryFrom(least)]),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}
