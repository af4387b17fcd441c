import { type Derived, type Entry, entry } from '../sources/derived.ts';
import { chiSquaredQuantile } from './chi-squared.ts';
import { normalQuantile } from './normal-distribution.ts';
import { studentQuantile } from './student-t.ts';

const TABULATED = { unit: '-', source: 'nist-handbook', standing: 'published' } as const;

/** A share of all that lies below, as it is put in: with its way where it was worked out. */
type Share = number | Entry;

const shareEntry = (share: Share): Entry => (typeof share === 'number' ? entry('p', share, '-') : share);

/** What a quantile of a distribution with degrees of freedom is asked for. */
export interface QuantileAsked {
  readonly share: Share;
  readonly freedom: Entry;
}

/**
 * Quantile of Student's t distribution, with the share and the degrees of freedom that a table asks for.
 *
 *     t = t(p, ν)        F(t) = p
 *
 * @param symbol - what the quantile is called where it is used
 * @param asked - share p that lies below [-], 0 < p < 1; degrees of freedom ν [-], real, ≥ 1
 * @returns t [-]
 * @source nist-handbook critical values of Student's t
 * @example p 0.95, 5 degrees of freedom gives 2.015
 */
export function studentQuantileWay(symbol: string, { share, freedom }: QuantileAsked): Derived {
  const below = shareEntry(share);
  return {
    symbol,
    value: studentQuantile(below.value, freedom.value),
    formula: `t(${below.symbol}, ${freedom.symbol})`,
    entries: [below, freedom],
    ...TABULATED,
  };
}

/**
 * Quantile of the standard normal distribution, with the share that a table asks for.
 *
 *     z = z(p)        Φ(z) = p
 *
 * @param symbol - what the quantile is called where it is used
 * @param share - p that lies below [-], 0 < p < 1
 * @returns z [-]
 * @source nist-handbook normal distribution
 * @example p 0.95 gives 1.645
 */
export function normalQuantileWay(symbol: string, share: Share): Derived {
  const below = shareEntry(share);
  return {
    symbol,
    value: normalQuantile(below.value),
    formula: `z(${below.symbol})`,
    entries: [below],
    ...TABULATED,
  };
}

/**
 * Quantile of the chi-squared distribution, with the share and the degrees of freedom that a table asks for.
 *
 *     χ = χ(p, ν)        the chi-squared that a share p lies below
 *
 * @param symbol - what the quantile is called where it is used
 * @param asked - share p that lies below [-], 0 < p < 1; degrees of freedom ν [-], ≥ 1
 * @returns χ [-]
 * @source nist-handbook critical values of chi-squared
 * @example p 0.95, 5 degrees of freedom gives 11.070
 */
export function chiSquaredQuantileWay(symbol: string, { share, freedom }: QuantileAsked): Derived {
  const below = shareEntry(share);
  return {
    symbol,
    value: chiSquaredQuantile(below.value, freedom.value),
    formula: `χ(${below.symbol}, ${freedom.symbol})`,
    entries: [below, freedom],
    ...TABULATED,
  };
}

/**
 * Share that lies below the upper end of a confidence interval, as much outside on either side.
 *
 *     p = (1 + γ)/2
 *
 * @param confidence - γ [-], 0 < γ < 1
 * @returns p [-]
 * @source nist-handbook confidence limits
 */
export const shareBelowUpperEnd = (confidence: number): Derived => ({
  symbol: 'p_γ',
  value: (1 + confidence) / 2,
  formula: '(1 + γ)/2',
  entries: [entry('γ', confidence, '-')],
  ...TABULATED,
});

/**
 * Share that lies below the lower end of a confidence interval, as much outside on either side.
 *
 *     p = (1 − γ)/2
 *
 * @param confidence - γ [-], 0 < γ < 1
 * @returns p [-]
 * @source nist-handbook confidence limits
 */
export const shareBelowLowerEnd = (confidence: number): Derived => ({
  symbol: 'p_γl',
  value: (1 - confidence) / 2,
  formula: '(1 − γ)/2',
  entries: [entry('γ', confidence, '-')],
  ...TABULATED,
});
