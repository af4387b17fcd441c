import type { InsertDimensions, MeasuredLength } from '../inserts/dimensions.ts';
import { estimatedKnurledLength } from '../inserts/insert-dimensions.ts';
import type { Situation } from '../pull-out/situation.ts';

function shifted(
  { estimate, standardUncertainty, readings }: MeasuredLength,
  deviations: number,
): MeasuredLength {
  const value = estimate.value + deviations * standardUncertainty.value;
  return { estimate: { ...estimate, value }, standardUncertainty, readings };
}

/** An estimated knurled length follows the knurl diameter that it was estimated from; a measured one stands alone. */
const isEstimated = (insert: InsertDimensions): boolean => insert.knurledLength.readings === 0;

function withKnurlDiameter(insert: InsertDimensions, deviations: number): InsertDimensions {
  const knurlDiameter = shifted(insert.knurlDiameter, deviations);
  const knurledLength = isEstimated(insert)
    ? estimatedKnurledLength(insert.length, knurlDiameter)
    : insert.knurledLength;
  return { ...insert, knurlDiameter, knurledLength };
}

/** The situation with one quantity moved by a number of its standard deviations. */
export interface Shifts {
  readonly knurlDiameter: (deviations: number) => Situation;
  readonly wall: (deviations: number) => Situation;
}

/**
 * What the failure modes are asked with when a reading or the wall is not what it was taken for.
 *
 * Only the insert's own size or the wall moves: the hole stays as it was designed from the readings.
 *
 * @param situation - as designed
 * @param wallDeviation - standard deviation of the wall [mm]
 * @returns a situation for a shift of each quantity in standard deviations [-]
 * @source jcgm-100 standard uncertainty of a reading
 * @source own-model the wall repeats as holes do
 */
export const shiftsOf = (situation: Situation, wallDeviation: number): Shifts => ({
  knurlDiameter: (deviations) => ({ ...situation, insert: withKnurlDiameter(situation.insert, deviations) }),
  wall: (deviations) => ({
    ...situation,
    wall: { ...situation.wall, value: Math.max(0, situation.wall.value + deviations * wallDeviation) },
  }),
});
