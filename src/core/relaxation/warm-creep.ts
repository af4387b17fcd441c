import type { CreepLaw } from './findley.ts';

/**
 * How creep grows as strength falls with temperature, [-]: one remembered point, printed PLA after 1000 h, whose modulus
 * ratio falls from 0.60 at 23 °C to 0.25 at 40 °C while its strength falls to 0.54: (1/0.25 − 1)/(1/0.60 − 1) = 4.5 = 0.54^−2.4.
 */
export const GROWTH_EXPONENT = 2.4;

/**
 * Creep law of a warm plastic from its law at 23 °C.
 *
 *     m(T) = m · θ^−2.4        n unchanged
 *
 * θ is the share of the strength that is left at T: the nearer to softening, the faster it creeps. Rests on one remembered
 * point of one material: an order of magnitude, shown as an estimate of low confidence.
 *
 * @param law - m, n [-] at 23 °C
 * @param strengthLeft - θ [-], 0 < θ ≤ 1
 * @returns m and n [-] at service temperature
 * @source own-model creep grows as strength falls
 * @source printed-materials PLA at 40 °C, remembered
 * @example m 0.08 with θ 0.61 gives m 0.26
 */
export const warmCreepLaw = (law: CreepLaw, strengthLeft: number): CreepLaw => ({
  m: law.m * strengthLeft ** -GROWTH_EXPONENT,
  n: law.n,
});
