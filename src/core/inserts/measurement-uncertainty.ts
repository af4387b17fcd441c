import { type Derived, type Entry, entry, entryBy, entryFrom } from '../sources/derived.ts';

/** Readings that a derivation lists; more are summed up in their number. */
const LISTED_READINGS = 12;
const LISTED_SYMBOLS = Array.from({ length: LISTED_READINGS }, (_, index) => `x_${index + 1}`);

/** Readings as a derivation lists them: each where they are few, and their number. */
export function readingEntries(values: readonly number[]): Entry[] {
  const entries: Entry[] = [];
  for (const symbol of LISTED_SYMBOLS) {
    const value = values[entries.length];
    if (value === undefined) break;
    entries.push(entry(symbol, value, 'mm'));
  }
  entries.push(entry('n', values.length, '-'));
  return entries;
}

/** A formula over readings, in words where not all of them are listed. */
export const overReadings = (values: readonly number[], formula: string, words: string): string =>
  values.length <= LISTED_READINGS ? formula : words;

/**
 * Scatter of readings on their mean, of at least two; none for one, which says nothing about scatter.
 *
 *     uA = s/√n        s = √(Σ(x − x̄)²/(n − 1))
 *
 * @param mean - of the readings x̄ [mm]
 * @param values - readings x [mm], at least one
 * @returns uA [mm], put in with its way; or nothing
 * @source jcgm-100 4.2 (type A)
 */
export function scatterOnMean(mean: Derived, values: readonly number[]): readonly Entry[] {
  const n = values.length;
  if (n < 2) return [];
  const squares = values.reduce((sum, value) => sum + (value - mean.value) ** 2, 0);
  const value = Math.sqrt(squares / (n - 1)) / Math.sqrt(n);
  return [entryBy('u_A', value, 'mm', (steps) => steps.readingScatter(mean, values))];
}

/**
 * Standard uncertainty of what lies anywhere within a half-width on either side.
 *
 *     u = a/√3
 *
 * @param symbol - of the uncertainty, as u_B
 * @param halfWidth - a [mm], ≥ 0
 * @returns u [mm], put in with its way
 * @source jcgm-100 4.3.7 (rectangular)
 */
export const rectangular = (symbol: string, halfWidth: Entry): Entry =>
  entryBy(symbol, halfWidth.value / Math.sqrt(3), 'mm', (steps) =>
    steps.rectangularSpread(symbol, halfWidth),
  );

/**
 * Standard uncertainty of a length, from what is uncertain about it.
 *
 *     u = √(Σu²)
 *
 * @param estimate - the length [mm]
 * @param parts - standard uncertainties [mm] that have nothing to do with one another, at least one
 * @returns u [mm]
 * @source jcgm-100 5.1.2 (combined)
 */
export function combinedUncertainty(estimate: Derived, parts: readonly Entry[]): Derived {
  const [only] = parts;
  return {
    symbol: `u(${estimate.symbol})`,
    value: Math.hypot(...parts.map(({ value }) => value)),
    unit: 'mm',
    formula:
      parts.length === 1 && only ? only.symbol : `√(${parts.map(({ symbol }) => `${symbol}²`).join(' + ')})`,
    entries: [...parts, entryFrom(estimate)],
    source: 'jcgm-100',
    standing: 'published',
  };
}
