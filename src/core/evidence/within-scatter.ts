import { chiSquaredQuantileWay } from '../numerics/quantile-ways.ts';
import { type Derived, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { PRIOR_FREEDOM, WITHIN_SETUP } from './bond-prior.ts';
import { countEntry, meanOfSample, momentsOf, overValues, type Sample, sampleEntries } from './sample.ts';

/** How like coupons of one set-up differ from one another. */
export interface WithinScatter {
  readonly scatter: Derived;
  /** A wider one that is not ruled out: a narrower one than this 19 of 20 such tests would show. */
  readonly careful: Derived;
  /** Degrees of freedom that tests brought, [-]; 0: nothing but what is assumed. */
  readonly freedom: number;
}

/** Share of tests that would show more than they did, were the scatter as wide as its careful end. */
const CAREFUL_SHARE = 0.05;

const OF_TESTS = { unit: '-', source: 'your-tests', standing: 'measured' } as const;
const FREEDOM_ASSUMED = entry('ν_0', PRIOR_FREEDOM, '-');
const SCATTER_ASSUMED = entry('s_0', WITHIN_SETUP, '-');

/**
 * Scatter within a set-up, from coupons of the same size against one another.
 *
 *     s_w = √((ν0·s0² + Q)/(ν0 + ν))        Q = Σ(y − ȳ)² about the mean of each size, ν = Σ(n − 1)
 *     s_u = s_w·√((ν0 + ν)/χ²(0.05; ν0 + ν))
 *
 * The prior of the bond factor's scatter, s0 = 0.10 with ν0 = 4, updated by the differences alone: how far sizes lie
 * from one another and from the estimate is not in it. Without two like coupons it is s0.
 *
 * @param sizes - logarithms of measured over modelled load y [-] of the coupons that broke, by size
 * @returns s_w and its careful end s_u [-], and ν [-]
 * @source own-model conjugate prior; 0.10 and the 4 degrees of freedom are estimates
 */
export function withinScatter(sizes: readonly Sample[]): WithinScatter {
  const alike = sizes.filter(({ values }) => values.length > 1);
  const squares = squaresWithin(alike);
  const freedom = freedomWithin(alike);
  const isAssumed = alike.length === 0;
  const common = {
    unit: '-',
    source: 'own-model',
    standing: isAssumed ? 'estimate' : 'measured',
  } as const;
  const whole: Derived = {
    ...common,
    symbol: 'ν_s',
    value: PRIOR_FREEDOM + freedom.value,
    formula: isAssumed ? 'ν_0' : 'ν_0 + ν_t',
    entries: isAssumed ? [FREEDOM_ASSUMED] : [FREEDOM_ASSUMED, entryFrom(freedom)],
  };
  const scatter: Derived = {
    ...common,
    symbol: 's_w',
    value: Math.sqrt((PRIOR_FREEDOM * WITHIN_SETUP ** 2 + squares.value) / whole.value),
    formula: isAssumed ? 's_0' : '√((ν_0 · s_0^2 + Q_w)/ν_s)',
    entries: isAssumed
      ? [SCATTER_ASSUMED]
      : [FREEDOM_ASSUMED, SCATTER_ASSUMED, entryFrom(squares), entryFrom(whole)],
  };
  const asked = { share: CAREFUL_SHARE, freedom: entryFrom(whole) };
  const quantile = chiSquaredQuantileWay('χ_q', asked);
  const careful: Derived = {
    ...common,
    symbol: 's_u',
    value: scatter.value * Math.sqrt(whole.value / quantile.value),
    formula: 's_w · √(ν_s/χ_q)',
    entries: [entryFrom(scatter), entryFrom(whole), entryFrom(quantile)],
  };
  return { scatter, careful, freedom: freedom.value };
}

/** Squares about the mean of each size. */
function squaresWithin(alike: readonly Sample[]): Derived {
  const parts = alike.map((sample, place): Derived => {
    const { count, deviation = 0 } = momentsOf(sample.values);
    return {
      ...OF_TESTS,
      symbol: `Q_${place + 1}`,
      value: (count - 1) * deviation ** 2,
      formula: overValues(sample, 'Σ(x − m_x)²', 'sum of the squared distances from the mean'),
      entries: [...sampleEntries(sample), entryFrom(meanOfSample(sample))],
    };
  });
  return {
    ...OF_TESTS,
    symbol: 'Q_w',
    value: parts.reduce((sum, { value }) => sum + value, 0),
    formula: parts.map(({ symbol }) => symbol).join(' + '),
    entries: parts.map(entryFrom),
  };
}

/** Degrees of freedom of the squares about the mean of each size. */
function freedomWithin(alike: readonly Sample[]): Derived {
  const counts = alike.map(({ values }, place) => entryAs(`n_${place + 1}`, countEntry(values.length)));
  return {
    ...OF_TESTS,
    symbol: 'ν_t',
    value: counts.reduce((sum, { value }) => sum + value - 1, 0),
    formula: counts.map(({ symbol }) => `${symbol} − 1`).join(' + '),
    entries: counts,
  };
}
