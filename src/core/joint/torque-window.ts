import { withoutDust } from '../numerics/binary-dust.ts';
import type { Capacity, FailureMode, LoadPath } from '../pull-out/limit.ts';
import { creepEntry } from '../relaxation/polymer-creep.ts';
import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import type { TorqueToForce } from './demand.ts';
import type { Joint, TorqueTool } from './joint.ts';
import { pullEntry, shearEntry } from './load-entries.ts';
import type { Wear } from './sustained.ts';

/** A mode with what it bears and what loads it in this joint. */
export interface ActiveMode {
  readonly mode: FailureMode;
  readonly path: LoadPath;
  readonly capacity: Capacity;
  /** What the time under load does to it; absent where it does nothing. */
  readonly wear?: Wear;
}

/** Guards a multiple of the step against binary dust. */
const DUST = 1e-9;

/**
 * Clamp force that the joint must keep: closed under the pull, and not slipping under the shear.
 *
 *     F = max(Sc · P, P + Sc · Q/μ)
 *
 * @param joint - pull P, shear Q [N], factor Sc [-]
 * @param friction - μ between the faces [-], > 0
 * @returns F [N], 0 where no load is given
 * @source own-model separation with load factor 0, on the careful side
 */
export function forceToStayClosed(joint: Joint, friction: number): Derived {
  const { pull, shear } = joint.loads;
  const { closed } = joint.factors;
  const slip = shear === 0 ? 0 : pull + (closed * shear) / friction;
  return {
    symbol: 'F_req',
    value: Math.max(closed * pull, slip),
    unit: 'N',
    formula: 'max(S_c · P, P + S_c · Q/μ_s)',
    entries: [entry('S_c', closed, '-'), pullEntry(joint), shearEntry(joint), entry('μ_s', friction, '-')],
    source: 'own-model',
    standing: 'estimate',
  };
}

/**
 * Least torque to dial: at the high end of friction and the low end of the tool the joint still stays closed.
 *
 *     T = F/R · k_high/(1 − δ)
 *
 * @param needed - force to stay closed F [N] and share of the preload that is left R [-]
 * @param conversion - torque per force k [mm]
 * @param tool - deviation δ [-], 0 … below 1
 * @returns T [N·mm]
 * @source vdi-2230 tightening torque
 * @source iso-6789 deviation of the tool
 */
export function leastTorque(
  needed: { readonly force: Derived; readonly left: Entry },
  conversion: TorqueToForce,
  tool: TorqueTool,
): Derived {
  return {
    symbol: 'T_least',
    value: ((needed.force.value / needed.left.value) * conversion.sticky) / (1 - tool.deviation),
    unit: 'N·mm',
    formula: 'F_req/R_F · k_high/(1 − δ)',
    entries: [
      entryFrom(needed.force),
      needed.left,
      entryFrom(conversion.ways.sticky),
      entry('δ', tool.deviation, '-'),
    ],
    source: 'vdi-2230',
    standing: 'estimate',
  };
}

/** Largest torque that one mode allows, N·mm, for a given pull. */
export interface ModeTorque {
  readonly mode: FailureMode;
  readonly torque: Derived;
}

/** What a mode bears over the factor when the time under load has passed, N or N·mm. */
export const borneBy = ({ capacity, wear }: ActiveMode, joint: Joint): number =>
  capacity.characteristic.value / (joint.factors.limits * (wear?.factor ?? 1));

/** Clamp force on a mode, when the time has passed, for each N·mm of the setting, 1/mm. */
export const forceOnMode = ({ wear }: ActiveMode, joint: Joint, conversion: TorqueToForce): number =>
  ((wear?.left.value ?? 1) * (1 + joint.tool.deviation)) / conversion.slippery;

/**
 * Largest torque that one mode allows, as a plain number; see torqueAllowedBy.
 * @param active - a mode that the clamp force or the torque loads
 * @param joint - pull P [N], factor S [-], tool deviation δ [-]
 * @param conversion - torque per force k [mm], thread's share [-]
 * @returns T [N·mm]
 * @source vdi-2230 tightening torque
 */
