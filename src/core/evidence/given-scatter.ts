import { PRIOR_FREEDOM, SETUP_RATIO, SIZE_RATIO, WITHIN_SETUP } from './bond-prior.ts';
import type { CouponRatio } from './coupon-ratio.ts';
import { bellOnLattice, totalOf, type Weighted } from './lattice-bell.ts';
import type { NormalPart } from './normal-mixture.ts';
import {
  type LikeliestMedian,
  likeliestMedian,
  type SizeLikelihood,
  sizeLikelihood,
} from './size-likelihood.ts';
import { type Bell, sizeMarginal } from './size-marginal.ts';

/** Step of the lattice of medians over the deviation about the likeliest one. */
const STEP_PER_DEVIATION = 0.5;
/** The likeliest median is only where the lattice starts: in units of σ. */
const START_TOLERANCE = 0.2;

/** Everything known of a set-up if its scatter σ were known. */
export interface GivenScatter {
  readonly scatter: number;
  /** ln of the density of ln σ, but for a constant. */
  readonly logDensity: number;
  readonly setup: () => readonly NormalPart[];
  readonly unpulled: () => readonly NormalPart[];
  readonly pulled: (size: number) => readonly NormalPart[];
}

interface Likeliest {
  /** Median of the set-up over its sizes, and the deviation about it. */
  readonly at: number;
  readonly deviation: number;
  readonly sizes: readonly { readonly size: SizeLikelihood; readonly median: LikeliestMedian }[];
}

/** Medians of set-up and sizes that fit together best; Newton's method again, on a slope that falls and is convex. */
function likeliestOf(likelihoods: readonly SizeLikelihood[]): Likeliest {
  let at = 0;
  let sizes = likelihoods.map((size) => ({ size, median: likeliestMedian(size, at, at) }));
  for (;;) {
    const pull = totalOf(sizes.map(({ median }) => (median.at - at) / SIZE_RATIO)) - at / SETUP_RATIO;
    const bends = sizes.map(({ median: { curvature } }) => curvature / (1 + SIZE_RATIO * curvature));
    const precision = 1 / SETUP_RATIO + totalOf(bends);
    const next = at + pull / precision;
    if (Math.abs(next - at) < START_TOLERANCE) return { at, deviation: 1 / Math.sqrt(precision), sizes };
    sizes = sizes.map(({ size, median }) => ({ size, median: likeliestMedian(size, next, median.at) }));
    at = next;
  }
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
  const {
    at,
    deviation,
    sizes: likeliest,
  } = likeliestOf(sizes.map((ratios) => sizeLikelihood(ratios, scatter)));
  const marginals = likeliest.map(({ size, median }) => sizeMarginal(size, median));
  const step = STEP_PER_DEVIATION * deviation;
  const places: { readonly place: number; readonly value: number }[] = [];
  const bell = bellOnLattice(
    (place) => {
      const t = at + place * step;
      return totalOf(marginals.map(({ logMarginal }) => logMarginal(t))) - (t * t) / (2 * SETUP_RATIO);
    },
    0,
    (place, value) => places.push({ place, value }),
  );
  const logPrior = -PRIOR_FREEDOM * (Math.log(scatter) + (WITHIN_SETUP / scatter) ** 2 / 2);
  const medians = places
    .sort((a, b) => a.place - b.place)
    .map(({ place, value }) => ({ at: at + place * step, weight: value / bell.total }));
  return {
    scatter,
    logDensity: logPrior + bell.greatest + Math.log(bell.total * step),
    setup: () => inUnits(smooth(medians, step), scatter),
    unpulled: () =>
      inUnits(
        medians.map(({ at: mean, weight }) => ({ mean, variance: SIZE_RATIO + 1, weight })),
        scatter,
      ),
    pulled: (size) => inUnits(merged(marginals[size]?.nextJoint(medians) ?? []), scatter),
  };
}

const inUnits = (bells: readonly Bell[], scatter: number): readonly NormalPart[] =>
  bells.map(({ mean, variance, weight }) => ({
    mean: mean * scatter,
    deviation: Math.sqrt(variance) * scatter,
    weight,
  }));

/** Neighbours nearer than one deviation as one bell of the same mean and variance. */
function merged(bells: readonly Bell[]): readonly Bell[] {
  const groups: Bell[][] = [];
  for (const bell of bells) {
    const group = groups.at(-1);
    const start = group?.[0];
    if (start !== undefined && bell.mean - start.mean < Math.sqrt(bell.variance)) group?.push(bell);
    else groups.push([bell]);
  }
  return groups.map(together);
}

function together(bells: readonly Bell[]): Bell {
  const weight = totalOf(bells.map((bell) => bell.weight));
  const mean = totalOf(bells.map((bell) => bell.weight * bell.mean)) / weight;
  const squares = bells.map((bell) => bell.weight * (bell.variance + (bell.mean - mean) ** 2));
  return { mean, variance: totalOf(squares) / weight, weight };
}

/** Width of the bells below over the step. */
const BELL_PER_STEP = 0.7;

/** A density known on a lattice, as bells on it; the second difference takes away the variance that the bells add. */
function smooth(lattice: readonly Weighted[], step: number): readonly Bell[] {
  const weightAt = (place: number): number => lattice[place]?.weight ?? 0;
  const variance = (BELL_PER_STEP * step) ** 2;
  return lattice.map(({ at, weight }, place) => {
    const difference = weightAt(place + 1) - 2 * weight + weightAt(place - 1);
    return { mean: at, variance, weight: weight - (BELL_PER_STEP ** 2 / 2) * difference };
  });
}
