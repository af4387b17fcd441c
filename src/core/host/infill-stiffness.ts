import { type Derived, entry } from '../sources/derived.ts';
import type { Host } from './host.ts';

/** Mean of cos² θ round a circle, [-]: a vertical wall sheared along the hole works by its direction. */
const MEAN_WORK = 1 / 2;
/** Exponent of the modulus of a cellular solid, [-]. */
const CELLULAR_EXPONENT = 2;

/**
 * Stiffness of infill that is sheared along the axis of the hole, as a share of the solid's.
 *
 *     ψ = ½ · ρ      prismatic patterns: vertical walls
 *     ψ = ρ²         cellular patterns
 *     ψ = 1          printed solid, ρ = 1
 *
 * Walls are taken as thin and whole, the hole as vertical.
 *
 * @param infill - family of the pattern and density ρ [-], 0 … 1
 * @returns ψ [-], 0 … 1
 * @source gibson-ashby modulus of a cellular solid, exponent 2
 * @source own-model mean work of vertical walls
 * @example 20 % of a grid gives 0.1
 */
export function infillShearShareOf({ density, family }: Host['infill']): number {
  if (density >= 1) return 1;
  return family === 'prismatic' ? MEAN_WORK * density : density ** CELLULAR_EXPONENT;
}

/**
 * The same with its formula; see infillShearShareOf.
 *
 * @param infill - family of the pattern and density ρ [-], 0 … 1
 * @returns ψ [-], 0 … 1
 * @source gibson-ashby modulus of a cellular solid, exponent 2
 * @source own-model mean work of vertical walls
 */
export function infillShearShare(infill: Host['infill']): Derived {
  const { density, family } = infill;
  const common = {
    symbol: 'ψ_i',
    value: infillShearShareOf(infill),
    unit: '-',
    entries: [entry('ρ', density, '-')],
    standing: 'estimate',
  } as const;
  if (density >= 1) return { ...common, source: 'own-model', formula: '1, printed solid' };
  return family === 'prismatic'
    ? { ...common, source: 'own-model', formula: '½ · ρ' }
    : { ...common, source: 'gibson-ashby', formula: 'ρ²' };
}
