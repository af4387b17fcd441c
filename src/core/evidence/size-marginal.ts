import { SIZE_RATIO } from './bond-prior.ts';
import { bellOnLattice, type LatticeBell, type Weighted } from './lattice-bell.ts';
import { type LikeliestMedian, logLikelihoodAt, type SizeLikelihood, slopeAt } from './size-likelihood.ts';

/** Step of a lattice over the deviation of what is summed: such sums of a smooth bell are exact to some 1e-9. */
const STEP_PER_DEVIATION = 0.7;

/** A normal distribution of a mixture, in units of σ. */
export interface Bell {
  readonly mean: number;
  readonly variance: number;
  readonly weight: number;
}

/** A size with its own median summed over. */
export interface SizeMarginal {
  /** ln of the likelihood of the set-up's median t. */
  readonly logMarginal: (setup: number) => number;
  /** The next joint of the size, when the medians of the set-up have these shares; in the order of the means. */
  readonly nextJoint: (setups: readonly Weighted[]) => readonly Bell[];
}

/**
 * A size's own median x integrated out, exactly where all its coupons broke, else over an even lattice.
 *
 *     M(t) = ∫ φ((x − t)/√κδ)/√κδ · L(x) dx
 *
 * @param size - its coupons
 * @param likeliest - its likeliest median: it sets the lattice
 * @returns ln M and the next joint
 */
export const sizeMarginal = (size: SizeLikelihood, likeliest: LikeliestMedian): SizeMarginal =>
  size.held.length === 0 ? brokenMarginal(size) : latticeMarginal(size, likeliest);

function brokenMarginal({ precision, mean, constant }: SizeLikelihood): SizeMarginal {
  const spread = 1 + SIZE_RATIO * precision;
  return {
    logMarginal: (t) => constant - Math.log(spread) / 2 - ((precision / spread) * (t - mean) ** 2) / 2,
    nextJoint: (setups) =>
      setups.map(({ at, weight }) => ({
        mean: (at + SIZE_RATIO * precision * mean) / spread,
        variance: SIZE_RATIO / spread + 1,
        weight,
      })),
  };
}

/** The curvature is taken a deviation below the likeliest median as well, where held coupons bend more. */
function latticeStep(size: SizeLikelihood, { at, curvature }: LikeliestMedian): number {
  const below = at - 1 / Math.sqrt(1 / SIZE_RATIO + curvature);
  return STEP_PER_DEVIATION / Math.sqrt(1 / SIZE_RATIO + Math.max(curvature, slopeAt(size, below).curvature));
}

function latticeMarginal(size: SizeLikelihood, likeliest: LikeliestMedian): SizeMarginal {
  const origin = likeliest.at;
  const step = latticeStep(size, likeliest);
  const known: number[] = [];
  const likelihoodAt = (place: number): number => {
    // Places of both signs in one array: 0, −1, 1, −2, 2, …
    const index = place < 0 ? -2 * place - 1 : 2 * place;
    known[index] ??= logLikelihoodAt(size, origin + place * step);
    return known[index];
  };
  let peak = 0;
  const bellAt = (t: number, visit?: (place: number, value: number) => void): LatticeBell => {
    const logValue = (place: number): number => {
      const away = origin + place * step - t;
      return likelihoodAt(place) - (away * away) / (2 * SIZE_RATIO);
    };
    const bell = bellOnLattice(logValue, peak, visit);
    peak = bell.peak;
    return bell;
  };
  const constant = size.constant + Math.log(step / Math.sqrt(2 * Math.PI * SIZE_RATIO));
  return {
    logMarginal: (t) => {
      const { greatest, total } = bellAt(t);
      return constant + greatest + Math.log(total);
    },
    nextJoint: (setups) => {
      const shares = new Map<number, number>();
      for (const { at, weight } of setups) {
        const share = weight / bellAt(at).total;
        bellAt(at, (place, value) => shares.set(place, (shares.get(place) ?? 0) + share * value));
      }
      return [...shares]
        .sort(([a], [b]) => a - b)
        .map(([place, weight]) => ({ mean: origin + place * step, variance: 1, weight }));
    },
  };
}
