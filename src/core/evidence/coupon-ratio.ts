import type { Entry } from '../sources/derived.ts';

/** What one coupon says of the bond factor of its set-up. */
export interface CouponRatio {
  /** Id of the insert. */
  readonly size: string;
  /** ln(measured/model at bond factor 1), [-]. */
  readonly logRatio: number;
  /** 'broke': the bond gave way at this ratio; 'held': it is at least this. */
  readonly outcome: 'broke' | 'held';
  /** Further standard deviation of this ratio's logarithm (friction of a torque test, resolution of a scale), [-], ≥ 0. */
  readonly ownDeviation: number;
}

/** Place, width and tail of Student's t for a logarithm, [-]. */
export interface LogStudent {
  readonly centre: number;
  readonly scale: number;
  readonly freedom: number;
}

/** What is known of the logarithm of the bond factor of the next joint. */
export interface BondPrediction extends LogStudent {
  /** How many coupons spoke, in all. */
  readonly coupons: number;
  /** How many of them broke. */
  readonly broke: number;
}

/** What is known of one set-up. */
export interface BondPosterior {
  /** Next joint of a size that nobody pulled. */
  readonly unpulled: BondPrediction;
  /** Next joint of each size that was pulled. */
  readonly bySize: ReadonlyMap<string, BondPrediction>;
  /** Median of the set-up over its sizes. */
  readonly setup: LogStudent;
  readonly method: 'prior' | 'closed-form' | 'grid';
}

/** One coupon of what a bond was learned from. */
export interface OriginCoupon {
  readonly size: string;
  /** Bond factor that it showed [-], with its way. */
  readonly bond: Entry;
}

/** What a bond was learned from: kept for the way to it. */
export interface BondOrigin {
  /** Bond factor before any coupon [-], with its way. */
  readonly priorMedian: Entry;
  readonly coupons: readonly OriginCoupon[];
  readonly method: BondPosterior['method'];
  /** Id of the insert; absent: of one that nobody pulled. */
  readonly size?: string;
}

/** The ratios of each size, in the order in which the sizes first come. */
export function ratiosBySize(ratios: readonly CouponRatio[]): ReadonlyMap<string, readonly CouponRatio[]> {
  const sizes = new Map<string, CouponRatio[]>();
  for (const ratio of ratios) {
    const same = sizes.get(ratio.size);
    if (same === undefined) sizes.set(ratio.size, [ratio]);
    else same.push(ratio);
  }
  return sizes;
}

/** How many spoke, and how many of them broke. */
export const countsOf = (
  ratios: readonly CouponRatio[],
): { readonly coupons: number; readonly broke: number } => ({
  coupons: ratios.length,
  broke: ratios.filter(({ outcome }) => outcome === 'broke').length,
});
