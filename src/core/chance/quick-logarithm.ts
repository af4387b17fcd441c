/** Steps that the numbers from 1 to 2 are looked up in. */
const STEPS = 128;
/** One over the middle of each step, and the logarithm of the middle. */
const SHARES = Float64Array.from({ length: STEPS }, (_, step) => STEPS / (STEPS + step + 0.5));
const LOGARITHMS = SHARES.map((share) => -Math.log(share));
/** Bits of a number that are looked at, and so many places of two. */
const BITS = 32;
const POWERS = Float64Array.from({ length: BITS + 1 }, (_, power) => 2 ** power);
const WHOLE = 2 ** BITS;

/**
 * The natural logarithm of a number below 1, to ten decimals: quicker than the exact one, and far closer than any
 * sampling.
 *
 *     ln x = ln c − k · ln 2 + ln(1 + r)        m = x · 2^k, 1 ≤ m < 2, c the middle of its step, r = m/c − 1
 *     ln(1 + r) = r − r²/2 + r³/3, the rest below r⁴/4, |r| ≤ 1/256
 *
 * @param x - any number [-], ≥ 0; exact below 2⁻³² and from 1 on
 * @returns ln x [-], error below 10⁻¹⁰
 * @source own-model series of the logarithm
 * @example x ½ gives −0.6931471806
 */
export function quickLogarithm(x: number): number {
  const word = x * WHOLE;
  if (!(word >= 1 && x < 1)) return Math.log(x);
  const k = Math.clz32(word) + 1;
  const m = x * (POWERS[k] ?? 1);
  const step = Math.trunc((m - 1) * STEPS);
  const r = m * (SHARES[step] ?? 1) - 1;
  return (LOGARITHMS[step] ?? 0) - k * Math.LN2 + r * (1 + r * (-1 / 2 + r * (1 / 3)));
}
