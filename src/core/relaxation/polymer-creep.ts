import { type End, shareAt } from '../host/little-known.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { strengthShareAt } from '../host/temperature.ts';
import { type Entry, entryBy } from '../sources/derived.ts';
import { type CreepLaw, creepFactorOf, creepLaw } from './findley.ts';
import { warmCreepLaw } from './warm-creep.ts';

/**
 * Creep of a polymer at service temperature within what is known of it: at the low end of the stiffness that is left it
 * creeps the most, at the high end the least.
 */
export interface PolymerCreep extends Readonly<Record<End, CreepLaw>> {
  readonly polymer: PrintedMaterial;
  /** °C */
  readonly serviceTemperature: number;
}

/**
 * Creep of a polymer at service temperature, at both ends and in the middle of what is known of it.
 *
 *     E(t)/E0 = 1/(1 + m · θ^−2.4 · tⁿ)
 *
 * Each law goes through the modulus ratios at its own end, and is made faster by the strength left θ at that end.
 *
 * @param polymer - modulus ratios after 1 h, 24 h, 1000 h and strength in the warmth [-]
 * @param serviceTemperature - T [°C]
 * @returns the three laws
 * @source findley-iso-899 power law of creep
 * @source own-model growth with temperature, range of a little known share
 */
export function polymerCreep(polymer: PrintedMaterial, serviceTemperature: number): PolymerCreep {
  const lawAt = (end: End): CreepLaw =>
    warmCreepLaw(
      creepLaw({
        after1h: shareAt(polymer.creepRatio1h, end),
        after24h: shareAt(polymer.creepRatio24h, end),
        after1000h: shareAt(polymer.creepRatio1000h, end),
      }),
      strengthShareAt(polymer, serviceTemperature, end),
    );
  return { polymer, serviceTemperature, low: lawAt('low'), middle: lawAt('middle'), high: lawAt('high') };
}

/** Whether the ends of what is known of a polymer's creep differ. */
export const isCreepInDoubt = ({ low, high }: PolymerCreep): boolean => low.m !== high.m || low.n !== high.n;

/** Creep factor put into a formula: the most that the polymer may have crept, with its range. */
export const creepEntry = (creep: PolymerCreep, hours: number): Entry =>
  entryBy('c', creepFactorOf(creep.low, hours), '-', (steps) => steps.mostCreep(creep, hours));
