import { gridPosterior } from './bond-grid.ts';
import { BETWEEN_SETUPS, PRIOR_FREEDOM, SETUP_RATIO, SIZE_RATIO, WITHIN_SETUP } from './bond-prior.ts';
import { type BondPosterior, type CouponRatio, countsOf, ratiosBySize } from './coupon-ratio.ts';

export type { BondPosterior, BondPrediction, CouponRatio } from './coupon-ratio.ts';

/**
 * What the coupons of one set-up (printer profile, material, setting method) say of its bond factor.
 *
 *     y = ln(measured/model) = μ + δ + ε        ε ~ N(0, σ²), δ of a size ~ N(0, σ²), μ ~ N(ln η0, 8·σ²)
 *     4 · 0.10²/σ² ~ χ² with 4 degrees of freedom
 *
 * In closed form where every coupon broke and was measured sharply, else on a grid. Without a coupon it is what is
 * assumed of every set-up. A bond factor carries over only at about the same knurled length over knurl diameter, which
 * is not looked at here; nor is whether the coupons were set alike.
 *
 * @param priorMedian - median bond factor before any coupon, η0 [-], > 0
 * @param ratios - of the coupons [-], in any order
 * @returns Student's t of ln η: next joint of a pulled size, of another size, and the set-up's median
 * @source own-model conjugate prior; the ratios 8 and 1, 0.10 and the 4 degrees of freedom are estimates
 */
export function bondPosterior(priorMedian: number, ratios: readonly CouponRatio[]): BondPosterior {
  if (ratios.length === 0) return priorOf(priorMedian);
  const sharp = ratios.every(({ outcome, ownDeviation }) => outcome === 'broke' && ownDeviation === 0);
  return sharp ? closedPosterior(priorMedian, ratios) : gridPosterior(priorMedian, ratios);
}

function priorOf(priorMedian: number): BondPosterior {
  const centre = Math.log(priorMedian);
  const freedom = PRIOR_FREEDOM;
  return {
    unpulled: { centre, scale: Math.hypot(BETWEEN_SETUPS, WITHIN_SETUP), freedom, coupons: 0, broke: 0 },
    bySize: new Map(),
    setup: { centre, scale: WITHIN_SETUP * Math.sqrt(SETUP_RATIO), freedom },
    method: 'prior',
  };
}

/** The coupons of one size, as differences from the prior median. */
interface SizeSum {
  readonly size: string;
  readonly count: number;
  readonly mean: number;
  /** Sum of squares about their mean. */
  readonly squares: number;
  /** What this size says of the set-up's median: 1/(variance of its mean over σ²). */
  readonly weight: number;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function sizeSum(size: string, differences: readonly number[]): SizeSum {
  const count = differences.length;
  const mean = sum(differences) / count;
  const squares = sum(differences.map((difference) => (difference - mean) ** 2));
  return { size, count, mean, squares, weight: count / (1 + SIZE_RATIO * count) };
}

/**
 * The normal-inverse-gamma posterior by sums over the sizes; every variance is in units of σ².
 *
 *     w = n/(1 + κδ·n)        1/Cμ = 1/κμ + Σw        u = Cμ·Σw·ȳ
 *     (4 + N)·s² = 4·0.10² + Σ(y − ȳ)² + Σw·(ȳ − u)² + u²/κμ
 *     size: u + b·(ȳ − u), b = κδ·w, variance (1 − b)²·Cμ + κδ/(1 + κδ·n) + 1
 */
function closedPosterior(priorMedian: number, ratios: readonly CouponRatio[]): BondPosterior {
  const prior = Math.log(priorMedian);
  const sizes = [...ratiosBySize(ratios)].map(([size, own]) =>
    sizeSum(
      size,
      own.map(({ logRatio }) => logRatio - prior),
    ),
  );
  const setupVariance = 1 / (1 / SETUP_RATIO + sum(sizes.map(({ weight }) => weight)));
  const shift = setupVariance * sum(sizes.map(({ weight, mean }) => weight * mean));
  const squares = sum(sizes.map((size) => size.squares + size.weight * (size.mean - shift) ** 2));
  const freedom = PRIOR_FREEDOM + ratios.length;
  const scatter = (PRIOR_FREEDOM * WITHIN_SETUP ** 2 + squares + shift ** 2 / SETUP_RATIO) / freedom;
  const studentOf = (centre: number, variance: number) => ({
    centre: prior + centre,
    scale: Math.sqrt(scatter * variance),
    freedom,
  });
  const predictionOf = (centre: number, variance: number) => ({
    ...studentOf(centre, variance + 1),
    ...countsOf(ratios),
  });
  return {
    unpulled: predictionOf(shift, setupVariance + SIZE_RATIO),
    bySize: new Map(
      sizes.map(({ size, count, mean, weight }) => {
        const own = SIZE_RATIO * weight;
        const variance = (1 - own) ** 2 * setupVariance + SIZE_RATIO / (1 + SIZE_RATIO * count);
        return [size, predictionOf(shift + own * (mean - shift), variance)];
      }),
    ),
    setup: studentOf(shift, setupVariance),
    method: 'closed-form',
  };
}
