import { type Derived, entry, entryFrom } from '../sources/derived.ts';

/** A hole that is there already and is not drawn anew; lengths in mm. */
export interface ExistingHole {
  /** As it was drawn, or as it was measured in the part. */
  readonly diameter: number;
  readonly known: 'as-drawn' | 'as-measured';
  /** Permissible error ± of what it was measured with; 0 where it was drawn. */
  readonly permissibleError: number;
  /** Absent: not known, taken as deep enough. */
  readonly depth?: number;
}

/** Half of the range that one measured diameter of a printed hole lies within for want of roundness, mm (estimate). */
export const OUT_OF_ROUND = 0.05;

/**
 * Diameter of a hole that is there, as it was given.
 *
 * @param hole - its diameter D_g [mm], > 0
 * @returns D_g [mm]
 * @source your-measurement what was drawn or measured
 */
export const givenDiameter = ({ diameter }: ExistingHole): Derived => ({
  symbol: 'D_g',
  value: diameter,
  unit: 'mm',
  formula: 'D_g',
  entries: [entry('D_g', diameter, 'mm')],
  source: 'your-measurement',
  standing: 'measured',
});

/**
 * Depth of a hole that is there, as it was given.
 *
 * @param depth - T [mm], > 0
 * @returns T [mm]
 * @source your-measurement what was drawn or measured
 */
export const givenDepth = (depth: number): Derived => ({
  symbol: 'T',
  value: depth,
  unit: 'mm',
  formula: 'T',
  entries: [entry('T', depth, 'mm')],
  source: 'your-measurement',
  standing: 'measured',
});

/**
 * Bore that a measured hole has: the diameter itself.
 *
 *     Dt = Dg
 *
 * @param hole - the hole, measured
 * @returns Dt [mm]
 * @source your-measurement measured diameter
 * @example a hole measured at 4.42 mm has a bore of 4.42 mm
 */
export function measuredBore(hole: ExistingHole): Derived {
  const diameter = givenDiameter(hole);
  return {
    symbol: 'D_t',
    value: diameter.value,
    unit: 'mm',
    formula: 'D_g',
    entries: [entryFrom(diameter)],
    source: 'your-measurement',
    standing: 'measured',
  };
}

/**
 * Bore that a drawn hole is expected to have once printed.
 *
 *     Dt = Dg + e
 *
 * @param hole - the hole, drawn
 * @param error - printed less drawn at this diameter e [mm]; 0 where the slicer compensates
 * @returns Dt [mm]
 * @source hole-metrology-note see printError
 * @example a hole drawn at 4.7 mm that comes out 0.243 mm small has a bore of 4.457 mm
 */
export function boreOfDrawn(hole: ExistingHole, error: Derived): Derived {
  const diameter = givenDiameter(hole);
  return {
    symbol: 'D_t',
    value: diameter.value + error.value,
    unit: 'mm',
    formula: 'D_g + e',
    entries: [entryFrom(diameter), entryFrom(error)],
    source: error.source,
    standing: error.standing,
  };
}

/**
 * Standard deviation of a measured bore about its reading, as a plain number.
 *
 *     s = √[(a/√3)² + (0.05 mm/√3)² + u(Dp)²]
 *
 * Both ranges are rectangular: the caliper's permissible error, and how far a printed hole is out of round, which one
 * diameter across does not show. The error of inside jaws is not in it.
 *
 * @param hole - permissible error a [mm], ≥ 0
 * @param pilotUncertainty - standard uncertainty of the pilot diameter u(Dp) [mm], ≥ 0
 * @returns s [mm], > 0
 * @source jcgm-100 combination
 * @source own-model out of round
 * @example a caliper of ±0.03 mm and a pilot known exactly give 0.0337 mm
 */
export const measuredDeviationOf = (
  hole: Pick<ExistingHole, 'permissibleError'>,
  pilotUncertainty: number,
): number => Math.hypot(hole.permissibleError / Math.sqrt(3), OUT_OF_ROUND / Math.sqrt(3), pilotUncertainty);
