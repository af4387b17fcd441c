import { type Derived, type Entry, entry } from '../sources/derived.ts';
import { normalQuantile } from './normal-distribution.ts';
import { studentQuantile } from './student-t.ts';

const TABULATED = { unit: '-', source: 'nist-handbook', standing: 'published' } as const;

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
export const studentQuantileWay = (
  symbol: string,
  { share, freedom }: { readonly share: number; readonly freedom: Entry },
): Derived => ({
  symbol,
  value: studentQuantile(share, freedom.value),
  formula: `t(p, ${freedom.symbol})`,
  entries: [entry('p', share, '-'), freedom],
  ...TABULATED,
});

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
export const normalQuantileWay = (symbol: string, share: number): Derived => ({
  symbol,
  value: normalQuantile(share),
  formula: 'z(p)',
  entries: [entry('p', share, '-')],
  ...TABULATED,
});
