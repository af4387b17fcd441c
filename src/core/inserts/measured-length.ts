import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import type { MeasuredLength } from './dimensions.ts';
import type { Readings } from './insert.ts';

/**
 * Mean of readings, as a plain number.
 *
 *     x̄ = Σx/n
 *
 * @param readings - values x [mm], at least one
 * @returns x̄ [mm]
 * @source jcgm-100 4.2.1
 */
export function meanOf({ values }: Readings): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}

/**
 * Best estimate of a length from caliper readings, with its combined standard uncertainty.
 *
 *     x̄ = Σx/n        uA = s/√n (n ≥ 2)        uB = a/√3        u = √(uA² + uB²)
 *
 * One reading says nothing about scatter: then u is uB alone. Not in it: form of the part, heat, jaw wear beyond
 * the permissible error.
 *
 * @param symbol - symbol of the feature, as D_k
 * @param readings - values x [mm], at least one; permissible error ±a [mm], ≥ 0
 * @returns estimate x̄ [mm], standard uncertainty u [mm] and the number of readings
 * @source jcgm-100 4.2 (type A), 4.3.7 (rectangular), 5.1.2 (combined)
 * @example 5.01, 4.98 and 5.02 mm with ±0.03 mm give 5.003 mm and u 0.021 mm
 */
export const measuredLength = (symbol: string, readings: Readings): MeasuredLength =>
  new ReadLength(symbol, readings);

class ReadLength implements MeasuredLength {
  readonly estimate: Derived;
  private readonly from: Readings;

  constructor(symbol: string, from: Readings) {
    const { values } = from;
    this.from = from;
    this.estimate = {
      symbol,
      value: meanOf(from),
      unit: 'mm',
      formula: values.length === 1 ? 'x_1' : 'Σx/n',
      entries: readingEntries(values),
      source: 'your-measurement',
      standing: 'measured',
    };
  }

  get standardUncertainty(): Derived {
    return combinedUncertainty(this.estimate, this.from);
  }

  get readings(): number {
    return this.from.values.length;
  }
}

/** Readings that a derivation lists; more are summed up in their number. */
const LISTED_READINGS = [
  'x_1',
  'x_2',
  'x_3',
  'x_4',
  'x_5',
  'x_6',
  'x_7',
  'x_8',
  'x_9',
  'x_10',
  'x_11',
  'x_12',
];

function readingEntries(values: readonly number[]): Entry[] {
  const entries: Entry[] = [];
  for (const symbol of LISTED_READINGS) {
    const value = values[entries.length];
    if (value === undefined) break;
    entries.push(entry(symbol, value, 'mm'));
  }
  entries.push(entry('n', values.length, '-'));
  return entries;
}

function combinedUncertainty(estimate: Derived, { values, permissibleError }: Readings): Derived {
  const n = values.length;
  const squares = values.reduce((sum, value) => sum + (value - estimate.value) ** 2, 0);
  const typeA = n >= 2 ? Math.sqrt(squares / (n - 1) / n) : 0;
  const typeB = permissibleError / Math.sqrt(3);
  const [jaws, mean] = [entry('u_B', typeB, 'mm'), entryFrom(estimate)];
  return {
    symbol: `u(${estimate.symbol})`,
    value: Math.hypot(typeA, typeB),
    unit: 'mm',
    formula: n >= 2 ? '√(u_A² + u_B²)' : 'u_B',
    entries: n >= 2 ? [entry('u_A', typeA, 'mm'), jaws, mean] : [jaws, mean],
    source: 'jcgm-100',
    standing: 'published',
  };
}
