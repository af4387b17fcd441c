import { fillProducts, type Generator, uniformVariate } from './generator.ts';
import { normalVariate } from './normal-variate.ts';
import { quickLogarithm } from './quick-logarithm.ts';

/**
 * How much wider than a normal one a single draw of Student's t scatters: t = z · w.
 *
 *     w = √(ν/χ²)        χ² = −2 · ln(u1 · u2 · … · u(ν/2)), and z² besides where ν is odd
 *
 * Several normal numbers z that share one w are Student-distributed each and doubtful together: the scatter itself is
 * what is not known.
 *
 * @param generator - moves on by about ν/2 steps
 * @param degrees - degrees of freedom ν [-], whole, ≥ 1
 * @returns w [-], > 0
 */
export function studentScale(generator: Generator, degrees: number): number {
  let product = 1;
  for (let drawn = 2; drawn <= degrees; drawn += 2) product *= uniformVariate(generator);
  const odd = degrees % 2 === 1 ? normalVariate(generator) ** 2 : 0;
  return Math.sqrt(degrees / (odd - 2 * quickLogarithm(product)));
}

/** Fills an array with such widths: quicker than one by one where no normal number is asked for in between. */
export function fillStudentScale(generator: Generator, degrees: number, into: Float64Array): void {
  if (degrees % 2 === 1) {
    for (let place = 0; place < into.length; place += 1) into[place] = studentScale(generator, degrees);
    return;
  }
  fillProducts(generator, degrees / 2, into);
  for (let place = 0; place < into.length; place += 1) {
    into[place] = Math.sqrt(degrees / (-2 * quickLogarithm(into[place] ?? 1)));
  }
}
