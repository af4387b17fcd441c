import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { PRIOR_FREEDOM, SETUP_RATIO, WITHIN_SETUP } from './bond-prior.ts';
import type { BondOrigin, OriginCoupon } from './coupon-ratio.ts';

const OF_TESTS = { unit: '-', source: 'your-tests', standing: 'measured' } as const;

/** The bond factor before any coupon, as the formulas call it. */
export const priorOf = ({ priorMedian }: BondOrigin): Entry => entryAs('η_0', priorMedian);

/** The coupons of one size, by the places that they and it have in the formulas. */
export interface OfSize {
  readonly size: string;
  readonly place: number;
  readonly logs: readonly { readonly text: string; readonly value: number; readonly bond: Entry }[];
  readonly count: Entry;
  readonly weight: Derived;
  readonly mean: Derived;
}

/**
 * The coupons of an origin by their sizes, in the order in which these first come.
 *
 *     y = Σ ln(η/η0)/n        w = n/(1 + n)
 *
 * @param origin - coupons and the bond factor before them [-]
 * @returns for each size its coupons, n, y and w [-]
 * @source own-model posterior of the bond factor
 */
export function sizesOf(origin: BondOrigin): readonly OfSize[] {
  const prior = priorOf(origin);
  const sizes = [...new Set(origin.coupons.map(({ size }) => size))];
  return sizes.map((size, index) => {
    const place = index + 1;
    const logs = origin.coupons.flatMap((coupon, at) =>
      coupon.size === size ? [logOf(coupon, at + 1, prior)] : [],
    );
    const total = logs.reduce((sum, { value }) => sum + value, 0);
    const count = entry(`n_${place}`, logs.length, '-');
    return {
      size,
      place,
      logs,
      count,
      weight: {
        symbol: `w_${place}`,
        value: count.value / (1 + count.value),
        formula: `n_${place}/(1 + n_${place})`,
        entries: [count],
        ...OF_TESTS,
      },
      mean: {
        symbol: `y_${place}`,
        value: total / logs.length,
        formula: `(${logs.map(({ text }) => text).join(' + ')})/n_${place}`,
        entries: [...logs.map(({ bond }) => bond), prior, count],
        ...OF_TESTS,
      },
    };
  });
}

const logOf = ({ bond }: OriginCoupon, place: number, prior: Entry): OfSize['logs'][number] => ({
  text: `ln(η_${place}/η_0)`,
  value: Math.log(bond.value / prior.value),
  bond: entryAs(`η_${place}`, bond),
});

const listed = (sizes: readonly OfSize[], text: (place: number) => string): string =>
  sizes.map(({ place }) => text(place)).join(' + ');

/**
 * Doubt about the set-up's median, in variances within a size.
 *
 *     C = 1/(1/8 + Σw)
 *
 * @param sizes - of sizesOf
 * @returns C [-]
 * @source own-model posterior of the bond factor
 */
export function medianDoubt(sizes: readonly OfSize[]): Derived {
  const weights = sizes.reduce((sum, { weight }) => sum + weight.value, 0);
  return {
    symbol: 'C_μ',
    value: 1 / (1 / SETUP_RATIO + weights),
    formula: `1/(1/${SETUP_RATIO} + ${listed(sizes, (place) => `w_${place}`)})`,
    entries: sizes.map(({ weight }) => entryFrom(weight)),
    ...OF_TESTS,
  };
}

/**
 * How far the tests move the logarithm of the set-up's median.
 *
 *     u = C · Σ w·y
 *
 * @param sizes - of sizesOf
 * @returns u [-]
 * @source own-model posterior of the bond factor
 */
export function shiftOf(sizes: readonly OfSize[]): Derived {
  const doubt = medianDoubt(sizes);
  const moved = sizes.reduce((sum, { weight, mean }) => sum + weight.value * mean.value, 0);
  return {
    symbol: 'u_μ',
    value: doubt.value * moved,
    formula: `C_μ · (${listed(sizes, (place) => `w_${place} · y_${place}`)})`,
    entries: [entryFrom(doubt), ...sizes.flatMap(({ weight, mean }) => [entryFrom(weight), entryFrom(mean)])],
    ...OF_TESTS,
  };
}

/**
 * Scatter within the set-up, with what sizes and set-up lie away from what was expected.
 *
 *     sw² = (ν0 · s0² + Q + Σ w·(y − u)² + u²/8)/(ν0 + n)
 *
 * @param sizes - of sizesOf
 * @param origin - coupons and the bond factor before them [-]
 * @returns sw [-]
 * @source own-model posterior of the bond factor
 */
export function withinOf(sizes: readonly OfSize[], origin: BondOrigin): Derived {
  const shift = shiftOf(sizes);
  const squares = squaresOf(sizes, priorOf(origin));
  const away = sizes.reduce(
    (sum, { weight, mean }) => sum + weight.value * (mean.value - shift.value) ** 2,
    0,
  );
  const whole = PRIOR_FREEDOM + origin.coupons.length;
  const all = PRIOR_FREEDOM * WITHIN_SETUP ** 2 + squares.value + away + shift.value ** 2 / SETUP_RATIO;
  return {
    symbol: 's_w',
    value: Math.sqrt(all / whole),
    formula: `√((ν_0 · s_0² + Q_w + ${listed(sizes, (place) => `w_${place} · (y_${place} − u_μ)²`)} + u_μ²/${SETUP_RATIO})/(ν_0 + n_c))`,
    entries: [
      entry('ν_0', PRIOR_FREEDOM, '-'),
      entry('s_0', WITHIN_SETUP, '-'),
      entryFrom(squares),
      ...sizes.flatMap(({ weight, mean }) => [entryFrom(weight), entryFrom(mean)]),
      entryFrom(shift),
      entry('n_c', origin.coupons.length, '-'),
    ],
    ...OF_TESTS,
  };
}

/** Squares about the mean of each size. */
function squaresOf(sizes: readonly OfSize[], prior: Entry): Derived {
  const terms = sizes.flatMap(({ place, logs, mean }) =>
    logs.map(({ text, value }) => ({ text: `(${text} − y_${place})²`, square: (value - mean.value) ** 2 })),
  );
  return {
    symbol: 'Q_w',
    value: terms.reduce((sum, { square }) => sum + square, 0),
    formula: terms.map(({ text }) => text).join(' + '),
    entries: [
      ...sizes.flatMap(({ logs, mean }) => [...logs.map(({ bond }) => bond), entryFrom(mean)]),
      prior,
    ],
    ...OF_TESTS,
  };
}
