/** State of a generator: four words of 32 bits, changed by every draw. */
export interface Generator {
  readonly state: Int32Array;
}

/** Odd step of the counter that spreads a seed: 2³²/golden ratio. */
const SPREADING_STEP = 0x9e3779b9;

/**
 * Words that follow from a seed and look unrelated, also for seeds next to each other.
 * A counter in odd steps, mixed: SplitMix of G. L. Steele, D. Lea and C. H. Flood (OOPSLA 2014) in 32 bits, with the
 * finaliser of A. Appleby's MurmurHash3 (both from memory).
 */
function spread(seed: number, place: number): number {
  let word = (seed + Math.imul(place, SPREADING_STEP)) | 0;
  word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
  return word ^ (word >>> 16);
}

/**
 * Generator of random numbers that gives the same numbers for the same seed, on every machine.
 *
 * @param seed - any whole number [-], 0 … 2³² − 1
 * @returns a generator with a state of its own; never the state of zeros that it could not leave
 */
export const seededGenerator = (seed: number): Generator => ({
  // The mixing is one to one: at most one of the four counters gives 0.
  state: Int32Array.of(spread(seed, 1), spread(seed, 2), spread(seed, 3), spread(seed, 4)),
});

const rotatedLeft = (word: number, places: number): number => (word << places) | (word >>> (32 - places));

/**
 * The next 32 random bits.
 *
 * xoshiro128** of D. Blackman and S. Vigna, Scrambled linear pseudorandom number generators, ACM Transactions on
 * Mathematical Software 47 (2021) 36 (from memory); period 2¹²⁸ − 1.
 *
 * @param generator - moves on by one step
 * @returns bits as a signed whole number [-], −2³¹ … 2³¹ − 1
 */
export function nextBits({ state }: Generator): number {
  const s1 = state[1] ?? 0;
  const bits = Math.imul(rotatedLeft(Math.imul(s1, 5), 7), 9);
  const s2 = (state[2] ?? 0) ^ (state[0] ?? 0);
  const s3 = (state[3] ?? 0) ^ s1;
  state[1] = s1 ^ s2;
  state[0] = (state[0] ?? 0) ^ s3;
  state[2] = s2 ^ (s1 << 9);
  state[3] = rotatedLeft(s3, 11);
  return bits;
}

/**
 * The next number between 0 and 1, neither end included, in 2³² equal steps.
 *
 * @param generator - moves on by one step
 * @returns u [-], 0 < u < 1
 */
export const uniformVariate = (generator: Generator): number =>
  ((nextBits(generator) >>> 0) + 0.5) * 2 ** -32;

/**
 * Fills an array with products of uniform numbers, each what as many single draws give, but quicker: the words of the
 * state stay in local variables. The step is that of nextBits, and a test holds the two together.
 *
 * @param generator - moves on by as many steps as there are factors in all
 * @param factors - uniform numbers in a product [-], ≥ 1
 * @param into - written over
 */
export function fillProducts(generator: Generator, factors: number, into: Float64Array): void {
  const { state } = generator;
  let s0 = state[0] ?? 0;
  let s1 = state[1] ?? 0;
  let s2 = state[2] ?? 0;
  let s3 = state[3] ?? 0;
  for (let place = 0; place < into.length; place += 1) {
    let product = 1;
    for (let factor = 0; factor < factors; factor += 1) {
      const five = Math.imul(s1, 5);
      const bits = Math.imul((five << 7) | (five >>> 25), 9);
      const shifted = s1 << 9;
      s2 ^= s0;
      s3 ^= s1;
      s1 ^= s2;
      s0 ^= s3;
      s2 ^= shifted;
      s3 = (s3 << 11) | (s3 >>> 21);
      product *= ((bits >>> 0) + 0.5) * 2 ** -32;
    }
    into[place] = product;
  }
  state[0] = s0;
  state[1] = s1;
  state[2] = s2;
  state[3] = s3;
}
