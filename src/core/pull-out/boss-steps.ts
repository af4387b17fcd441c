import { type Derived, type Entry, entryFrom } from '../sources/derived.ts';
import { hoopPerPressure } from './thick-ring.ts';

/**
 * Stiffness ratio of the ring that resists splitting.
 *
 *     κ = (Do² + Dk²)/(Do² − Dk²)
 *
 * @param ring - outside diameter Do [mm], above Dk
 * @param knurl - Dk [mm]
 * @returns κ [-]
 * @source elasticity thick cylinder
 */
export const ringRatio = (ring: Derived, knurl: Derived): Derived => ({
  symbol: 'κ',
  value: hoopPerPressure(ring.value, knurl.value),
  unit: '-',
  formula: '(D_o² + D_k²)/(D_o² − D_k²)',
  entries: [entryFrom(ring), entryFrom(knurl)],
  source: 'elasticity',
  standing: 'estimate',
});

/**
 * Inner diameter of a boss's own walls.
 *
 *     Di = Db − 2 · t
 *
 * @param boss - outside diameter Db [mm]
 * @param wall - t [mm]
 * @returns Di [mm]
 * @source own-model sum of solid areas
 */
export const innerDiameter = (boss: Entry, wall: Derived): Derived => ({
  symbol: 'D_i',
  value: boss.value - 2 * wall.value,
  unit: 'mm',
  formula: 'D_b − 2 · t',
  entries: [boss, entryFrom(wall)],
  source: 'own-model',
  standing: 'estimate',
});
