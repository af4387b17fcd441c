import { rootInBracket } from '../numerics/root.ts';
import { PRIOR_FREEDOM, SETUP_RATIO, SIZE_RATIO, WITHIN_SETUP } from './bond-prior.ts';
import type { CouponRatio } from './coupon-ratio.ts';
import type { NormalPart } from './normal-mixture.ts';
import {
  heldCount,
  likeliestMedian,
  type SizeLikelihood,
  sizeLikelihood,
  slopeAt,
} from './size-likelihood.ts';
import { bellOnLattice, type SizeMarginal, sizeMarginal, totalOf } from './size-marginal.ts';

const STEP_PER_DEVIATION = 0.5;

/** Everything known of a set-up if its scatter σ were known. */
export interface GivenScatter {
  readonly scatter: number;
  /** ln of the density of ln σ, but for a constant. */
  readonly logDensity: number;
  readonly setup: () => readonly NormalPart[];
  readonly unpulled: () => readonly NormalPart[];
  readonly pulled: (size: number) => readonly NormalPart[];
}

/** Likeliest median of the set-up over its sizes, in units of σ from the prior median; and the deviation about it. */
function likeliestSetup(sizes: readonly SizeLikelihood[]): {
  readonly at: number;
  readonly deviation: number;
} {
  const ends = [0, ...sizes.flatMap(({ mean, held }) => [mean, ...held.map(({ least }) => least)])];
  const held = totalOf(sizes.map(heldCount));
  const at = rootInBracket({
    f: (t) => totalOf(sizes.map((size) => likeliestMedian(size, t) - t)) / SIZE_RATIO - t / SETUP_RATIO,
    low: Math.min(...ends),
    high: Math.max(...ends) + SETUP_RATIO * held,
    tolerance: 1e-2,
  });
  const curvatures = sizes.map((size) => {
    const { curvature } = slopeAt(size, likeliestMedian(size, at));
    return curvature / (1 + SIZE_RATIO * curvature);
  });
  return { at, deviation: 1 / Math.sqrt(1 / SETUP_RATIO + totalOf(curvatures)) };
}

/**
 * Set-up and sizes for one scatter σ: the medians of the sizes and of the set-up summed over lattices that follow them.
 *
 *     p(σ|y) ~ σ^−4 · exp(−4 · 0.10²/(2σ²)) · ∫ φ(t/√κμ)/√κμ · ΠM(t) dt        over ln σ
 *
 * @param sizes - coupons of each size, logRatio less the logarithm of the prior median [-]
 * @param scatter - σ [-], > 0
 * @returns its density, and the distributions as sums of normal ones
 */
export function givenScatter(sizes: readonly (readonly CouponRatio[])[], scatter: number): GivenScatter {
  const likelihoods = sizes.map((ratios) => sizeLikelihood(ratios, scatter));
  const { at, deviation } = likeliestSetup(likelihoods);
  const marginals = likelihoods.map((size) => sizeMarginal(size, at));
  const step = STEP_PER_DEVIATION * deviation;
  const bell = bellOnLattice((place) => {
    const t = at + place * step;
    return totalOf(marginals.map(({ logMarginal }) => logMarginal(t))) - (t * t) / (2 * SETUP_RATIO);
  }, 0);
  const total = totalOf(bell.weights);
  const logPrior = -PRIOR_FREEDOM * (Math.log(scatter) + (WITHIN_SETUP / scatter) ** 2 / 2);
  const medians = bell.weights.map((weight, place) => ({
    at: at + (bell.first + place) * step,
    weight: weight / total,
  }));
  return {
    scatter,
    logDensity: logPrior + bell.greatest + Math.log(total * step),
    setup: () => smooth(medians, step).map((part) => inUnits(part, scatter)),
    unpulled: () =>
      medians.map(({ at: mean, weight }) => inUnits({ mean, variance: SIZE_RATIO + 1, weight }, scatter)),
    pulled: (size) => pulledParts(medians, marginals[size]).map((part) => inUnits(part, scatter)),
  };
}

interface Weighted {
  readonly at: number;
  readonly weight: number;
}

/** A normal distribution in units of σ. */
interface Scaled {
  readonly mean: number;
  readonly variance: number;
  readonly weight: number;
}

const inUnits = ({ mean, variance, weight }: Scaled, scatter: number): NormalPart => ({
  mean: mean * scatter,
  deviation: Math.sqrt(variance) * scatter,
  weight,
});

/** The next joint of a pulled size; places of the lattice that several medians of the set-up share are one part. */
function pulledParts(medians: readonly Weighted[], marginal: SizeMarginal | undefined): readonly Scaled[] {
  const parts = new Map<number, Scaled>();
  for (const { at, weight: outer } of medians) {
    for (const { centre, variance, weight } of marginal?.bells(at) ?? []) {
      const before = parts.get(centre)?.weight ?? 0;
      parts.set(centre, { mean: centre, variance: variance + 1, weight: before + outer * weight });
    }
  }
  return [...parts.values()];
}

/** Width of the bells below over the step. */
const BELL_PER_STEP = 0.7;

/** A density known on a lattice, as bells on it; the second difference takes away the variance that the bells add. */
function smooth(lattice: readonly Weighted[], step: number): readonly Scaled[] {
  const weightAt = (place: number): number => lattice[place]?.weight ?? 0;
  const variance = (BELL_PER_STEP * step) ** 2;
  return lattice.map(({ at, weight }, place) => {
    const difference = weightAt(place + 1) - 2 * weight + weightAt(place - 1);
    return { mean: at, variance, weight: weight - (BELL_PER_STEP ** 2 / 2) * difference };
  });
}
