import { noncentralTProbability } from '../numerics/noncentral-t.ts';
import { studentQuantile } from '../numerics/student-t.ts';
import { type Derived, entry, entryAs, entryFrom } from '../sources/derived.ts';

/** With its mean so far beyond the limit, [-], and so many times the limit, a t below it has no chance left. */
const SURE_FROM = 40;
const SURE_LIMITS = 6;

/** A ratio of two groups that a comparison shall not miss. */
export interface RatioToSee {
  /** Ratio of the medians r, [-], > 0. */
  readonly ratio: number;
  /** Standard deviation of the logarithm within a group s, [-], > 0. */
  readonly deviation: number;
  /** The way to it; absent: it is assumed. */
  readonly deviationFrom?: Derived;
  /** Chance of calling equal groups different α, two-sided, [-], 0.001 … 0.5. */
  readonly falseAlarm: number;
}

/**
 * Chance that a comparison of two groups of n tests each tells their ratio from 1.
 *
 *     P(|t'| > t_(1 − α/2)),   t' noncentral t with ν = 2n − 2 and δ = |ln r|/(s·√(2/n))
 *
 * For logarithms that scatter alike and normally.
 *
 * @param count - tests in each group n [-], ≥ 2
 * @param wanted - ratio r, deviation s of the logarithm, false alarm α [-]
 * @returns power [-], α … 1
 * @source own-model two-sample t test on logarithms
 */
export function powerOfRatio(count: number, { ratio, deviation, falseAlarm }: RatioToSee): number {
  const degrees = 2 * count - 2;
  const noncentrality = Math.abs(Math.log(ratio)) / (deviation * Math.sqrt(2 / count));
  const limit = studentQuantile(1 - falseAlarm / 2, degrees);
  // From here on the power is 1 to every digit, and the integral would take ever more steps.
  if (noncentrality > SURE_FROM + SURE_LIMITS * limit) return 1;
  const shape = { degrees, noncentrality };
  return 1 - noncentralTProbability(limit, shape) + noncentralTProbability(-limit, shape);
}

/** Nobody prints more coupons than this to compare two settings. */
export const MOST_TESTS = 1000;

export type TestsNeeded =
  | { readonly kind: 'tests'; readonly each: Derived; readonly power: Derived }
  | {
      readonly kind: 'refused';
      readonly code: 'too-many-tests';
      readonly most: number;
      readonly powerThere: number;
    };

/**
 * How many tests each of two groups needs, so that their ratio is seen.
 *
 *     the least n ≥ 2 with power(n) ≥ the power asked for
 *
 * @param wanted - ratio r, deviation s of the logarithm, false alarm α [-]
 * @param power - chance of seeing it [-], 0 < power < 1
 * @returns n [-] with the power it has, or the refusal too-many-tests where 1000 a group are not enough
 * @source own-model two-sample t test on logarithms
 * @example ratio 1.2, s 0.12, α 0.05, power 0.8 give 8
 */
export function testsNeeded(wanted: RatioToSee, power: number): TestsNeeded {
  const isEnough = (count: number): boolean => powerOfRatio(count, wanted) >= power;
  if (!isEnough(MOST_TESTS)) {
    return {
      kind: 'refused',
      code: 'too-many-tests',
      most: MOST_TESTS,
      powerThere: powerOfRatio(MOST_TESTS, wanted),
    };
  }
  let low = 1;
  let high = 2;
  while (!isEnough(high)) {
    low = high;
    high = Math.min(2 * high, MOST_TESTS);
  }
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  const entries = [
    entry('r_g', wanted.ratio, '-'),
    wanted.deviationFrom === undefined
      ? entry('s_y', wanted.deviation, '-')
      : entryAs('s_y', entryFrom(wanted.deviationFrom)),
    entry('α_f', wanted.falseAlarm, '-'),
  ];
  const common = { unit: '-', source: 'own-model', standing: 'estimate' } as const;
  const each: Derived = {
    ...common,
    symbol: 'n_g',
    value: high,
    formula: 'least number of tests with the power asked for',
    entries: [...entries, entry('P_w', power, '-')],
  };
  return {
    kind: 'tests',
    each,
    power: {
      ...common,
      symbol: 'P_g',
      value: powerOfRatio(high, wanted),
      formula: 'power of the comparison by the noncentral distribution of Student’s t',
      entries: [...entries, entryFrom(each)],
    },
  };
}
