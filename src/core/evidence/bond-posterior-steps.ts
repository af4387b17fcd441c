import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { PRIOR_FREEDOM } from './bond-prior.ts';
import { medianDoubt, priorOf, shiftOf, sizesOf, withinOf } from './bond-size-steps.ts';
import type { BondOrigin } from './coupon-ratio.ts';

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

const putIn = (origin: BondOrigin): readonly Entry[] => [
  priorOf(origin),
  ...origin.coupons.map(({ bond }, index) => entryAs(`η_${index + 1}`, bond)),
];
