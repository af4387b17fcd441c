import { settle } from './check-limits.ts';
import type { ParsedQuantity } from './parsed-quantity.ts';
import { LONGEST_TEXT, plainText } from './plain-text.ts';
import type { QuantityDefinition } from './quantity-definition.ts';
import { readNumber } from './read-number.ts';
import { unitNamed } from './unit-names.ts';

/** The text is more than a number with a unit: the engine of expressions must read it. */
export interface NeedsEngine {
  readonly kind: 'needs-engine';
}

const NUMBER_AND_REST = /^([+-]?) ?((?:\d|[.,]\d)[\d.,]*(?:[eE][+-]?\d+)?)(?:\/(\d+))?(.*)$/;
/** Nothing but letters and signs of units: a unit that is unknown, not an expression. */
const ONE_NAME = /^[\p{L}°º%µ"″'²³]+$/u;

/** Reads a number or a simple fraction with or without a unit; all else is for the engine. */
export function parsePlain(text: string, definition: QuantityDefinition): ParsedQuantity | NeedsEngine {
  const plain = plainText(text);
  if (plain === '') return { kind: 'refused', code: 'empty' };
  if (text.length > LONGEST_TEXT) return { kind: 'refused', code: 'too-long', limit: LONGEST_TEXT };
  if (!/\d/.test(plain)) return { kind: 'refused', code: 'not-a-number' };

  const [, sign, figures = '', divisor, after = ''] = NUMBER_AND_REST.exec(plain) ?? [];
  if (sign === undefined) return { kind: 'needs-engine' };
  const name = after.trim();
  const unit = name === '' ? definition.displayUnit : unitNamed(name);
  if (unit === undefined) {
    return ONE_NAME.test(name)
      ? { kind: 'refused', code: 'unit-unknown', unit: name }
      : { kind: 'needs-engine' };
  }

  const number = readNumber(figures);
  if (number.kind === 'refused') return number;
  const value = Number(`${sign}${number.digits}`) / (divisor === undefined ? 1 : Number(divisor));
  const unitWasTyped = name !== '';
  return settle(
    { value, unit, unitWasTyped, isBareNumber: !unitWasTyped && divisor === undefined },
    definition,
  );
}
