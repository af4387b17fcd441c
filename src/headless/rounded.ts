import { fromCore } from '../core/units/convert.ts';

/** Significant digits in a report: enough to compare by, no binary dust. */
const DIGITS = 6;

export const rounded = (value: number): number => Number(value.toPrecision(DIGITS));

/** A torque of the core in N·m. */
export const torqueInNewtonMetres = (torque: number): number => rounded(fromCore(torque, 'N·m'));
