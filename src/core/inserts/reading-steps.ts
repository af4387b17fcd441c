import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import { overReadings, readingEntries } from './measurement-uncertainty.ts';

const OF_READINGS = { unit: 'mm', source: 'jcgm-100', standing: 'measured' } as const;

/**
 * Scatter of readings on their mean, with its derivation; see scatterOnMean.
 *
 *     uA = s/√n        s = √(Σ(x − x̄)²/(n − 1))
 *
 * @param mean - of the readings x̄ [mm]
 * @param values - readings x [mm], at least two
 * @returns uA [mm]
 * @source jcgm-100 4.2 (type A)
 */
export function readingScatter(mean: Derived, values: readonly number[]): Derived {
  const n = values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean.value) ** 2, 0);
  const deviation: Derived = {
    symbol: 's_x',
    value: Math.sqrt(squares / (n - 1)),
    formula: overReadings(values, `√(Σ(x − ${mean.symbol})²/(n − 1))`, 'standard deviation of the readings'),
    entries: [...readingEntries(values), entryFrom(mean)],
    ...OF_READINGS,
  };
  return {
    symbol: 'u_A',
    value: deviation.value / Math.sqrt(n),
    formula: 's_x/√n',
    entries: [entryFrom(deviation), entry('n', n, '-')],
    ...OF_READINGS,
  };
}

/**
 * Standard uncertainty of what lies anywhere within a width, with its derivation; see rectangular.
 *
 *     u = a/√3        a half of the width
 *
 * @param symbol - of the uncertainty, as u_B
 * @param halfWidth - a [mm], ≥ 0
 * @returns u [mm]
 * @source jcgm-100 4.3.7 (rectangular)
 */
export const rectangularSpread = (symbol: string, halfWidth: Entry): Derived => ({
  symbol,
  value: halfWidth.value / Math.sqrt(3),
  unit: 'mm',
  formula: `${halfWidth.symbol}/√3`,
  entries: [halfWidth],
  source: 'jcgm-100',
  standing: 'published',
});
