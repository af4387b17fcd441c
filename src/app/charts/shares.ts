/** Ticks of a share, from nothing to all. */
export const SHARES: readonly number[] = [0, 0.2, 0.4, 0.6, 0.8, 1];
