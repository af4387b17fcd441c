const ZERO = 0x30;
const POINT = 0x2e;
const HYPHEN = 0x2d;
/** Decimal places or powers up to this are exact as a double, so one division rounds once. */
const EXACT_POWERS = Float64Array.from({ length: 23 }, (_, power) => 10 ** power);
/** Digits that fit a double without rounding. */
const MOST_DIGITS = 15;

/** Where the short number that was read last ends. */
export const shortNumber = { end: 0 };

/**
 * The number of digits and a point, perhaps negative, that begins here: exactly what the language makes of the same text.
 *
 * @returns the number, with its end in `shortNumber`; NaN where there is none or it has too many digits
 */
export function readShortNumber(bytes: Uint8Array, from: number): number {
  const isNegative = bytes[from] === HYPHEN;
  const start = isNegative ? from + 1 : from;
  let at = start;
  let value = 0;
  let point = -1;
  for (; ; at += 1) {
    const byte = bytes[at] ?? 0;
    const digit = byte - ZERO;
    if (digit >= 0 && digit <= 9) value = value * 10 + digit;
    else if (byte === POINT && point < 0) point = at;
    else break;
  }
  shortNumber.end = at;
  const places = point < 0 ? 0 : at - point - 1;
  const digits = at - start - (point < 0 ? 0 : 1);
  if (digits === 0 || digits > MOST_DIGITS) return Number.NaN;
  const size = places > 0 ? value / (EXACT_POWERS[places] ?? 1) : value;
  return isNegative ? -size : size;
}

/** Text of a number where the short way does not do; only what a decimal number may be made of. */
function slowly(bytes: Uint8Array, from: number, to: number): number {
  const text = String.fromCharCode(...bytes.subarray(from, Math.min(to, from + 64))).trim();
  return /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i.test(text) ? Number(text) : Number.NaN;
}

/**
 * A decimal number in ASCII: exactly what the language makes of the same text, several times as fast for short numbers.
 *
 * @returns the number; NaN where the text from `from` up to `to` is none
 */
export function readNumber(bytes: Uint8Array, from: number, to: number): number {
  const number = readShortNumber(bytes, from);
  return shortNumber.end === to && !Number.isNaN(number) ? number : slowly(bytes, from, to);
}
