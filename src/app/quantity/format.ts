import { fromCore } from '../../core/units/convert.ts';
import type { UnitSymbol } from '../../core/units/units.ts';
import type { QuantityDefinition } from './quantity-definition.ts';

/** How many digits to show; steps and uncertainties in the unit shown. */
export type Digits =
  | { readonly step: number }
  | { readonly uncertainty: number }
  | { readonly decimals: number }
  | { readonly significant: number };

export const NO_BREAK_SPACE = '\u00a0';
export const MINUS = '\u2212';

const MOST_DECIMALS = 12;
/** A field shows a converted value with at most so many digits; the value itself stays exact. */
const FIELD_DIGITS = 7;

/** Units written as words take an s. */
const WORD_UNITS: ReadonlySet<string> = new Set(['day', 'week', 'month', 'year']);

/** Rounds as decimals are read, halves away from zero: 4.7625 to three decimals is 4.763. */
export function roundDecimals(value: number, decimals: number): number {
  const shifted = Number(`${Math.abs(value)}e${decimals}`);
  if (!Number.isFinite(shifted)) return Number(value.toFixed(Math.min(100, Math.max(0, decimals))));
  const rounded = Number(`${Math.round(shifted)}e${-decimals}`);
  if (!Number.isFinite(rounded)) return value;
  return value < 0 ? -rounded : rounded;
}

/** Decimals that a step is written with: 0.05 has two, 5 has none. */
export function decimalsOfStep(step: number): number {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++) {
    if (Math.abs(roundDecimals(step, decimals) - step) < step * 1e-9) return decimals;
  }
  return MOST_DECIMALS;
}

/** Place of the first digit: 0 for units, −2 for hundredths. */
function orderOf(value: number): number {
  return value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)) + 1e-12);
}

function decimalsFor(value: number, digits: Digits): number {
  if ('decimals' in digits) return digits.decimals;
  if ('step' in digits) return decimalsOfStep(digits.step);
  const wanted =
    'uncertainty' in digits ? -orderOf(digits.uncertainty) : digits.significant - 1 - orderOf(value);
  return Math.min(MOST_DECIMALS, Math.max(0, wanted));
}

/** The plain digits of a number, no exponent, no separator, ASCII minus. */
function fixed(value: number, decimals: number): string {
  const rounded = roundDecimals(value, decimals);
  return (rounded === 0 ? 0 : rounded).toFixed(decimals);
}

/** A number to be read: 1,250 and −0.25. */
export function numberText(value: number, digits: Digits): string {
  const text = fixed(value, decimalsFor(value, digits));
  const [whole = '', fraction] = text.replace('-', '').split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return `${text.startsWith('-') ? MINUS : ''}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** The unit as it stands after a number: nothing for a bare ratio, "years" after 2. */
export function unitText(unit: string, shown?: string): string {
  if (unit === '-') return '';
  return WORD_UNITS.has(unit) && shown !== '1' ? `${unit}s` : unit;
}

/** A number with a unit that needs no conversion, with any symbol: 12.5 mm², 640 N/mm. */
export function amountText(value: number, unit: string, digits: Digits): string {
  const number = numberText(value, digits);
  const symbol = unitText(unit, number);
  if (symbol === '') return number;
  return symbol === '%' || symbol === '°'
    ? `${number}${symbol === '%' ? NO_BREAK_SPACE : ''}${symbol}`
    : `${number}${NO_BREAK_SPACE}${symbol}`;
}

/** A core value as a number in the unit shown, without the unit. */
export function valueText(value: number, unit: UnitSymbol, digits: Digits): string {
  return numberText(fromCore(value, unit), digits);
}

/** A core value with its unit: quantityText(600, 'N·m', { step: 0.01 }) is "0.60 N·m". */
export function quantityText(value: number, unit: UnitSymbol, digits: Digits): string {
  return amountText(fromCore(value, unit), unit, digits);
}

/** Two core values with one unit: 0.31–0.71 N·m; "to" where a sign would meet the dash. */
export function rangeText(
  ends: { readonly lo: number; readonly hi: number },
  unit: UnitSymbol,
  digits: Digits,
): string {
  const lo = valueText(ends.lo, unit, digits);
  const hi = quantityText(ends.hi, unit, digits);
  return lo.startsWith(MINUS) || hi.startsWith(MINUS) ? `${lo} to ${hi}` : `${lo}\u2013${hi}`;
}

/** A factor of a limit over its load; cut, not rounded, so that 0.999 never reads as 1. */
export function factorText(factor: number): string {
  const size = Math.abs(factor);
  const decimals = size < 2 ? 2 : size < 10 ? 1 : 0;
  const cut = Math.trunc(Number(`${roundDecimals(factor, 9)}e${decimals}`)) / 10 ** decimals;
  return `${numberText(cut, { decimals })}${NO_BREAK_SPACE}×`;
}

/** A core value as the text of its field: at least the step's decimals, more where the value has them. */
export function fieldText(
  value: number,
  definition: Pick<QuantityDefinition, 'displayUnit' | 'step'>,
): string {
  const shown = fromCore(value, definition.displayUnit);
  const least = decimalsOfStep(definition.step);
  const most = Math.min(MOST_DECIMALS, Math.max(least, FIELD_DIGITS - 1 - orderOf(shown)));
  const long = fixed(shown, most);
  let end = long.length;
  const shortest = long.length - (most - least);
  while (end > shortest && long[end - 1] === '0') end--;
  return long.slice(0, end).replace(/\.$/, '').replace('-', MINUS);
}
