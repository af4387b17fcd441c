/** What is assumed of the bond factor before any coupon: all of it estimates of this program. */

/** Standard deviation of the logarithm within a set-up, of one size, [-]. */
export const WITHIN_SETUP = 0.1;
/** The same between set-ups and sizes, [-]: 0.10 · √(8 + 1). */
export const BETWEEN_SETUPS = 0.3;
/** Degrees of freedom of the prior scatter, [-]. */
export const PRIOR_FREEDOM = 4;
/** Variance of a set-up's median over the variance within one size, [-]. */
export const SETUP_RATIO = 8;
/** Variance between the sizes of one set-up over the variance within one size, [-]. */
export const SIZE_RATIO = 1;
