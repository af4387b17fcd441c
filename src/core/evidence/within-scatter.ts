import { chiSquaredQuantile } from '../numerics/chi-squared.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { PRIOR_FREEDOM, WITHIN_SETUP } from './bond-prior.ts';
import { momentsOf } from './sample.ts';

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
export function withinScatter(sizes: readonly (readonly number[])[]): WithinScatter {
  const alike = sizes.filter(({ length }) => length > 1);
  const freedom = alike.reduce((sum, { length }) => sum + length - 1, 0);
  const squares = alike.reduce(
    (sum, logs) => sum + (logs.length - 1) * (momentsOf(logs).deviation ?? 0) ** 2,
    0,
  );
  const whole = PRIOR_FREEDOM + freedom;
  const scatter: Derived = {
    symbol: 's_w',
    value: Math.sqrt((PRIOR_FREEDOM * WITHIN_SETUP ** 2 + squares) / whole),
    unit: '-',
    formula: '√((ν_0 · s_0^2 + Q_w)/(ν_0 + ν_t))',
    entries: [
      entry('ν_0', PRIOR_FREEDOM, '-'),
      entry('s_0', WITHIN_SETUP, '-'),
      entry('Q_w', squares, '-'),
      entry('ν_t', freedom, '-'),
    ],
    source: 'own-model',
    standing: freedom === 0 ? 'estimate' : 'measured',
  };
  const quantile = chiSquaredQuantile(CAREFUL_SHARE, whole);
  const careful: Derived = {
    symbol: 's_u',
    value: scatter.value * Math.sqrt(whole / quantile),
    unit: '-',
    formula: 's_w · √((ν_0 + ν_t)/χ_q)',
    entries: [
      entryFrom(scatter),
      entry('ν_0', PRIOR_FREEDOM, '-'),
      entry('ν_t', freedom, '-'),
      entry('χ_q', quantile, '-'),
    ],
    source: 'own-model',
    standing: scatter.standing,
  };
  return { scatter, careful, freedom };
}
