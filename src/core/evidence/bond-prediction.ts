import { studentDensity, studentQuantile } from '../numerics/student-t.ts';
import type { LogStudent } from './coupon-ratio.ts';

/** Share of joints that hold the characteristic value. */
const CHARACTERISTIC_SHARE = 0.95;

/**
 * Bond factor that half of the next joints hold.
 *
 *     η = exp(m)
 *
 * @param prediction - of ln η, centre m [-]
 * @returns η [-], > 0
 */
export const medianBond = ({ centre }: LogStudent): number => Math.exp(centre);

/**
 * Bond factor that 19 of 20 of the next joints hold.
 *
 *     ηk = exp(m − t · s)        t = 95 % quantile of Student's t
 *
 * @param prediction - of ln η: centre m, scale s, degrees of freedom [-]
 * @returns ηk [-], > 0
 * @example median 0.85, scale √0.10 and 4 degrees of freedom give 0.433
 */
export const characteristicBond = ({ centre, scale, freedom }: LogStudent): number =>
  Math.exp(centre - studentQuantile(CHARACTERISTIC_SHARE, freedom) * scale);

/** The two ends of what a share of the bond factors lies between, [-]. */
export interface BondInterval {
  readonly low: number;
  readonly high: number;
}

/**
 * Bond factors between which a share lies, as much below as above.
 *
 *     exp(m ± t · s)        t = (1 + share)/2 quantile of Student's t
 *
 * @param prediction - of ln η: centre m, scale s, degrees of freedom [-]
 * @param share - of the bond factors between the ends [-], 0 < share < 1
 * @returns low and high [-], > 0
 */
export function bondInterval({ centre, scale, freedom }: LogStudent, share: number): BondInterval {
  const reach = studentQuantile((1 + share) / 2, freedom) * scale;
  return { low: Math.exp(centre - reach), high: Math.exp(centre + reach) };
}

/**
 * Density of the bond factor, for a picture of it over a linear axis.
 *
 *     p(η) = f((ln η − m)/s)/(s · η)        f of Student's t
 *
 * @param prediction - of ln η: centre m, scale s, degrees of freedom [-]
 * @param at - bond factor η [-], > 0
 * @returns p [-], ≥ 0: share of the bond factors per unit of bond factor
 */
export const bondDensity = ({ centre, scale, freedom }: LogStudent, at: number): number =>
  studentDensity((Math.log(at) - centre) / scale, freedom) / (scale * at);
