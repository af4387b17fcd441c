import { effectiveDrawnOf, LEAST_SIDES } from './facets.ts';
import { holePoint } from './hole-point.ts';
import type { HoleReading } from './hole-reading.ts';

/** Errors between these raise no question, mm (estimate; unknown printers spread over some 0.3 mm). */
export const USUAL_ERRORS = { least: -0.6, greatest: 0.3 } as const;
/** Errors beyond these are no printed hole of that drawing, mm (estimate; the worst one met in print is −1.17 mm). */
export const BELIEVED_ERRORS = { least: -1.5, greatest: 0.8 } as const;
/** Least excess over the drawing that is taken for a swap, mm: as much as holes usually close. */
export const LEAST_CLOSING = 0.1;
/** How near the swapped error must come to that of the other readings, ± mm (estimate). */
export const SWAP_TOLERANCE = 0.15;
/** Other readings that must speak before a swap is suspected, [-]. */
export const READINGS_FOR_SWAP = 2;
const MILLIMETRES_PER_INCH = 25.4;

/** Which of the two diameters. */
export type HoleField = 'drawn' | 'measured';

export type HoleReadingFault =
  | { readonly code: 'too-few-facets'; readonly facets: number; readonly least: number }
  | {
      readonly code: 'looks-like-inches';
      readonly field: HoleField | 'both';
      readonly value: number;
      readonly inMillimetres: number;
    }
  | {
      readonly code: 'looks-like-radius';
      readonly field: HoleField;
      readonly value: number;
      readonly diameter: number;
    }
  | {
      readonly code: 'drawn-and-measured-swapped';
      readonly drawn: number;
      readonly measured: number;
      /** Median error of the other readings, mm. */
      readonly others: number;
    }
  | {
      readonly code: 'error-implausible';
      readonly drawn: number;
      readonly measured: number;
      readonly error: number;
      /** The end that it lies beyond, mm. */
      readonly limit: number;
    };

/** Smallest hole that anybody prints for an insert or a gauge, mm: below it both numbers are taken for inches. */
const LEAST_HOLE = 1;

const suits = (measured: number, drawn: number): boolean =>
  measured - drawn >= USUAL_ERRORS.least && measured - drawn <= USUAL_ERRORS.greatest;

/** Whether both diameters are so small that they were read in inches. */
export const bothLookLikeInches = (drawn: number, measured: number): boolean =>
  drawn < LEAST_HOLE &&
  measured < LEAST_HOLE &&
  drawn * MILLIMETRES_PER_INCH >= LEAST_HOLE &&
  suits(measured * MILLIMETRES_PER_INCH, drawn * MILLIMETRES_PER_INCH);

/** What is wrong with one measured value beside its drawing, taken alone. */
function faultOfValue(drawn: number, measured: number): HoleReadingFault | undefined {
  const inches = (field: HoleField | 'both', value: number): HoleReadingFault => {
    return { code: 'looks-like-inches', field, value, inMillimetres: value * MILLIMETRES_PER_INCH };
  };
  const radius = (field: HoleField, value: number): HoleReadingFault => {
    return { code: 'looks-like-radius', field, value, diameter: 2 * value };
  };
  if (bothLookLikeInches(drawn, measured)) return inches('both', measured);
  if (suits(measured, drawn)) return undefined;
  if (suits(measured * MILLIMETRES_PER_INCH, drawn)) return inches('measured', measured);
  if (suits(measured, drawn * MILLIMETRES_PER_INCH)) return inches('drawn', drawn);
  if (suits(2 * measured, drawn)) return radius('measured', measured);
  if (suits(measured, 2 * drawn)) return radius('drawn', drawn);
  return implausible(drawn, measured);
}

/** Whether an error lies beyond what is believed of a printed hole. */
function implausible(drawn: number, measured: number): HoleReadingFault | undefined {
  const error = measured - drawn;
  const { least, greatest } = BELIEVED_ERRORS;
  if (error >= least && error <= greatest) return undefined;
  return { code: 'error-implausible', drawn, measured, error, limit: error < least ? least : greatest };
}

/**
 * Whether an error is that of a hole whose two diameters were swapped.
 *
 * Larger than drawn by 0.10 mm or more, while the other readings close by 0.10 mm or more at their median, and turned
 * round within 0.15 mm of that median. At least two others must speak: a printer may well make holes large.
 *
 * @param error - measured less drawn diameter [mm]
 * @param others - median error of the other readings [mm], and how many they are [-]
 */
export const isSwapped = (
  error: number,
  others: { readonly median: number; readonly count: number },
): boolean =>
  others.count >= READINGS_FOR_SWAP &&
  error >= LEAST_CLOSING &&
  others.median <= -LEAST_CLOSING &&
  Math.abs(-error - others.median) <= SWAP_TOLERANCE;

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const seenDrawn = ({ drawn: diameter, facets }: HoleReading): number =>
  effectiveDrawnOf(facets === undefined ? { diameter } : { diameter, facets });

/** Median of the errors without one that lies above it: whichever that is, the same as without the greatest. */
function medianOfOthers(errors: readonly number[]): number {
  const sorted = errors.toSorted((one, other) => one - other);
  const count = sorted.length - 1;
  const upper = sorted[count >> 1] ?? 0;
  return count % 2 === 1 ? upper : ((sorted[(count >> 1) - 1] ?? 0) + upper) / 2;
}

/**
 * The first thing wrong with each reading of a printer, with its likely cause.
 *
 * too-few-facets: below three corners. looks-like-inches: a value times 25.4 suits the other, or both below 1 mm.
 * looks-like-radius: a value doubled suits the other. error-implausible: a value, or the bore with its correction,
 * more than 1.5 mm below the drawing or 0.8 mm above. A measured diameter suits a drawn one from 0.6 mm below to 0.3 mm
 * above; each value of a reading is looked at. drawn-and-measured-swapped: see isSwapped; only sound readings count as
 * others.
 *
 * @param readings - of one printer and hole axis [mm], in any number, each with a measured value
 * @returns for each reading its fault with the values that show it, or undefined
 * @source own-model limits of what is taken for a printed hole
 * @example drawn 4.5 with measured 2.1 gives looks-like-radius
 */
export function holeReadingFaults(
  readings: readonly HoleReading[],
): readonly (HoleReadingFault | undefined)[] {
  const alone = readings.map(faultAlone);
  const errors = readings.map((reading) => meanOf(reading.measured) - seenDrawn(reading));
  const sound = errors.filter((_, index) => alone[index] === undefined);
  const others = { median: medianOfOthers(sound), count: sound.length - 1 };
  return readings.map((reading, index) => {
    if (alone[index] !== undefined || !isSwapped(errors[index] ?? 0, others)) return alone[index];
    const { drawn, measured } = reading;
    return {
      code: 'drawn-and-measured-swapped',
      drawn,
      measured: meanOf(measured),
      others: others.median,
    };
  });
}

function faultAlone(reading: HoleReading): HoleReadingFault | undefined {
  const { facets, measured } = reading;
  if (facets !== undefined && !(facets >= LEAST_SIDES)) {
    return { code: 'too-few-facets', facets, least: LEAST_SIDES };
  }
  const drawn = seenDrawn(reading);
  for (const value of measured) {
    const fault = faultOfValue(drawn, value);
    if (fault !== undefined) return fault;
  }
  const { bore } = holePoint(reading);
  return implausible(drawn, bore.estimate.value);
}
