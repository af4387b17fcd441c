/** Bars that a chart shows. */
const BARS = 60;
/** Bins a bar is kept in, so that quantiles are finer than bars. */
const BINS_PER_BAR = 64;
const BINS = BARS * BINS_PER_BAR;

/** Forces counted in equal bins from 0 up, N. */
export interface ForceBins {
  readonly top: number;
  /** Bins per force, 1/N. */
  readonly perForce: number;
  readonly bins: Uint32Array;
  below: number;
  above: number;
}

/** What a chart shows of forces. */
export interface ForceHistogram {
  /** Upper end of the last bar, N; every bar is as wide, the first begins at 0. */
  readonly top: number;
  readonly bars: readonly number[];
  /** Joints below 0 (the pull alone was too much), and beyond the last bar. */
  readonly below: number;
  readonly above: number;
}

/** Empty bins from 0 to a top [N], > 0. */
export const emptyBins = (top: number): ForceBins => ({
  top,
  perForce: BINS / top,
  bins: new Uint32Array(BINS),
  below: 0,
  above: 0,
});

/** Counts a force [N] once. */
export function countForce(into: ForceBins, force: number): void {
  if (force < 0) into.below += 1;
  else if (force >= into.top) into.above += 1;
  else {
    // A force just below the top can come out as the top: rounding must not put it beyond the last bin.
    const bin = Math.min(BINS - 1, Math.trunc(force * into.perForce));
    into.bins[bin] = (into.bins[bin] ?? 0) + 1;
  }
}

/** Bars of a chart. */
export const histogramOf = ({ top, bins, below, above }: ForceBins): ForceHistogram => ({
  top,
  below,
  above,
  bars: Array.from({ length: BARS }, (_, bar) =>
    bins.subarray(bar * BINS_PER_BAR, (bar + 1) * BINS_PER_BAR).reduce((sum, count) => sum + count, 0),
  ),
});
