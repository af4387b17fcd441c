import { normalQuantile } from '../numerics/normal-distribution.ts';
import { studentQuantileWay } from '../numerics/quantile-ways.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, entry, entryFrom, withWays } from '../sources/derived.ts';
import { boreDeviation } from './bore-deviation.ts';
import type { HoleCalibration } from './calibrate-holes.ts';
import { boreDeviationOf, curveDeviationOf, curveEntry, printError, printErrorOf } from './print-error.ts';
import { scatterFreedom } from './scatter-freedom.ts';

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
  calibration: Pick<HoleCalibration, 'behaviour' | 'freedom' | 'points'>,
  drawn: number,
  share: number,
): { readonly low: Derived; readonly high: Derived } {
  const { behaviour, freedom } = calibration;
  const given = entry('D_CAD', drawn, 'mm');
  const error = printError(behaviour, given);
  const deviation = boreDeviation(behaviour, { drawn: given });
  const { standing } = behaviour;
  const effective: Derived = {
    symbol: 'ν_e',
    value: effectiveFreedomOf(freedom, deviation.value, behaviour.repeatability),
    unit: '-',
    formula: 'ν · (s/s_r)^4',
    entries: [
      scatterFreedom(calibration),
      entryFrom(deviation),
      curveEntry(behaviour.figures?.scatter, entry('s_r', behaviour.repeatability, 'mm')),
    ],
    source: 'jcgm-100',
    standing,
  };
  const t = withWays(studentQuantileWay('t', { share: (1 + share) / 2, freedom: entryFrom(effective) }), {
    p: shareBelow(share),
  });
  const { low, high } = about(error.value, t.value * deviation.value);
  const end = (symbol: string, value: number, formula: string): Derived => ({
    symbol,
    value,
    unit: 'mm',
    formula,
    entries: [entryFrom(error), entryFrom(t), entryFrom(deviation)],
    source: 'jcgm-100',
    standing,
  });
  return { low: end('e_low', low, 'e − t · s'), high: end('e_high', high, 'e + t · s') };
}

/** Share that lies below the upper end, as much being left out above as below. */
const shareBelow = (share: number): Derived => ({
  symbol: 'p',
  value: (1 + share) / 2,
  unit: '-',
  formula: '(1 + p_s)/2',
  entries: [entry('p_s', share, '-')],
  source: 'own-model',
  standing: 'published',
});
