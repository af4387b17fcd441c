import { normalQuantile } from '../numerics/normal-distribution.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import type { HoleCalibration } from './calibrate-holes.ts';
import { boreDeviationOf, curveDeviationOf, printErrorOf } from './print-error.ts';

/** Two ends of what a share lies between, mm. */
export interface ErrorInterval {
  readonly low: number;
  readonly high: number;
}

/** The curve at one drawn diameter, and how surely; mm. */
export interface ErrorBand {
  readonly drawn: number;
  readonly expected: number;
  /** Where the curve itself lies. */
  readonly curve: ErrorInterval;
  /** Where the next hole comes out. */
  readonly nextHole: ErrorInterval;
}

const about = (centre: number, reach: number): ErrorInterval => ({
  low: centre - reach,
  high: centre + reach,
});

/**
 * Between which errors the curve and the next hole lie at a drawn diameter, as much below as above.
 *
 *     curve:      e ± z·u                   z normal quantile of (1 + share)/2
 *     next hole:  e ± t·√(u² + s_r²)        t Student's, ν_eff = (u² + s_r²)²/(s_r⁴/ν)
 *
 * ν_eff after Welch and Satterthwaite; the curve's own uncertainty counts as surely known. Against the whole mixture over
 * the scatter the ends are off by some hundredths of their width.
 *
 * @param calibration - curve, and degrees of freedom ν of its repeatability
 * @param drawn - diameter the slicer sees [mm], > 0
 * @param share - of what lies between the ends [-], 0 < share < 1
 * @returns expected error e and both intervals [mm]
 * @source jcgm-100 G.4.1 effective degrees of freedom
 * @example without readings, at 4 mm, 95 %: −0.28 ± 0.196 mm for the curve, ± 0.222 mm for the next hole
 */
export function errorBand(
  { behaviour, freedom }: Pick<HoleCalibration, 'behaviour' | 'freedom'>,
  drawn: number,
  share: number,
): ErrorBand {
  const expected = printErrorOf(behaviour, drawn);
  const chance = (1 + share) / 2;
  const deviation = boreDeviationOf(behaviour, drawn, 0);
  const effective = freedom * (deviation / behaviour.repeatability) ** 4;
  return {
    drawn,
    expected,
    curve: about(expected, normalQuantile(chance) * curveDeviationOf(behaviour, drawn)),
    nextHole: about(expected, studentQuantile(chance, effective) * deviation),
  };
}
