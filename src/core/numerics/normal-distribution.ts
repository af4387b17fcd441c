import { polynomial } from './polynomial.ts';

/** 1/√(2π). */
const DENSITY_AT_ZERO = 0.3989422804014327;

/**
 * Rational approximations by W. J. Cody, Math. Comp. 23 (1969) 631–637, in the form of the normal integral;
 * highest power first.
 */
const NEAR = {
  numerator: [
    0.06568233791820745, 2.2352520354606837, 161.02823106855587, 1067.6894854603709, 18154.98125334356,
  ],
  denominator: [1, 47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673],
};
const MIDDLE = {
  numerator: [
    1.0765576773720192e-8, 0.39894151208813466, 8.883149794388377, 93.50665613217785, 597.2702763948002,
    2494.5375852903726, 6848.190450536283, 11602.65143764735, 9842.714838383978,
  ],
  denominator: [
    1, 22.266688044328117, 235.387901782625, 1519.3775994075547, 6485.558298266761, 18615.571640885097,
    34900.95272114598, 38912.00328609327, 19685.429676859992,
  ],
};
const FAR = {
  numerator: [
    0.023073441764940174, 0.215898534057957, 0.12740116116024736, 0.022235277870649807, 0.0014216191932278934,
    0.000029112874951168793,
  ],
  denominator: [
    1, 1.284260096144911, 0.4682382124808651, 0.06598813786892856, 0.003782396332027582,
    0.00007297515550839662,
  ],
};

const ratio = (r: { numerator: readonly number[]; denominator: readonly number[] }, x: number): number =>
  polynomial(r.numerator, x) / polynomial(r.denominator, x);

/**
 * exp(−x²/2) without the rounding of x² in the exponent: x is split into a part with few digits and a rest.
 */
function gauss(x: number): number {
  const head = Math.trunc(x * 16) / 16;
  return Math.exp((-head * head) / 2) * Math.exp((-(x - head) * (x + head)) / 2);
}

/** Chance above x, for x ≥ 0. */
function upperTail(x: number): number {
  if (x <= 0.67448975) return 0.5 - x * ratio(NEAR, x * x);
  if (x <= Math.sqrt(32)) return gauss(x) * ratio(MIDDLE, x);
  const inverseSquare = 1 / (x * x);
  return (gauss(x) * (DENSITY_AT_ZERO - inverseSquare * ratio(FAR, inverseSquare))) / x;
}

/**
 * Density of the standard normal distribution.
 *
 *     φ(x) = exp(−x²/2)/√(2π)
 *
 * @param x - standard deviations from the mean [-]
 * @returns φ [-]
 */
export const normalDensity = (x: number): number => DENSITY_AT_ZERO * gauss(x);

/**
 * Chance that a standard normal variable is at most x.
 *
 *     Φ(x) = ∫ from −∞ to x of φ(t) dt
 *
 * The lower tail keeps its relative accuracy down to x = −37; the chance above x is Φ(−x), never 1 − Φ(x).
 *
 * @param x - standard deviations from the mean [-]
 * @returns Φ [-], 0 … 1
 * @example Φ(−1.96) is 0.0249979
 */
export const normalProbability = (x: number): number => (x < 0 ? upperTail(-x) : 1 - upperTail(x));

/**
 * Rational approximations of algorithm AS 241 (PPND16), M. J. Wichura, Applied Statistics 37 (1988) 477–484;
 * highest power first.
 */
const CENTRE = {
  numerator: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  denominator: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
};
const SHOULDER = {
  numerator: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  denominator: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
};
const TAIL = {
  numerator: [
    2.0103343992922881e-7, 0.000027115555687434876, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  denominator: [
    2.0442631033899397e-15, 1.421511758316446e-7, 0.000018463183175100548, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ],
};

/**
 * Value that a standard normal variable stays below with chance p: the inverse of the distribution function.
 *
 *     x with Φ(x) = p
 *
 * @param p - chance [-], 0 < p < 1
 * @returns x [-]
 * @example p 0.95 gives 1.6448536
 */
export function normalQuantile(p: number): number {
  const fromMedian = p - 0.5;
  if (Math.abs(fromMedian) <= 0.425) return fromMedian * ratio(CENTRE, 0.180625 - fromMedian * fromMedian);
  const depth = Math.sqrt(-Math.log(fromMedian < 0 ? p : 1 - p));
  const x = depth <= 5 ? ratio(SHOULDER, depth - 1.6) : ratio(TAIL, depth - 5);
  return fromMedian < 0 ? -x : x;
}
