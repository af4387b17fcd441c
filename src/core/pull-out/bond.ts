import type { SettingMethod } from '../inserts/insert.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, entry } from '../sources/derived.ts';

/** Median share of the ideal shear cylinder that a heat-set knurl holds, [-], before any coupon. */
const HEAT_SET_BOND = 0.85;
/** A hammered or cold-pressed insert against a heat-set one, [-]. */
const COLD_SHARE = 1 / 3;
/** Standard deviation of the logarithm between set-ups, and within one, [-]. */
export const BETWEEN_SETUPS = 0.3;
export const WITHIN_SETUP = 0.1;
/** Degrees of freedom of the prior scatter. */
export const PRIOR_FREEDOM = 4;
/** Share of joints that hold the characteristic value. */
const CHARACTERISTIC_SHARE = 0.95;

/** Deviation of the logarithm of the next joint of an unknown set-up. */
export const PRIOR_DEVIATION = Math.hypot(BETWEEN_SETUPS, WITHIN_SETUP);

/** 95 % quantile of Student's t for the prior scatter, [-]. */
export const PRIOR_QUANTILE = studentQuantile(CHARACTERISTIC_SHARE, PRIOR_FREEDOM);

/** Characteristic value over median of everything that an untested set-up scatters, [-]. */
export const CHARACTERISTIC_PER_MEDIAN = Math.exp(-PRIOR_QUANTILE * PRIOR_DEVIATION);

/**
 * Median bond factor: what share of the ideal shear cylinder the seated knurl really holds.
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

/**
 * Characteristic value of a plastic failure mode: 19 of 20 joints hold it.
 *
 *     Rk = R · exp(−t · s)        s = √(0.30² + 0.10²), t = 95 % quantile of Student's t with 4 degrees of freedom
 *
 * The 5 % quantile of the prediction for the next joint of a set-up that nobody has tested: lognormal, scatter between
 * set-ups 0.30, within one 0.10, itself uncertain. The printed strengths scatter between set-ups in the same way.
 *
 * @param median - median capacity R [N or N·mm]
 * @returns Rk [N or N·mm]
 * @source own-model prior scatter
 * @example 1000 N gives 510 N
 */
export function characteristicOf(median: Derived): Derived {
  return {
    symbol: 'R_k',
    value: median.value * CHARACTERISTIC_PER_MEDIAN,
    unit: median.unit,
    formula: 'R · exp(−t · s)',
    entries: [
      { symbol: 'R', value: median.value, unit: median.unit, from: median },
      entry('t', PRIOR_QUANTILE, '-'),
      entry('s', PRIOR_DEVIATION, '-'),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}
