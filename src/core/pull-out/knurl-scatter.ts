import type { LogScatter } from './bond.ts';
import { lessCertain } from './less-certain.ts';
import type { Situation } from './situation.ts';

/**
 * Scatter of what the knurl bears: that of the bond, and the doubt about the plastic's shear strength where no coupon
 * has been pulled. A coupon of the same plastic measures bond and strength together.
 *
 * @param situation - bond with its scatter [-], shear strength τ [MPa]
 * @returns scatter of the logarithm [-]
 * @source own-model range of a little known strength
 */
export const knurlScatter = ({ bond, strengths }: Situation): LogScatter =>
  bond.coupons > 0 ? bond.scatter : lessCertain(bond.scatter, strengths.knurlShear);
