import { type Derived, entry, entryBy, entryFrom } from '../sources/derived.ts';
import { characteristicOf, UNTESTED } from './bond.ts';
import { lessCertain } from './less-certain.ts';
import type { InsertRule, Situation } from './situation.ts';
import { plugDiameter } from './wall-plug.ts';

/**
 * Printed section of a free boss at the hole's bottom.
 *
 *     A = π/4 · (Db² − Dt²)                                    walls meet
 *     A = π/4 · [(Dw² − Dt²) + (Db² − Di²) + ρ · (Di² − Dw²)]   Di = Db − 2 · t, infill between
 *
 * @param situation - bore Dt, wall t, plug Dw [mm], infill density ρ [-]
 * @param bossDiameter - Db [mm], above Dt
 * @returns A [mm²]
 * @source own-model sum of solid areas and infill share
 */
export function bossSection(situation: Situation, bossDiameter: number): Derived {
  const { bore, wall, host } = situation;
  const plug = plugDiameter(situation);
  const inner = bossDiameter - 2 * wall.value;
  const boss = entry('D_b', bossDiameter, 'mm');
  const density = host.infill.density;
  const wallsMeet = inner <= plug.value;
  const solid = bossDiameter ** 2 - bore.value ** 2;
  const hollow = inner ** 2 - plug.value ** 2;
  return {
    symbol: 'A_b',
    value: (Math.PI / 4) * (wallsMeet ? solid : solid - (1 - density) * hollow),
    unit: 'mm²',
    formula: wallsMeet
      ? 'π/4 · (D_b² − D_t²), walls meet'
      : 'π/4 · (D_w² − D_t² + D_b² − D_i² + ρ · (D_i² − D_w²))',
    entries: wallsMeet
      ? [boss, entryFrom(bore), entryFrom(wall), entryFrom(plug)]
      : [
          entryFrom(plug),
          entryFrom(bore),
          boss,
          entryBy('D_i', inner, 'mm', (steps) => steps.innerDiameter(boss, wall)),
          entry('ρ', density, '-'),
        ],
    source: 'own-model',
    standing: 'estimate',
  };
}

/**
 * Force at which a free boss tears across at the hole's bottom.
 *
 *     F = σa · A
 *
 * Even stress on the net section; a bending pull is not in it.
 *
 * @param situation - strength along the axis σa [MPa] and what gives the section
 * @param bossDiameter - Db [mm]
 * @returns median F [N]
 * @source own-model net section
 */
export function bossTearForce(situation: Situation, bossDiameter: number): Derived {
  const section = bossSection(situation, bossDiameter);
  return {
    symbol: 'F_bt',
    value: situation.strengths.alongAxis.value * section.value,
    unit: 'N',
    formula: 'σ_a · A_b',
    entries: [entryFrom(situation.strengths.alongAxis), entryFrom(section)],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** Boss tear: only where the insert sits in a free-standing boss. */
export const bossTear: InsertRule = {
  of: 'insert',
  mode: 'boss-tear',
  path: (seat) => (seat === 'over-gap' ? 'clamp' : seat === 'far-side' ? 'none' : 'pull'),
  capacity: (situation) => {
    const boss = situation.host.bossDiameter;
    if (boss === undefined) return undefined;
    const median = bossTearForce(situation, boss);
    return {
      median,
      characteristic: characteristicOf(median, lessCertain(UNTESTED, situation.strengths.alongAxis)),
    };
  },
};
