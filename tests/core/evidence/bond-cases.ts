import type { BondPosterior, CouponRatio } from '../../../src/core/evidence/bond-evidence.ts';

/** A ratio as JSON has it. */
interface StoredRatio {
  readonly size: string;
  readonly logRatio: number;
  readonly outcome: string;
  readonly ownDeviation: number;
}

export const ratiosOf = (stored: readonly StoredRatio[]): readonly CouponRatio[] =>
  stored.map((ratio) => ({ ...ratio, outcome: ratio.outcome === 'held' ? 'held' : 'broke' }));

export const broke = (size: string, logRatio: number): CouponRatio => ({
  size,
  logRatio,
  outcome: 'broke',
  ownDeviation: 0,
});

export const held = (size: string, logRatio: number): CouponRatio => ({
  ...broke(size, logRatio),
  outcome: 'held',
});

/** The prediction of a size that the test knows to be there. */
export function predictionOf(posterior: BondPosterior, size: string) {
  const prediction = posterior.bySize.get(size);
  if (prediction === undefined) throw new Error(`no prediction of ${size}`);
  return prediction;
}
