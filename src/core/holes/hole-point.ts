import type { MeasuredLength } from '../inserts/dimensions.ts';
import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { boreMeasured } from './bore-measured.ts';
import { acrossFlatsOf } from './facets.ts';
import type { HoleReading } from './hole-reading.ts';

/** Holes that a derivation lists; more are summed up in their number. */
export const LISTED_HOLES = 12;

/** What one hole says of the curve. */
export interface HolePoint {
  /** What the slicer saw: of a polygon its width across the flats, mm. */
  readonly drawn: number;
  /** The same with its way; absent for a true circle, which is seen as it was drawn. */
  readonly seen?: Derived;
  readonly bore: MeasuredLength;
  /** Bore less drawn diameter, mm. */
  readonly error: number;
  /** Of the bore as measured, mm. */
  readonly standardUncertainty: number;
}

/**
 * A reading as a point of the curve of errors.
 *
 *     e = D − D_e        D from the readings, D_e what the slicer saw
 *
 * @param reading - of one hole [mm]
 * @returns drawn diameter, bore, error and its standard uncertainty [mm]
 */
export function holePoint(reading: HoleReading): HolePoint {
  const { drawn: diameter, facets } = reading;
  const seen = facets === undefined ? undefined : acrossFlatsOf(entry('D_cf', diameter, 'mm'), facets);
  const drawn = seen?.value ?? diameter;
  const bore = boreMeasured(reading);
  return {
    drawn,
    ...(seen === undefined ? {} : { seen }),
    bore,
    error: bore.estimate.value - drawn,
    standardUncertainty: bore.standardUncertainty.value,
  };
}

/**
 * How far a hole that was read came out of its drawing, with its derivation.
 *
 *     e = D_m − D_e
 *
 * @param point - of holePoint: bore as measured D_m [mm], diameter that the slicer saw D_e [mm]
 * @returns e [mm], negative where the hole came out small
 * @source your-measurement
 * @example drawn 4.1 mm and 3.99 mm wide: −0.11 mm
 */
export function errorOfPoint({ drawn, seen, bore, error }: HolePoint): Derived {
  return {
    symbol: 'e',
    value: error,
    unit: 'mm',
    formula: 'D_m − D_e',
    entries: [entryFrom(bore.estimate), seen === undefined ? entry('D_e', drawn, 'mm') : entryFrom(seen)],
    source: 'your-measurement',
    standing: 'measured',
  };
}

/** How surely holes were read, each where they are few, and their number. */
export const uncertaintyEntries = (points: readonly HolePoint[]): readonly Entry[] => [
  ...points
    .slice(0, LISTED_HOLES)
    .map(({ bore }, index) => entryAs(`u_${index + 1}`, entryFrom(bore.standardUncertainty))),
  entry('n', points.length, '-'),
];
