import { normalQuantile } from '../numerics/normal-distribution.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { boreDeviation } from './bore-deviation.ts';
import type { HoleCalibration } from './calibrate-holes.ts';
import { boreDeviationOf, curveDeviationOf, printError, printErrorOf } from './print-error.ts';

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

/** Degrees of freedom of a bore's deviation whose part s_r is known with ν of them, the rest surely, [-]. */
const effectiveFreedomOf = (freedom: number, deviation: number, repeatability: number): number =>
  freedom * (deviation / repeatability) ** 4;

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
  const effective = effectiveFreedomOf(freedom, deviation, behaviour.repeatability);
  return {
    drawn,
    expected,
    curve: about(expected, normalQuantile(chance) * curveDeviationOf(behaviour, drawn)),
    nextHole: about(expected, studentQuantile(chance, effective) * deviation),
  };
}

/**
 * Both ends of the error of the next hole, with their derivations; see errorBand.
 *
 *     e_low, e_high = e ∓ t · s        ν_e = ν · (s/s_r)⁴
 *
 * @param calibration - curve, and degrees of freedom ν of its repeatability
 * @param drawn - diameter the slicer sees [mm], > 0
 * @param share - of what lies between the ends [-], 0 < share < 1
 * @returns e_low and e_high [mm]
 * @source jcgm-100 G.4.1 effective degrees of freedom
 */
export function nextHoleEnds(
  { behaviour, freedom }: Pick<HoleCalibration, 'behaviour' | 'freedom'>,
  drawn: number,
  share: number,
): { readonly low: Derived; readonly high: Derived } {
  const error = printError(behaviour, drawn);
  const deviation = boreDeviation(behaviour, { drawn, pilotUncertainty: 0 });
  const { standing } = behaviour;
  const effective: Derived = {
    symbol: 'ν_e',
    value: effectiveFreedomOf(freedom, deviation.value, behaviour.repeatability),
    unit: '-',
    formula: 'ν · (s/s_r)^4',
    entries: [entry('ν', freedom, '-'), entryFrom(deviation), entry('s_r', behaviour.repeatability, 'mm')],
    source: 'jcgm-100',
    standing,
  };
  const t = studentQuantile((1 + share) / 2, effective.value);
  const { low, high } = about(error.value, t * deviation.value);
  const end = (symbol: string, value: number, formula: string): Derived => ({
    symbol,
    value,
    unit: 'mm',
    formula,
    entries: [
      entryFrom(error),
      entry('t', t, '-'),
      entryFrom(deviation),
      entry('p_s', share, '-'),
      entryFrom(effective),
    ],
    source: 'jcgm-100',
    standing,
  });
  return { low: end('e_low', low, 'e − t · s'), high: end('e_high', high, 'e + t · s') };
}
