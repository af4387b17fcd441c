import { type Derived, entry } from '../sources/derived.ts';
import type { MeasuredLength } from './dimensions.ts';
import type { Readings } from './insert.ts';
import {
  combinedUncertainty,
  overReadings,
  readingEntries,
  rectangular,
  scatterOnMean,
} from './measurement-uncertainty.ts';

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
      formula: values.length === 1 ? 'x_1' : overReadings(values, 'Σx/n', 'mean of the readings'),
      entries: readingEntries(values),
      source: 'your-measurement',
      standing: 'measured',
    };
  }

  get standardUncertainty(): Derived {
    const { values, permissibleError } = this.from;
    return combinedUncertainty(this.estimate, [
      ...scatterOnMean(this.estimate, values),
      rectangular('u_B', entry('a_c', permissibleError, 'mm')),
    ]);
  }

  get readings(): number {
    return this.from.values.length;
  }
}