export function torqueAllowedByOf(active: ActiveMode, joint: Joint, conversion: TorqueToForce): number {
  const borne = borneBy(active, joint);
  return active.path === 'torque'
    ? borne / (conversion.threadShare * (1 + joint.tool.deviation))
    : Math.max(0, borne - joint.loads.pull) / forceOnMode(active, joint, conversion);
}

/**
 * Largest torque to dial as far as one mode asks: low end of friction, high end of the tool.
 *
 *     T = max(0, Rk/S − P) · k_low/(1 + δ)              force modes: the pull comes on top of the clamp force
 *     T = max(0, Rk/(S · c) − P)/R_F · k_low/(1 + δ)    plastic that the time under load wears down
 *     T = Rk/S/(share · (1 + δ))                        torque-out: only the thread's share turns the insert
 *
 * Strength falls with the creep factor c, the clamp force with R_F. c · R_F never falls below 1 and grows with time, so
 * the end of the time asks for the least; see sustainedCapacity and preloadOnCreptHost.
 *
 * @param active - a mode that the clamp force or the torque loads
 * @param joint - pull P [N], factor S [-], tool deviation δ [-]
 * @param conversion - torque per force k [mm], thread's share [-]
 * @returns T [N·mm], 0 where the pull alone uses the mode up
 * @source vdi-2230 tightening torque
 * @source iso-6789 deviation of the tool
 * @source own-model strength falls as the creep modulus
 */
export function torqueAllowedBy(active: ActiveMode, joint: Joint, conversion: TorqueToForce): ModeTorque {
  const { mode, path, wear } = active;
  const { characteristic } = active.capacity;
  const entries = [
    entryFrom(characteristic),
    entry('S', joint.factors.limits, '-'),
    entry('δ', joint.tool.deviation, '-'),
  ];
  if (path === 'torque') entries.push(entryFrom(conversion.ways.threadShare));
  else entries.push(pullEntry(joint), entryFrom(conversion.ways.slippery));
  if (wear) entries.push(creepEntry(wear.creep, wear.hours), wear.left, entry('t', wear.hours, 'h'));
  const byForce = wear ? 'max(0, R_k/(S · c) − P)/R_F · k_low/(1 + δ)' : 'max(0, R_k/S − P) · k_low/(1 + δ)';
  return {
    mode,
    torque: {
      symbol: 'T_most',
      value: torqueAllowedByOf(active, joint, conversion),
      unit: 'N·mm',
      formula: path === 'torque' ? 'R_k/S/(a · (1 + δ))' : byForce,
      entries,
      source: 'vdi-2230',
      standing: characteristic.standing,
    },
  };
}

/**
 * Largest setting of the tool inside a window, or undefined.
 *
 * @param tool - settings [N·mm], ascending, or the step [N·mm] where every multiple can be set
 * @param least - least torque [N·mm]
 * @param most - largest torque [N·mm]
 * @returns the setting [N·mm]
 * @source own-model largest setting inside
 */
export function dialInside(tool: TorqueTool, least: number, most: number): number | undefined {
  if (tool.settings.length > 0) {
    return tool.settings.filter((setting) => setting >= least && setting <= most).at(-1);
  }
  const multiple = withoutDust(Math.floor(most / tool.step + DUST) * tool.step);
  return multiple > 0 && multiple >= least && multiple <= most * (1 + DUST) ? multiple : undefined;
}

/**
 * The setting inside a window, with its way; see dialInside.
 *
 * @param dial - what dialInside gave [N·mm]
 * @param window - least and largest torque [N·mm]
 * @returns T [N·mm]
 * @source own-model largest setting inside
 */
export const settingInside = (
  dial: number,
  { least, most }: { readonly least: Derived; readonly most: Derived },
): Derived => ({
  symbol: 'T',
  value: dial,
  unit: 'N·mm',
  formula: 'largest setting between T_least and T_most',
  entries: [entryFrom(least), entryFrom(most)],
  source: 'own-model',
  standing: most.standing === 'published' ? least.standing : most.standing,
});
