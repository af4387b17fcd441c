/** Decimal places kept, [-]: far finer than any length or torque that is drawn or dialled. */
const PLACES = 1e9;

/**
 * A sum or multiple of decimal steps without the dust that binary arithmetic leaves on it; never −0.
 *
 *     ⌊x · 10⁹ + ½⌋/10⁹
 *
 * @param x - a number with few decimals [-], below 10⁶ in size
 * @returns x to nine decimals [-]
 * @example 91 · 0.05 is 4.55, not 4.550000000000001
 */
export const withoutDust = (x: number): number => Math.round(x * PLACES) / PLACES + 0;
