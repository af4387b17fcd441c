import type { CoreUnit, Derived } from '../core/sources/derived.ts';
import { fromCore } from '../core/units/convert.ts';

/** Joins a number to its unit, so that no line breaks between them. */
export const NO_BREAK_SPACE = '\u00a0';
const MINUS = '\u2212';
const MICROMETRES_PER_KILONEWTON = 1e6;
const HOURS_PER_DAY = 24;
const HOURS_PER_YEAR = 8760;
/** Below this many newton metres two decimals say too little. */
const SMALL_TORQUE = 0.1;
const LARGE_TORQUE = 10;
const LONGEST_IN_HOURS = 100;
const LONGEST_IN_DAYS = 365;
/** More digits of a strength or a force are never known. */
const KNOWN_DIGITS = 3;

/** Rounds halves away from zero, as decimals are read. */
function rounded(value: number, decimals: number): number {
  const shifted = Number(`${Math.abs(value)}e${decimals}`);
  if (!Number.isFinite(shifted)) return Number(value.toFixed(Math.max(0, decimals)));
  const size = Number(`${Math.round(shifted)}e${-decimals}`);
  return value < 0 ? -size : size;
}

/** A number with so many decimals, thousands apart: 1,250 and −0.25. */
export function decimalText(value: number, decimals: number): string {
  const near = rounded(value, decimals);
  const [whole = '', fraction] = Math.abs(near).toFixed(Math.max(0, decimals)).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return `${near < 0 ? MINUS : ''}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** A number with so many digits that mean something: 1,250, 12.5, 0.125. */
export function significantText(value: number, digits = KNOWN_DIGITS): string {
  if (value === 0) return '0';
  const order = Math.floor(Math.log10(Math.abs(value)) + 1e-12);
  return decimalText(value, digits - 1 - order);
}

const trimmed = (text: string, least: number): string => {
  const [whole = '', fraction = ''] = text.split('.');
  const kept = fraction.replace(/0+$/, '').padEnd(least, '0');
  return kept === '' ? whole : `${whole}.${kept}`;
};

/** Millimetres as a drawing writes them, to a hundredth: 3.2, 4.25, 5.0. */
export const lengthNumber = (length: number): string => trimmed(decimalText(length, 2), 1);
export const lengthText = (length: number): string => `${lengthNumber(length)}${NO_BREAK_SPACE}mm`;
/** A diameter to draw keeps both decimals: 4.30. */
export const diameterNumber = (diameter: number): string => decimalText(diameter, 2);

/** Newtons with three digits that mean something, and no tenths where a hand scale shows none. */
export const forceNumber = (force: number): string =>
  Math.abs(force) >= 10 ? trimmed(significantText(force), 0) : trimmed(significantText(force, 2), 0);
export const forceText = (force: number): string => `${forceNumber(force)}${NO_BREAK_SPACE}N`;

/** A torque of the core, N·mm, as the number of newton metres. */
export function torqueNumber(torque: number): string {
  const value = fromCore(torque, 'N·m');
  const size = Math.abs(value);
  if (size >= LARGE_TORQUE) return decimalText(value, 1);
  return decimalText(value, size < SMALL_TORQUE && size > 0 ? 3 : 2);
}
export const torqueText = (torque: number): string => `${torqueNumber(torque)}${NO_BREAK_SPACE}N·m`;

export const temperatureText = (degrees: number): string => `${decimalText(degrees, 0)}${NO_BREAK_SPACE}°C`;
export const percentText = (share: number): string =>
  `${decimalText(fromCore(share, '%'), 0)}${NO_BREAK_SPACE}%`;

/** A factor of a limit over its load; cut, not rounded, so that 0.999 never reads as 1. */
export function factorText(factor: number): string {
  const size = Math.abs(factor);
  return timesText(factor, size < 2 ? 2 : size < 10 ? 1 : 0);
}

function timesText(factor: number, decimals: number): string {
  const cut = Math.trunc(Number(`${rounded(factor, 9)}e${decimals}`)) / 10 ** decimals;
  return `${decimalText(cut, decimals)}${NO_BREAK_SPACE}×`;
}

/** A chance as a count of a hundred, never as certain. */
export function chanceText(chance: number): string {
  const inHundred = Math.round(fromCore(chance, '%'));
  if (inHundred >= 100) return 'more than 99 in 100';
  if (inHundred <= 0) return 'fewer than 1 in 100';
  return `${inHundred} in 100`;
}

/** A time under load in the unit that people say it in. */
export function durationText(hours: number): string {
  const count = (value: number, unit: string) => {
    const number = trimmed(significantText(value), 0);
    return `${number}${NO_BREAK_SPACE}${unit}${number === '1' ? '' : 's'}`;
  };
  if (hours < LONGEST_IN_HOURS && hours !== HOURS_PER_DAY) return count(hours, 'hour');
  const days = hours / HOURS_PER_DAY;
  return days < LONGEST_IN_DAYS ? count(days, 'day') : count(hours / HOURS_PER_YEAR, 'year');
}

/** Any core value as it is shown, rounded to what is known; torque as newton metres, a ratio bare. */
export function amountText(value: number, unit: CoreUnit): string {
  switch (unit) {
    case 'mm':
      return lengthText(value);
    case 'N':
      return forceText(value);
    case 'N·mm':
      return torqueText(value);
    case '°C':
      return temperatureText(value);
    case 'h':
      return `${significantText(value, 4)}${NO_BREAK_SPACE}h`;
    case 'mm/N':
      return `${significantText(value * MICROMETRES_PER_KILONEWTON)}${NO_BREAK_SPACE}µm/kN`;
    case '-':
      return trimmed(significantText(value), 0);
    case 'mm²':
    case 'mm³':
    case 'MPa':
    case 'N/mm':
      return `${significantText(value)}${NO_BREAK_SPACE}${unit}`;
  }
}

/** Bores are written to a hundredth, with both decimals: 4.30 mm. */
const BORES: ReadonlySet<string> = new Set(['D_CAD', 'D_t', 'D_g', 'D_f', 'D_j', 'D_l', 'D_min', 'D_max']);

/** What is borne over what is asked is cut in its derivation too, so that it begins with the digits that open it: 4.5, then 4.58. */
const MARGINS: ReadonlySet<string> = new Set(['ψ', 'ψ_1']);

/** Counts and the seed are whole: all of their digits are known. */
const COUNTS: ReadonlySet<string> = new Set(['n_j', 'k_j', 's_j', 'i_q', 'k_q', 'h_q']);

/** Exact by definition; with fewer digits a conversion could not be followed. */
const EXACT: ReadonlySet<string> = new Set(['F_u', 'l_u']);
const EXACT_DIGITS = 8;

/** A number of a derivation as it is shown. */
export function derivedText({ symbol, value, unit }: Pick<Derived, 'symbol' | 'value' | 'unit'>): string {
  if (MARGINS.has(symbol)) return timesText(value, value < 10 ? 2 : value < 100 ? 1 : 0);
  if (COUNTS.has(symbol)) return decimalText(value, 0);
  if (EXACT.has(symbol)) return `${trimmed(significantText(value, EXACT_DIGITS), 0)}${NO_BREAK_SPACE}${unit}`;
  return BORES.has(symbol) ? `${diameterNumber(value)}${NO_BREAK_SPACE}mm` : amountText(value, unit);
}

const COUNT_WORDS = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');
/** A count in words up to twelve, as running text writes it. */
export const countWord = (count: number): string => COUNT_WORDS[count] ?? decimalText(count, 0);

const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');
export const ordinalWord = (rank: number): string => ORDINALS[rank - 1] ?? `number ${rank}`;

export const capitalised = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
