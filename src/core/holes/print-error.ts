import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';

/** How a printer closes holes: printed − drawn = a + b·ln(drawn/4 mm), mm. */
export interface HoleBehaviour {
  readonly offset: { readonly value: number; readonly standardUncertainty: number };
  readonly slope: { readonly value: number; readonly standardUncertainty: number };
  /** Of offset and slope, mm²; absent: 0. */
  readonly covariance?: number;
  /** The error is never taken above this, mm; absent: it has no limit. Readings above it raise it. */
  readonly ceiling?: number;
  /** Hole to hole on one printer, standard deviation, mm. */
  readonly repeatability: number;
  readonly standing: 'estimate' | 'measured';
  /** Where its numbers come from; absent where a table has them. */
  readonly figures?: Partial<CurveFigures>;
}

/** The numbers of a curve of errors, mm and mm²: offset, its change with the diameter, scatter from hole to hole. */
export interface CurveFigures {
  readonly offset: Derived;
  readonly offsetUncertainty: Derived;
  readonly slope: Derived;
  readonly slopeUncertainty: Derived;
  readonly scatter: Derived;
  /** Absent: 0. */
  readonly covariance?: Derived;
  /** Absent: the one of the table, or none. */
  readonly ceiling?: Derived;
}

/** A number of a curve put in: with the way to it, or as a table has it. */
export const curveEntry = (way: Derived | undefined, tabulated: Entry): Entry =>
  way === undefined ? tabulated : entryFrom(way);

/** Drawn diameter at which the offset is read, mm. */
export const REFERENCE_DIAMETER = 4;

/** Diameters between which the published fit was measured, mm. */
export const FITTED_DIAMETERS = { least: 3, greatest: 10 } as const;

/**
 * Error of a printed hole as a plain number: printed less drawn diameter.
 * @param behaviour - offset a and slope b [mm], ceiling [mm]
 * @param drawn - drawn diameter D [mm], > 0
 * @returns e [mm], negative where the hole comes out small
 * @source hole-metrology-note fit
 */
export function printErrorOf(behaviour: HoleBehaviour, drawn: number): number {
  const fit = behaviour.offset.value + behaviour.slope.value * Math.log(drawn / REFERENCE_DIAMETER);
  return behaviour.ceiling === undefined ? fit : Math.min(fit, behaviour.ceiling);
}

/**
 * Error of a printed hole, vertical axis: printed less drawn diameter.
 *
 *     e = a + b · ln(D/4 mm), at most the ceiling
 *
 * Without coupons a = −0.28 ± 0.10 mm and b = 0.23 ± 0.10 mm stand for every printer and material; one published fit
 * has −0.30 at 4 mm with this slope over 3 to 10 mm, and never comes above −0.10. Facets and shrinkage are in it.
 *
 * @param behaviour - offset a and slope b [mm], ceiling [mm] or none
 * @param drawn - drawn diameter D [mm], > 0, as it is put in
 * @returns e [mm], negative where the hole comes out small
 * @source hole-metrology-note slope and ceiling
 * @source own-model offset before any coupon
 * @example a hole drawn at 4.55 mm comes out 0.25 mm small
 */
export function printError(behaviour: HoleBehaviour, drawn: Entry): Derived {
  const { ceiling } = behaviour;
  const line = `a + b · ln(${drawn.symbol}/4 mm)`;
  return {
    symbol: 'e',
    value: printErrorOf(behaviour, drawn.value),
    unit: 'mm',
    formula: ceiling === undefined ? line : `min(${line}, e_max)`,
    entries: [drawn, ...curveEntries(behaviour)],
    source: behaviour.standing === 'measured' ? 'your-measurement' : 'hole-metrology-note',
    standing: behaviour.standing,
  };
}

/** What the error at any diameter follows from. */
export function curveEntries({ offset, slope, ceiling, figures }: HoleBehaviour): readonly Entry[] {
  const line = [
    curveEntry(figures?.offset, entry('a', offset.value, 'mm')),
    curveEntry(figures?.slope, entry('b', slope.value, 'mm')),
  ];
  return ceiling === undefined
    ? line
    : [...line, curveEntry(figures?.ceiling, entry('e_max', ceiling, 'mm'))];
}

/**
 * Standard uncertainty of the curve itself at a drawn diameter, as a plain number.
 *
 *     u = √[u(a)² + 2·x·u(a, b) + x²·u(b)²]        x = ln(D/4 mm)
 *
 * @param behaviour - standard uncertainties of offset and slope [mm], covariance [mm²] or none
 * @param drawn - drawn diameter D [mm], > 0
 * @returns u [mm]
 * @source jcgm-100 5.2.2 combination of correlated quantities
 */
export function curveDeviationOf({ offset, slope, covariance = 0 }: HoleBehaviour, drawn: number): number {
  const x = Math.log(drawn / REFERENCE_DIAMETER);
  // The slope's uncertainty is split into what goes with the offset and what is its own: a sum of squares stays ≥ 0.
  const shared = covariance === 0 ? 0 : covariance / offset.standardUncertainty;
  const own = Math.sqrt(Math.max(0, slope.standardUncertainty ** 2 - shared ** 2));
  return Math.hypot(offset.standardUncertainty + x * shared, x * own);
}

/**
 * Standard deviation of a printed bore about its expected diameter.
 *
 *     s = √[u(a)² + 2·x·u(a, b) + x²·u(b)² + s_r² + u(Dp)²]        x = ln(D/4 mm)
 *
 * @param behaviour - standard uncertainties of offset and slope [mm], their covariance [mm²], repeatability s_r [mm]
 * @param drawn - drawn diameter D [mm], > 0
 * @param pilotUncertainty - standard uncertainty of the pilot diameter u(Dp) [mm], ≥ 0
 * @returns s [mm]
 * @source jcgm-100 combination
 */
export const boreDeviationOf = (behaviour: HoleBehaviour, drawn: number, pilotUncertainty: number): number =>
  Math.hypot(curveDeviationOf(behaviour, drawn), behaviour.repeatability, pilotUncertainty);
