import type { CoreUnit } from '../core/sources/derived.ts';
import { NO_BREAK_SPACE, significantText } from './amount.ts';

/** Digits that a calculation on paper carries from step to step: one more than is known. */
const CARRIED_DIGITS = 4;
const ZEROS_AFTER_POINT = /(\.\d*?)0+$/;
const BARE_POINT = /\.$/;
const MILLIONTHS = 1e6;

const digitsOf = (value: number): string =>
  significantText(value, CARRIED_DIGITS).replace(ZEROS_AFTER_POINT, '$1').replace(BARE_POINT, '');

/**
 * A number with its unit of the core as a calculation sheet carries it: 4.26 mm, 1,234 N, 650 N·mm. What gives by
 * millionths of a millimetre is written so: 77.54·10⁻⁶ mm/N.
 */
export function carriedText(value: number, unit: CoreUnit): string {
  if (unit === '-') return digitsOf(value);
  const number = unit === 'mm/N' && value !== 0 ? `${digitsOf(value * MILLIONTHS)}·10⁻⁶` : digitsOf(value);
  return `${number}${NO_BREAK_SPACE}${unit}`;
}
