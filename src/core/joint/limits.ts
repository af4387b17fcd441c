import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import type { Limit } from './assessment.ts';
import type { TorqueToForce } from './demand.ts';
import type { Joint } from './joint.ts';
import { pullEntry } from './load-entries.ts';
import type { ActiveMode } from './torque-window.ts';

/** A torque put in as the setting T, also where it is only the largest that the limits allow. */
export const asSetting = (torque: Derived): Entry => ({
  symbol: 'T',
  value: torque.value,
  unit: torque.unit,
  from: torque,
});

/**
 * Most clamp force that a setting gives: low end of friction, high end of the tool.
 *
 *     F = T · (1 + δ)/k_low
 *
 * @param torque - setting T [N·mm]
 * @param joint - tool deviation δ [-]
 * @param conversion - torque per force k_low [mm]
 * @returns F [N]
 * @source vdi-2230 tightening torque, solved for the force
 */
export function greatestClampForce(torque: Derived, joint: Joint, conversion: TorqueToForce): Derived {
  return {
    symbol: 'F_high',
    value: (torque.value * (1 + joint.tool.deviation)) / conversion.slippery,
    unit: 'N',
    formula: 'T · (1 + δ)/k_low',
    entries: [asSetting(torque), entry('δ', joint.tool.deviation, '-'), entryFrom(conversion.ways.slippery)],
    source: 'vdi-2230',
    standing: 'published',
  };
}

/**
 * Least clamp force that a setting leaves: high end of friction, low end of the tool, after relaxation.
 *
 *     F = R · T · (1 − δ)/k_high
 *
 * @param torque - setting T [N·mm]
 * @param joint - tool deviation δ [-]
 * @param conversion - torque per force k_high [mm]
 * @param left - share of the preload that is left R [-]
 * @returns F [N]
 * @source vdi-2230 tightening torque, solved for the force
 */
export function leastClampForce(
  torque: Derived,
  joint: Joint,
  conversion: TorqueToForce,
  left: Derived,
): Derived {
  return {
    symbol: 'F_low',
    value: (left.value * torque.value * (1 - joint.tool.deviation)) / conversion.sticky,
    unit: 'N',
    formula: 'R_F · T · (1 − δ)/k_high',
    entries: [
      entryFrom(left),
      asSetting(torque),
      entry('δ', joint.tool.deviation, '-'),
      entryFrom(conversion.ways.sticky),
    ],
    source: 'vdi-2230',
    standing: 'estimate',
  };
}

/** The pull on the screw, as what is asked of the insert, N. */
export function askedPull(joint: Joint): Derived {
  const pull = pullEntry(joint);
  return (
    pull.from ?? {
      symbol: 'P',
      value: pull.value,
      unit: 'N',
      formula: 'P',
      entries: [pull],
      source: 'own-model',
      standing: 'estimate',
    }
  );
}

/**
 * What loads a mode at a torque.
 *
 *     pull path:   P
 *     clamp path:  F + P        the whole pull on top of the clamp force: load factor 1, on the careful side
 *     torque path: a · T · (1 + δ)
 *
 * @param active - the mode and its path
 * @param joint - pull P [N]
 * @param clampForce - most clamp force F at the torque [N]
 * @param torque - setting T [N·mm]
 * @param conversion - the thread's share a [-]
 * @returns demand [N, or N·mm on the torque path]
 * @source own-model load factor 1
 */
export function demandOn(
  active: ActiveMode,
  joint: Joint,
  clampForce: Derived,
  torque: Derived,
  conversion: TorqueToForce,
): Derived {
  const { pull } = joint.loads;
  const common = { source: 'own-model', standing: 'estimate' } as const;
  switch (active.path) {
    case 'pull':
      return askedPull(joint);
    case 'clamp':
      return {
        symbol: 'F_d',
        value: clampForce.value + pull,
        unit: 'N',
        formula: 'F_high + P',
        entries: [entryFrom(clampForce), pullEntry(joint)],
        ...common,
      };
    case 'torque':
      return {
        symbol: 'T_d',
        value: conversion.threadShare * torque.value * (1 + joint.tool.deviation),
        unit: 'N·mm',
        formula: 'a · T · (1 + δ)',
        entries: [
          entryFrom(conversion.ways.threadShare),
          asSetting(torque),
          entry('δ', joint.tool.deviation, '-'),
        ],
        ...common,
      };
  }
}

/** Below this nothing is loaded, N or N·mm: a factor over it would say nothing, and over less still be no number. */
const LEAST_DEMAND = 1e-9;

/** A mode beside what loads it, and the largest torque it allows. */
export interface DemandedMode {
  readonly active: ActiveMode;
  readonly demand: Derived;
  readonly allows?: Derived;
}

/** All modes beside what loads them; the one with the smallest factor governs. */
export function limitsOf(demanded: readonly DemandedMode[]): readonly Limit[] {
  const factorOf = (active: ActiveMode, demand: Derived) =>
    demand.value > LEAST_DEMAND ? active.capacity.characteristic.value / demand.value : undefined;
  const factors = demanded.map(({ active, demand }) => factorOf(active, demand));
  const smallest = Math.min(...factors.filter((factor) => factor !== undefined));
  // Where nothing is loaded at all, the weakest force mode still governs.
  const weakest = Math.min(
    ...demanded
      .filter((one) => one.active.path !== 'torque')
      .map((one) => one.active.capacity.characteristic.value),
  );
  const anyLoaded = factors.some((factor) => factor !== undefined);
  let taken = false;
  return demanded.map(({ active, demand, allows }, index) => {
    const { mode, path, capacity } = active;
    const factor = factors[index];
    const isSmallest = anyLoaded
      ? factor === smallest
      : active.path !== 'torque' && active.capacity.characteristic.value === weakest;
    const governs = isSmallest && !taken;
    taken ||= governs;
    return {
      mode,
      path,
      capacity,
      demand,
      ...(factor === undefined ? {} : { factor }),
      governs,
      ...(allows ? { allows } : {}),
    };
  });
}
