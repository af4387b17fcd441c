import { type Derived, entry } from '../sources/derived.ts';
import type { Host } from './host.ts';

/** Mean of |cos θ| round a circle, [-]: vertical walls are cut by a cylinder at every angle. */
const MEAN_CUT = 2 / Math.PI;
/** Exponent of plastic collapse of a cellular solid, [-]. */
const CELLULAR_EXPONENT = 1.5;

/**
 * Strength of infill on a cylinder round the insert, as a share of the solid's.
 *
 *     φ = 2/π · ρ       prismatic patterns: vertical walls
 *     φ = ρ^1.5         cellular patterns
 *     φ = 1             printed solid, ρ = 1
 *
 * The step of a prismatic pattern at ρ = 1 is real: at full density no cell is left. Walls are taken as thin and
 * whole; patterns that alternate by layer hold less.
 *
 * @param infill - family of the pattern and density ρ [-], 0 … 1
 * @returns φ [-], 0 … 1
 * @source gibson-ashby plastic collapse, exponent 1.5
 * @source own-model mean cut of vertical walls
 * @example 20 % of a grid gives 0.127
 */
export function infillStrength(infill: Host['infill']): Derived {
  const { density, family } = infill;
  const solid = density >= 1;
  const prismatic = family === 'prismatic';
  const value = solid ? 1 : prismatic ? MEAN_CUT * density : density ** CELLULAR_EXPONENT;
  return {
    symbol: 'φ',
    value,
    unit: '-',
    formula: solid ? '1' : prismatic ? '2/π · ρ' : 'ρ^1.5',
    entries: [entry('ρ', density, '-')],
    source: prismatic || solid ? 'own-model' : 'gibson-ashby',
    standing: 'estimate',
  };
}
