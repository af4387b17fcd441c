import { type Derived, entry } from '../sources/derived.ts';

/** Creep of a plastic at constant load: modulus E(t) = E0/(1 + m·tⁿ), t in h. */
export interface CreepLaw {
  readonly m: number;
  readonly n: number;
}

/** Modulus after a time over the short-term modulus. */
export interface CreepPoint {
  /** h */
  readonly hours: number;
  /** E(t)/E0, [-] */
  readonly ratio: number;
}

/** E(t)/E0 after 1 h, 24 h and 1000 h, [-]; not rising, the last two below 1. */
export interface CreepRatios {
  readonly after1h: number;
  readonly after24h: number;
  readonly after1000h: number;
}

/** Times, h, between which the law rests on points; outside it is extrapolated. */
export const CREEP_POINTS = { first: 1, second: 24, last: 1000 } as const;

/** What the compliance has grown by at a point: m·tⁿ = 1/ratio − 1. */
const growth = (point: CreepPoint): number => 1 / point.ratio - 1;

/**
 * Creep law through two points of the modulus.
 *
 *     E(t)/E0 = 1/(1 + m·tⁿ)
 *     n = ln[(1/r2 − 1)/(1/r1 − 1)]/ln(t2/t1)
 *     m = (1/r1 − 1)/t1ⁿ
 *
 * Linear viscoelasticity at one temperature; ageing and moisture are not in it.
 *
 * @param points - earlier and later time [h], 0 < t1 < t2, with ratios r1 ≥ r2 [-], strictly between 0 and 1
 * @returns m [-], with t in h, and n [-], ≥ 0
 * @source findley-iso-899 power law of creep
 * @example 0.9167 after 1 h and 0.7917 after 1000 h give m 0.0909, n 0.154
 */
export function creepLawThrough(points: {
  readonly earlier: CreepPoint;
  readonly later: CreepPoint;
}): CreepLaw {
  const { earlier, later } = points;
  const n = Math.log(growth(later) / growth(earlier)) / Math.log(later.hours / earlier.hours);
  return { m: growth(earlier) / earlier.hours ** n, n };
}

/**
 * Creep law of a material row.
 *
 *     E(t)/E0 = 1/(1 + m·tⁿ), through 1 h and 1000 h; through 24 h and 1000 h where nothing has crept after 1 h
 *
 * The 24 h value is otherwise a check, not a point of the law.
 *
 * @param ratios - E(t)/E0 after 1 h, 24 h and 1000 h [-], 0 < r1000 ≤ r24 ≤ r1 ≤ 1, r24 < 1
 * @returns m [-], with t in h, and n [-], ≥ 0
 * @source findley-iso-899 power law of creep
 */
export function creepLaw(ratios: CreepRatios): CreepLaw {
  const earlier =
    ratios.after1h < 1
      ? { hours: CREEP_POINTS.first, ratio: ratios.after1h }
      : { hours: CREEP_POINTS.second, ratio: ratios.after24h };
  return creepLawThrough({ earlier, later: { hours: CREEP_POINTS.last, ratio: ratios.after1000h } });
}

/**
 * Creep factor as a plain number.
 * @param law - m, n [-]
 * @param hours - time under load t [h], ≥ 0
 * @returns c [-], ≥ 1
 * @source findley-iso-899 power law of creep
 */
export const creepFactorOf = (law: CreepLaw, hours: number): number => 1 + law.m * hours ** law.n;

/**
 * How many times its first value the compliance of the plastic has after a time under load.
 *
 *     c(t) = E0/E(t) = 1 + m·tⁿ
 *
 * Rests on points from 1 h to 1000 h; longer times extrapolate it (`CREEP_POINTS`).
 *
 * @param law - m, n [-]
 * @param hours - time under load t [h], ≥ 0
 * @returns c [-], ≥ 1
 * @source findley-iso-899 power law of creep
 * @example m 0.0909, n 0.154, 24 h gives 1.148, a modulus ratio of 0.871
 */
export function creepFactor(law: CreepLaw, hours: number): Derived {
  return {
    symbol: 'c',
    value: creepFactorOf(law, hours),
    unit: '-',
    formula: '1 + m · t^n',
    entries: [entry('m', law.m, '-'), entry('t', hours, 'h'), entry('n', law.n, '-')],
    source: 'findley-iso-899',
    standing: 'estimate',
  };
}
