import { BETWEEN_SETUPS, PRIOR_FREEDOM, WITHIN_SETUP } from '../evidence/bond-prior.ts';
import type { BondOrigin } from '../evidence/coupon-ratio.ts';
import type { SettingMethod } from '../inserts/insert.ts';
import { normalQuantile } from '../numerics/normal-distribution.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, type Entry, entry, entryBy, type StepsWay } from '../sources/derived.ts';
import type { SourceId } from '../sources/sources.ts';

/** Median share of the ideal shear cylinder that a heat-set knurl holds, [-], before any coupon. */
const HEAT_SET_BOND = 0.85;
/** A hammered or cold-pressed insert against a heat-set one, [-]. */
const COLD_SHARE = 1 / 3;
/** Share of joints that hold the characteristic value. */
export const CHARACTERISTIC_SHARE = 0.95;

/** Deviation of the logarithm of the next joint of an unknown set-up. */
export const PRIOR_DEVIATION = Math.hypot(BETWEEN_SETUPS, WITHIN_SETUP);

/** 95 % quantile of Student's t for the prior scatter, [-]. */
export const PRIOR_QUANTILE = studentQuantile(CHARACTERISTIC_SHARE, PRIOR_FREEDOM);

/** How the logarithm of a capacity scatters from joint to joint: Student's t. */
export interface LogScatter {
  /** Degrees of freedom ν, [-]. */
  readonly freedom: Entry;
  /** 95 % quantile at this freedom t, [-]. */
  readonly quantile: Entry;
  /** Scale s, [-]. */
  readonly deviation: Entry;
  readonly source: SourceId;
}

const quantileEntry = (freedom: Entry): Entry =>
  entryBy('t', studentQuantile(CHARACTERISTIC_SHARE, freedom.value), '-', (steps) =>
    steps.characteristicQuantile(freedom),
  );

const PRIOR_FREEDOM_ENTRY = entry('ν', PRIOR_FREEDOM, '-');

export const UNTESTED: LogScatter = {
  freedom: PRIOR_FREEDOM_ENTRY,
  quantile: quantileEntry(PRIOR_FREEDOM_ENTRY),
  deviation: entryBy('s', PRIOR_DEVIATION, '-', (steps) => steps.priorDeviation()),
  source: 'own-model',
};

/** Share below the upper end of a range that holds 9 of 10, [-]. */
export const RANGE_SHARE = 0.95;

/** Deviations between the ends of such a range, [-]. */
const RANGE_IN_DEVIATIONS = 2 * normalQuantile(RANGE_SHARE);

/**
 * Scatter of a value of which only a range is known, taken to hold 9 of 10.
 *
 *     r = ln(high/low)/(2 · 1.645)
 *
 * @param range - ends in any one unit, > 0
 * @returns deviation of the logarithm r [-]
 * @source own-model range that holds 9 of 10
 */
export const deviationOfRange = ({ low, high }: { readonly low: number; readonly high: number }): number =>
  Math.log(high / low) / RANGE_IN_DEVIATIONS;

/** The bond factor of the next joint: its median, and how it scatters. */
export interface Bond {
  readonly factor: Derived;
  readonly scatter: LogScatter;
  /** Coupons that it was learned from; 0: an estimate. */
  readonly coupons: number;
}

/** What tests say of the logarithm of the next joint's bond factor: Student's t. */
export interface TestedBond {
  readonly centre: number;
  readonly scale: number;
  readonly freedom: number;
  readonly coupons: number;
  /** How many of them broke; the others held. */
  readonly broke: number;
  /** What it was learned from, for the way to it. */
  readonly origin?: BondOrigin;
}

/** What the tests of one set-up say: of an insert that was pulled, and of one that was not. */
export interface TestedSetup {
  readonly unpulled: TestedBond;
  /** By the id of the insert. */
  readonly bySize: ReadonlyMap<string, TestedBond>;
}

/**
 * Median bond factor before any coupon: what share of the ideal shear cylinder the seated knurl really holds.
 *
 *     η = 0.85 heat-set        η = 0.85/3 cold-pressed or hammered
 *
 * An estimate until a coupon of the same set-up is pulled.
 *
 * @param setting - how the insert is set
 * @returns η [-]
 * @source own-model 0.85
 * @source trade-practice hammered inserts hold about a third
 */
export function bondFactor(setting: SettingMethod): Derived {
  const cold = setting !== 'heat-set';
  return {
    symbol: 'η',
    value: cold ? HEAT_SET_BOND * COLD_SHARE : HEAT_SET_BOND,
    unit: '-',
    formula: cold ? 'η_hot/3' : 'η_hot',
    entries: [entry('η_hot', HEAT_SET_BOND, '-')],
    source: cold ? 'trade-practice' : 'own-model',
    standing: 'estimate',
  };
}

/** The bond of a set-up that nobody has tested. */
export const untestedBond = (setting: SettingMethod): Bond => ({
  factor: bondFactor(setting),
  scatter: UNTESTED,
  coupons: 0,
});

/**
 * The bond of a set-up that coupons were pulled in: its median and its scatter.
 *
 *     η = exp(m)        m location of ln η for the next joint
 *
 * @param tested - location and scale of ln η [-], degrees of freedom [-], ≥ 4, how many coupons spoke
 * @returns η [-] with its scatter
 * @source own-model posterior of the bond factor
 */
export function testedBond({ centre, scale, freedom, coupons, origin }: Omit<TestedBond, 'broke'>): Bond {
  const known = learned('ν', freedom, origin && ((steps) => steps.bondFreedom({ value: freedom, origin })));
  return {
    factor: {
      symbol: 'η',
      value: Math.exp(centre),
      unit: '-',
      formula: 'exp(m_η)',
      entries: [learned('m_η', centre, origin && ((steps) => steps.bondCentre({ value: centre, origin })))],
      source: 'your-tests',
      standing: 'measured',
    },
    scatter: {
      freedom: known,
      quantile: quantileEntry(known),
      deviation: learned('s', scale, origin && ((steps) => steps.bondDeviation({ value: scale, origin }))),
      source: 'your-tests',
    },
    coupons,
  };
}

const learned = (symbol: string, value: number, way: StepsWay | undefined): Entry =>
  way === undefined ? entry(symbol, value, '-') : entryBy(symbol, value, '-', way);

/**
 * Characteristic value of a plastic failure mode: 19 of 20 joints hold it.
 *
 *     Rk = R · exp(−t · s)        t = 95 % quantile of Student's t
 *
 * The 5 % quantile of the prediction for the next joint. Of a set-up that nobody has tested: lognormal, scatter between
 * set-ups 0.30, within one 0.10, so s = √(0.30² + 0.10²), itself uncertain with 4 degrees of freedom. The printed
 * strengths scatter between set-ups in the same way. Pulled coupons narrow s for the modes of the knurl.
 *
 * @param median - median capacity R [N or N·mm]
 * @param scatter - quantile t [-], scale s [-]
 * @returns Rk [N or N·mm]
 * @source own-model prior scatter
 * @example 1000 N gives 510 N
 */
export function characteristicOf(median: Derived, scatter: LogScatter = UNTESTED): Derived {
  const { quantile, deviation, source } = scatter;
  return {
    symbol: 'R_k',
    value: median.value * Math.exp(-quantile.value * deviation.value),
    unit: median.unit,
    formula: 'R · exp(−t · s)',
    entries: [{ symbol: 'R', value: median.value, unit: median.unit, from: median }, quantile, deviation],
    source,
    standing: 'estimate',
  };
}
