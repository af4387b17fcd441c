/**
 * Polynomial by nested multiplication.
 *
 *     c0·x^n + c1·x^(n−1) + … + cn
 *
 * @param coefficients - highest power first [-], at least one
 * @param x - argument [-]
 * @returns value [-]
 */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}
