import type { Capacity } from '../../core/pull-out/limit.ts';

/**
 * Where 1 joint in 20 holds more, for a scatter that is even on a logarithmic scale.
 *
 *     upper = median² / characteristic
 *
 * The characteristic value is where 1 in 20 holds less; this is its mirror about the median.
 */
export const upperEnd = (median: number, characteristic: number): number =>
  characteristic > 0 ? (median * median) / characteristic : median;

/** The three values that a limit is drawn from; one alone where a standard gives a minimum and no spread. */
export interface Spread {
  readonly characteristic: number;
  readonly median: number;
  readonly upper: number;
}

export const spreadOf = ({ median, characteristic }: Capacity): Spread => ({
  characteristic: characteristic.value,
  median: median.value,
  upper: upperEnd(median.value, characteristic.value),
});
