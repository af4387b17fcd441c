/**
 * The lesser of two numbers without a branch, which random numbers would lead astray in half of all joints.
 *
 *     min(a, b) = (a + b − |a − b|)/2
 *
 * To the last digits of the greater in size: closer than the exponential that such numbers come from, so it decides
 * nothing that was not open.
 *
 * @param one - a, finite
 * @param other - b, finite, in the unit of a
 * @returns the lesser, in the unit of a [-]
 * @source own-model
 * @example 3 and 7 give 3
 */
export const lesser = (one: number, other: number): number => (one + other - Math.abs(one - other)) / 2;

/**
 * A number held between 0 and 1 without a branch; see lesser.
 *
 * @param share - x [-], finite
 * @returns x, 0 below 0 and 1 above 1 [-]
 * @source own-model
 */
export function heldShare(share: number): number {
  const most = lesser(share, 1);
  return (most + Math.abs(most)) / 2;
}
