import { PRIOR_FREEDOM, WITHIN_SETUP } from './bond-prior.ts';
import { type BondPosterior, type CouponRatio, countsOf, ratiosBySize } from './coupon-ratio.ts';
import { type GivenScatter, givenScatter } from './given-scatter.ts';
import { type NormalPart, studentLike } from './normal-mixture.ts';

/** Scatters whose density is below exp(−14) of the greatest are left out. */
const NEGLIGIBLE = 14;
/** Parts of a mixture that weigh less are left out; the heaviest scatter weighs 1. */
const LEAST_WEIGHT = 1e-9;
/** Finest step of ln σ, and the first one in such steps. */
const FINEST = 2 ** -7;
const FIRST_STRIDE = 2 ** 6;
/** So many scatters must lie within exp(−2) of the greatest density, about two deviations each side. */
const ENOUGH = 5;

interface Step {
  readonly place: number;
  readonly given: GivenScatter;
}

/** Ends of ln σ beyond which no coupons of these ratios can take it, generously. */
function limitsOf(sizes: readonly (readonly CouponRatio[])[]): {
  readonly low: number;
  readonly high: number;
} {
  const ratios = sizes.flat();
  const farthest = ratios.map(({ logRatio, ownDeviation }) => Math.max(Math.abs(logRatio), ownDeviation));
  return {
    low: Math.log(WITHIN_SETUP / Math.sqrt(PRIOR_FREEDOM + ratios.length)) - 1,
    high: Math.log(Math.max(WITHIN_SETUP, ...farthest)) + NEGLIGIBLE / PRIOR_FREEDOM,
  };
}

/** Scatters with even steps of ln σ where their density counts, fine enough to be summed. */
function scatterLattice(sizes: readonly (readonly CouponRatio[])[]): readonly GivenScatter[] {
  const { low, high } = limitsOf(sizes);
  const known = new Map<number, Step>();
  const at = (place: number): Step => {
    const step = known.get(place) ?? { place, given: givenScatter(sizes, Math.exp(low + place * FINEST)) };
    known.set(place, step);
    return step;
  };
  const count = Math.ceil((high - low) / (FIRST_STRIDE * FINEST));
  let steps = Array.from({ length: count + 1 }, (_, index) => at(index * FIRST_STRIDE));
  for (let stride = FIRST_STRIDE; ; stride /= 2) {
    const greatest = steps.reduce((most, { given }) => Math.max(most, given.logDensity), -Infinity);
    steps = steps.filter(({ given }) => given.logDensity > greatest - NEGLIGIBLE);
    const near = steps.filter(({ given }) => given.logDensity > greatest - 2).length;
    if (near >= ENOUGH || stride === 1) return steps.map(({ given }) => given);
    const places = new Set(steps.flatMap(({ place }) => [place - stride / 2, place, place + stride / 2]));
    steps = [...places].map(at);
  }
}

/**
 * What the coupons of one set-up say of its bond factor, by sums over the scatter, the set-up and its sizes: for coupons
 * that held, and for ratios with a deviation of their own.
 *
 *     broke: φ((y − x)/√(σ² + own²))/√(σ² + own²)        held: Φ((x − y)/√(σ² + own²))        x median of the size
 *
 * The next joint is a mixture of normal distributions. It is given as Student's t with the same median and 5 %
 * quantile; its freedom, between 4 and 4 + n, follows the 1 ‰ quantile.
 *
 * @param priorMedian - median bond factor before any coupon, η0 [-], > 0
 * @param ratios - of the coupons [-], at least one, in any order
 * @returns Student's t of ln η: next joint of a pulled size, of another size, and the set-up's median
 * @source own-model conjugate prior
 */
export function gridPosterior(priorMedian: number, ratios: readonly CouponRatio[]): BondPosterior {
  const prior = Math.log(priorMedian);
  const bySize = ratiosBySize(ratios);
  const sizes = [...bySize.values()].map((own) =>
    own.map((ratio) => ({ ...ratio, logRatio: ratio.logRatio - prior })),
  );
  const scatters = scatterLattice(sizes);
  const greatest = scatters.reduce((most, { logDensity }) => Math.max(most, logDensity), -Infinity);
  const studentOf = (partsOf: (given: GivenScatter) => readonly NormalPart[]) => {
    const parts = scatters.flatMap((given) => {
      const share = Math.exp(given.logDensity - greatest);
      return partsOf(given)
        .map((part) => ({ ...part, weight: part.weight * share }))
        .filter(({ weight }) => Math.abs(weight) > LEAST_WEIGHT);
    });
    const student = studentLike(parts, PRIOR_FREEDOM, PRIOR_FREEDOM + ratios.length);
    return { ...student, centre: prior + student.centre };
  };
  const predictionOf = (partsOf: (given: GivenScatter) => readonly NormalPart[]) => ({
    ...studentOf(partsOf),
    ...countsOf(ratios),
  });
  return {
    unpulled: predictionOf((given) => given.unpulled()),
    bySize: new Map(
      [...bySize.keys()].map((size, place) => [size, predictionOf((given) => given.pulled(place))]),
    ),
    setup: studentOf((given) => given.setup()),
    method: 'grid',
  };
}
