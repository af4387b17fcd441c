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
  // By index: the iterator of a list boxes every number, and this is called a million times.
  for (let place = 0; place < coefficients.length; place += 1) sum = sum * x + (coefficients[place] ?? 0);
  return sum;
}
