import type { MeasuredLength } from '../inserts/dimensions.ts';
import { boreMeasured } from './bore-measured.ts';
import { effectiveDrawnOf } from './facets.ts';
import type { HoleReading } from './hole-reading.ts';

/** What one hole says of the curve. */
export interface HolePoint {
  /** What the slicer saw: of a polygon its width across the flats, mm. */
  readonly drawn: number;
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
  const drawn = effectiveDrawnOf(facets === undefined ? { diameter } : { diameter, facets });
  const bore = boreMeasured(reading);
  return {
    drawn,
    bore,
    error: bore.estimate.value - drawn,
    standardUncertainty: bore.standardUncertainty.value,
  };
}
