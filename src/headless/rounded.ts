import type { Derived } from '../core/sources/derived.ts';
import { fromCore } from '../core/units/convert.ts';

/** Significant digits in a report: enough to compare by, no binary dust. */
const DIGITS = 6;

export const rounded = (value: number): number => Number(value.toPrecision(DIGITS));

/** A torque of the core in N·m. */
export const torqueInNewtonMetres = (torque: number): number => rounded(fromCore(torque, 'N·m'));

/** A force in N, or a torque in N·m, under a key that says which. */
export const quantity = (key: string, derived: Derived): Record<string, number> =>
  derived.unit === 'N·mm'
    ? { [`${key}_Nm`]: torqueInNewtonMetres(derived.value) }
    : { [`${key}_N`]: rounded(derived.value) };

/** Between what a little known number lies and what is expected of it; null for one that is known well enough. */
export const rangeOf = ({ range }: Derived) =>
  range === undefined
    ? null
    : {
        low: rounded(range.low),
        expected: range.middle === undefined ? null : rounded(range.middle),
        high: rounded(range.high),
      };
