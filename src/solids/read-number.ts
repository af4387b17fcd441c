const ZERO = 0x30;
const POINT = 0x2e;
/** Decimal places or powers up to this are exact as a double, so one division rounds once. */
const EXACT_POWERS = Float64Array.from({ length: 23 }, (_, power) => 10 ** power);
/** Digits that fit a double without rounding. */
const MOST_DIGITS = 15;

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
  let at = from;
  const sign = bytes[at];
  if (sign === 0x2d || sign === 0x2b) at += 1;
  let digits = 0;
  let value = 0;
  let places = -1;
  for (; at < to; at += 1) {
    const byte = bytes[at] ?? 0;
    if (byte === POINT && places < 0) {
      places = 0;
      continue;
    }
    const digit = byte - ZERO;
    if (digit < 0 || digit > 9) return slowly(bytes, from, to);
    value = value * 10 + digit;
    digits += 1;
    if (places >= 0) places += 1;
  }
  if (digits === 0) return Number.NaN;
  if (digits > MOST_DIGITS) return slowly(bytes, from, to);
  const size = places > 0 ? value / (EXACT_POWERS[places] ?? 1) : value;
  return sign === 0x2d ? -size : size;
}
