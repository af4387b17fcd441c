/** Terms below exp(−14) of the greatest are left out. */
const NEGLIGIBLE = 14;

/** A place on a lattice with its share. */
export interface Weighted {
  readonly at: number;
  readonly weight: number;
}

/** Sum of some numbers, [-]. */
export const totalOf = (values: readonly number[]): number => {
  let total = 0;
  for (const value of values) total += value;
  return total;
};

/** A bell on an even lattice: where it peaks, ln of its greatest value, and the sum of its values over that. */
export interface LatticeBell {
  readonly peak: number;
  readonly greatest: number;
  readonly total: number;
}

/**
 * Sums a function with one peak over the whole places, found by climbing from a start and walking down both sides.
 *
 * @param logValue - ln of the function at a whole place [-], rising to one peak and falling after it
 * @param start - place to climb from [-]
 * @param visit - is shown each place with its value over the greatest one, down to exp(−14)
 * @returns peak, greatest value and sum
 */
export function bellOnLattice(
  logValue: (place: number) => number,
  start: number,
  visit?: (place: number, value: number) => void,
): LatticeBell {
  let peak = start;
  let greatest = logValue(peak);
  for (const side of [1, -1]) {
    for (let next = logValue(peak + side); next > greatest; next = logValue(peak + side)) {
      peak += side;
      greatest = next;
    }
  }
  let total = 1;
  visit?.(peak, 1);
  for (const side of [1, -1]) {
    let place = peak + side;
    for (let log = logValue(place) - greatest; log > -NEGLIGIBLE; log = logValue(place) - greatest) {
      const value = Math.exp(log);
      total += value;
      visit?.(place, value);
      place += side;
    }
  }
  return { peak, greatest, total };
}
