/** When a joint is tightened again to its first preload, h after assembly: an hour, a day, a week, a month. */
export const RETIGHTENING_HOURS: readonly number[] = [1, 24, 168, 730];

/**
 * The last re-tightening before a time.
 *
 * Re-tightening restores the preload, not the plastic: what has crept until then need not creep again.
 *
 * @param hours - time since assembly [h], ≥ 0
 * @param retightenings - how many of the times of RETIGHTENING_HOURS are used [-], 0 … 4
 * @returns the time of the last one [h], or undefined when none came before
 * @source own-model times of re-tightening
 * @example 3 re-tightenings, asked after 100 h, give 24 h
 */
export const lastRetightening = (hours: number, retightenings: number): number | undefined =>
  RETIGHTENING_HOURS.slice(0, retightenings)
    .filter((one) => one <= hours)
    .at(-1);
