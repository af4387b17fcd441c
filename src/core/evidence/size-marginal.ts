import { SIZE_RATIO } from './bond-prior.ts';
import { likeliestMedian, logLikelihoodAt, type SizeLikelihood, slopeAt } from './size-likelihood.ts';

/** Terms below exp(−20) of the greatest are left out. */
export const NEGLIGIBLE = 20;

/** Step of a lattice over the deviation of what is summed: such sums of a smooth bell are exact to some 1e-9. */
const STEP_PER_DEVIATION = 0.7;

/** A size's own median as a sum of bells, when the median of the set-up is given; in units of σ. */
export interface SizeBell {
  readonly centre: number;
  readonly variance: number;
  readonly weight: number;
}

/** A size with its own median summed over. */
export interface SizeMarginal {
  /** ln of the likelihood of the set-up's median t. */
  readonly logMarginal: (setup: number) => number;
  /** Where the size's own median then lies; weights add up to 1. */
  readonly bells: (setup: number) => readonly SizeBell[];
}

/**
 * A size's own median x integrated out, exactly where all its coupons broke, else over an even lattice.
 *
 *     M(t) = ∫ φ((x − t)/√κδ)/√κδ · L(x) dx
 *
 * @param size - its coupons
 * @param near - likeliest median of the set-up, in units of σ [-]: it sets the step of the lattice
 * @returns ln M and the medians behind it
 */
export const sizeMarginal = (size: SizeLikelihood, near: number): SizeMarginal =>
  size.held.length === 0 ? brokenMarginal(size) : latticeMarginal(size, near);

function brokenMarginal({ precision, mean, constant }: SizeLikelihood): SizeMarginal {
  const spread = 1 + SIZE_RATIO * precision;
  return {
    logMarginal: (t) => constant - Math.log(spread) / 2 - ((precision / spread) * (t - mean) ** 2) / 2,
    bells: (t) => [
      { centre: (t + SIZE_RATIO * precision * mean) / spread, variance: SIZE_RATIO / spread, weight: 1 },
    ],
  };
}

/** The curvature is taken a deviation below the likeliest median, where held coupons bend it more. */
function latticeStep(size: SizeLikelihood, origin: number): number {
  const { curvature } = slopeAt(size, origin);
  const below = origin - 1 / Math.sqrt(1 / SIZE_RATIO + curvature);
  return STEP_PER_DEVIATION / Math.sqrt(1 / SIZE_RATIO + Math.max(curvature, slopeAt(size, below).curvature));
}

function latticeMarginal(size: SizeLikelihood, near: number): SizeMarginal {
  const origin = likeliestMedian(size, near);
  const step = latticeStep(size, origin);
  const known = new Map<number, number>();
  const likelihoodAt = (place: number): number => {
    const before = known.get(place);
    if (before !== undefined) return before;
    const value = logLikelihoodAt(size, origin + place * step);
    known.set(place, value);
    return value;
  };
  let peak = 0;
  const termsAt = (t: number) => {
    const terms = bellOnLattice((place) => {
      const away = origin + place * step - t;
      return likelihoodAt(place) - (away * away) / (2 * SIZE_RATIO);
    }, peak);
    peak = terms.peak;
    return terms;
  };
  const constant = size.constant + Math.log(step / Math.sqrt(2 * Math.PI * SIZE_RATIO));
  return {
    logMarginal: (t) => {
      const { greatest, weights } = termsAt(t);
      return constant + greatest + Math.log(totalOf(weights));
    },
    bells: (t) => {
      const { first, weights } = termsAt(t);
      const total = totalOf(weights);
      return weights.map((weight, place) => ({
        centre: origin + (first + place) * step,
        variance: 0,
        weight: weight / total,
      }));
    },
  };
}

export const totalOf = (values: readonly number[]): number => {
  let total = 0;
  for (const value of values) total += value;
  return total;
};

/** A bell on an even lattice: where it starts and peaks, ln of its greatest value, and its values over that. */
export interface LatticeBell {
  readonly first: number;
  readonly peak: number;
  readonly greatest: number;
  readonly weights: readonly number[];
}

/**
 * All that counts of a function with one peak, found by climbing from a start and walking down both sides.
 *
 * @param logValue - ln of the function at a whole place [-], rising to one peak and falling after it
 * @param start - place to climb from [-]
 * @returns values over the greatest one, down to exp(−20)
 */
export function bellOnLattice(logValue: (place: number) => number, start: number): LatticeBell {
  let peak = start;
  let greatest = logValue(peak);
  for (const side of [1, -1]) {
    for (let next = logValue(peak + side); next > greatest; next = logValue(peak + side)) {
      peak += side;
      greatest = next;
    }
  }
  const below: number[] = [];
  let first = peak;
  for (let value = logValue(first - 1); value > greatest - NEGLIGIBLE; value = logValue(first - 1)) {
    below.push(Math.exp(value - greatest));
    first -= 1;
  }
  const weights = [...below.reverse(), 1];
  let last = peak;
  for (let value = logValue(last + 1); value > greatest - NEGLIGIBLE; value = logValue(last + 1)) {
    weights.push(Math.exp(value - greatest));
    last += 1;
  }
  return { first, peak, greatest, weights };
}
