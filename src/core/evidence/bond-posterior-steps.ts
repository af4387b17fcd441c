import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { PRIOR_FREEDOM, SETUP_RATIO, WITHIN_SETUP } from './bond-prior.ts';
import type { BondOrigin, OriginCoupon } from './coupon-ratio.ts';

/** A number of the posterior, and what it was learned from. */
interface Learned {
  readonly value: number;
  readonly origin: BondOrigin;
}

const OF_TESTS = { unit: '-', source: 'your-tests', standing: 'measured' } as const;
const ON_A_GRID = 'worked out on a grid of medians and scatters';

/**
 * Location of the logarithm of the next joint's bond factor; see bondPosterior.
 *
 *     m = ln η0 + u                       of a size that nobody pulled
 *     m = ln η0 + u + w · (y − u)         of a size that was
 *
 * Where a test only held, or its ratio is blurred, a grid takes the place of the formula.
 *
 * @param learned - m [-] and the tests
 * @returns m [-]
 * @source own-model posterior of the bond factor
 */
export function bondCentre({ value, origin }: Learned): Derived {
  const common = { symbol: 'm_η', value, ...OF_TESTS } as const;
  if (origin.method !== 'closed-form') return { ...common, formula: ON_A_GRID, entries: putIn(origin) };
  const sizes = sizesOf(origin);
  const shift = shiftOf(sizes);
  const own = sizes.find(({ size }) => size === origin.size);
  return own === undefined
    ? { ...common, formula: 'ln(η_0) + u_μ', entries: [priorOf(origin), entryFrom(shift)] }
    : {
        ...common,
        formula: `ln(η_0) + u_μ + w_${own.place} · (y_${own.place} − u_μ)`,
        entries: [priorOf(origin), entryFrom(shift), entryFrom(own.weight), entryFrom(own.mean)],
      };
}

/**
 * Scale of the logarithm of the next joint's bond factor; see bondPosterior.
 *
 *     s = sw · √(C + 2)                                   of a size that nobody pulled
 *     s = sw · √((1 − w)² · C + 1/(1 + n) + 1)            of a size that was
 *
 * @param learned - s [-] and the tests
 * @returns s [-]
 * @source own-model posterior of the bond factor
 */
export function bondDeviation({ value, origin }: Learned): Derived {
  const common = { symbol: 's', value, ...OF_TESTS } as const;
  if (origin.method !== 'closed-form') return { ...common, formula: ON_A_GRID, entries: putIn(origin) };
  const sizes = sizesOf(origin);
  const within = entryFrom(withinOf(sizes, origin));
  const doubt = entryFrom(medianDoubt(sizes));
  const own = sizes.find(({ size }) => size === origin.size);
  return own === undefined
    ? { ...common, formula: 's_w · √(C_μ + 2)', entries: [within, doubt] }
    : {
        ...common,
        formula: `s_w · √((1 − w_${own.place})² · C_μ + 1/(1 + n_${own.place}) + 1)`,
        entries: [within, entryFrom(own.weight), doubt, own.count],
      };
}

/**
 * Degrees of freedom of the next joint's bond factor.
 *
 *     ν = ν0 + n
 *
 * @param learned - ν [-] and the tests
 * @returns ν [-]
 * @source own-model posterior of the bond factor
 */
export function bondFreedom({ value, origin }: Learned): Derived {
  const common = { symbol: 'ν', value, ...OF_TESTS } as const;
  if (origin.method !== 'closed-form') return { ...common, formula: ON_A_GRID, entries: putIn(origin) };
  const entries = [entry('ν_0', PRIOR_FREEDOM, '-'), entry('n_c', origin.coupons.length, '-')];
  return { ...common, formula: 'ν_0 + n_c', entries };
}

const priorOf = ({ priorMedian }: BondOrigin): Entry => entryAs('η_0', priorMedian);

const putIn = (origin: BondOrigin): readonly Entry[] => [
  priorOf(origin),
  ...origin.coupons.map(({ bond }, index) => entryAs(`η_${index + 1}`, bond)),
];

/** The coupons of one size, by the places that they and it have in the formulas. */
interface OfSize {
  readonly size: string;
  readonly place: number;
  readonly logs: readonly { readonly text: string; readonly value: number; readonly bond: Entry }[];
  readonly count: Entry;
  readonly weight: Derived;
  readonly mean: Derived;
}

function sizesOf(origin: BondOrigin): readonly OfSize[] {
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

/** Doubt about the set-up's median, in variances within a size. */
function medianDoubt(sizes: readonly OfSize[]): Derived {
  const weights = sizes.reduce((sum, { weight }) => sum + weight.value, 0);
  return {
    symbol: 'C_μ',
    value: 1 / (1 / SETUP_RATIO + weights),
    formula: `1/(1/${SETUP_RATIO} + ${listed(sizes, (place) => `w_${place}`)})`,
    entries: sizes.map(({ weight }) => entryFrom(weight)),
    ...OF_TESTS,
  };
}

/** How far the tests move the logarithm of the set-up's median. */
function shiftOf(sizes: readonly OfSize[]): Derived {
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

/** Scatter within the set-up, with what sizes and set-up lie away from what was expected. */
function withinOf(sizes: readonly OfSize[], origin: BondOrigin): Derived {
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
