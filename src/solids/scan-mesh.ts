import type { NumberList } from './number-list.ts';
import { readNumber, readShortNumber, shortNumber } from './read-number.ts';

const LESS = 0x3c;
const GREATER = 0x3e;
const SLASH = 0x2f;
const EQUALS = 0x3d;
const COLON = 0x3a;
const EXCLAMATION = 0x21;
const QUOTE = 0x22;
const APOSTROPHE = 0x27;
const SPACE = 0x20;
const HYPHEN = 0x2d;

/** What the elements of a list are called and where their three numbers stand. */
export interface ElementShape {
  readonly name: string;
  /** Which of the three numbers an attribute is, by its name from `from` up to `to`; −1 for another one. */
  readonly slotOf: (bytes: Uint8Array, from: number, to: number) => number;
  /** What stands before the three numbers and after the last one where an element is written in the usual way. */
  readonly usual: readonly [Uint8Array, Uint8Array, Uint8Array, Uint8Array];
}

const usual = (...parts: readonly [string, string, string, string]): ElementShape['usual'] => {
  const [a, b, c, d] = parts;
  const bytesOf = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
  return [bytesOf(a), bytesOf(b), bytesOf(c), bytesOf(d)];
};

const oneOfThree = (slot: number) => (slot >= 0 && slot < 3 ? slot : -1);

/** x, y and z, which follow each other in ASCII. */
export const VERTEX: ElementShape = {
  name: 'vertex',
  slotOf: (bytes, from, to) => (to - from === 1 ? oneOfThree((bytes[from] ?? 0) - 0x78) : -1),
  usual: usual('<vertex x="', '" y="', '" z="', '"'),
};

/** v1, v2 and v3. */
export const TRIANGLE: ElementShape = {
  name: 'triangle',
  slotOf: (bytes, from, to) =>
    to - from === 2 && bytes[from] === 0x76 ? oneOfThree((bytes[from + 1] ?? 0) - 0x31) : -1,
  usual: usual('<triangle v1="', '" v2="', '" v3="', '"'),
};

/** Where a scan stands. */
export type Scan =
  /** At the end tag of the list, which is for the reader of the whole document. */
  | { readonly kind: 'ended'; readonly at: number }
  /** At something else than an element of the list, or at one that is not all there yet. */
  | { readonly kind: 'stopped'; readonly at: number };

const isSpace = (byte: number) => byte <= SPACE;

/** Whether the bytes from `from` up to `to` are a word, after a prefix with a colon if there is one. */
function isNamed(bytes: Uint8Array, from: number, to: number, word: string): boolean {
  const start = to - word.length;
  if (start < from || (start > from && bytes[start - 1] !== COLON)) return false;
  for (let place = 0; place < word.length; place += 1)
    if (bytes[start + place] !== word.charCodeAt(place)) return false;
  return true;
}

/** End of a name. */
function nameEnd(bytes: Uint8Array, from: number): number {
  let at = from;
  for (; at < bytes.length; at += 1) {
    const byte = bytes[at] ?? 0;
    if (isSpace(byte) || byte === SLASH || byte === GREATER || byte === EQUALS) break;
  }
  return at;
}

/** The place after a comment that begins here; −1 where none does or it does not end. */
function afterComment(bytes: Uint8Array, from: number): number {
  if (bytes[from + 2] !== HYPHEN || bytes[from + 3] !== HYPHEN) return -1;
  for (let at = bytes.indexOf(GREATER, from + 6); at >= 0; at = bytes.indexOf(GREATER, at + 1))
    if (bytes[at - 1] === HYPHEN && bytes[at - 2] === HYPHEN) return at + 1;
  return -1;
}

const found: [number, number, number] = [0, 0, 0];

/** The place after some bytes if they stand here, −1 otherwise. */
function after(bytes: Uint8Array, from: number, wanted: Uint8Array): number {
  for (let place = 0; place < wanted.length; place += 1) if (bytes[from + place] !== wanted[place]) return -1;
  return from + wanted.length;
}

/** Reads an element written in the usual way into `found`; the place after it, −1 where it is written otherwise. */
function readUsual(
  bytes: Uint8Array,
  from: number,
  [first, second, third, last]: ElementShape['usual'],
): number {
  const a = after(bytes, from, first);
  if (a < 0) return -1;
  found[0] = readShortNumber(bytes, a);
  const b = after(bytes, shortNumber.end, second);
  if (b < 0) return -1;
  found[1] = readShortNumber(bytes, b);
  const c = after(bytes, shortNumber.end, third);
  if (c < 0) return -1;
  found[2] = readShortNumber(bytes, c);
  let at = after(bytes, shortNumber.end, last);
  if (at < 0) return -1;
  if (bytes[at] === SPACE) at += 1;
  const isWhole = bytes[at] === SLASH && bytes[at + 1] === GREATER;
  // Longer numbers are read the slow way.
  return isWhole && !Number.isNaN(found[0] + found[1] + found[2]) ? at + 2 : -1;
}

/** Reads the attributes of an element from the end of its name into `found`; the place after it, −1 where damaged. */
function readAttributes(bytes: Uint8Array, from: number, shape: ElementShape): number {
  found.fill(Number.NaN);
  let at = from;
  for (;;) {
    while (at < bytes.length && isSpace(bytes[at] ?? 0)) at += 1;
    if (bytes[at] === GREATER) return at + 1;
    if (bytes[at] === SLASH) return bytes[at + 1] === GREATER ? at + 2 : -1;
    const end = nameEnd(bytes, at);
    let value = end;
    while (value < bytes.length && isSpace(bytes[value] ?? 0)) value += 1;
    if (end === at || bytes[value] !== EQUALS) return -1;
    value += 1;
    while (value < bytes.length && isSpace(bytes[value] ?? 0)) value += 1;
    const quote = bytes[value];
    if (quote !== QUOTE && quote !== APOSTROPHE) return -1;
    let close = value + 1;
    while (close < bytes.length && bytes[close] !== quote && bytes[close] !== LESS) close += 1;
    if (bytes[close] !== quote) return -1;
    // A prefix makes another attribute of it: only the bare name counts.
    const slot = shape.slotOf(bytes, at, end);
    if (slot >= 0) found[slot] = readNumber(bytes, value + 1, close);
    at = close + 1;
  }
}

/**
 * Reads the elements of a list of vertices or triangles out of the bytes of an XML document, several times as fast as a
 * general reader: they are nearly all of the file.
 *
 * @param from - after the start tag of the list, or where the scan stopped
 * @param into - three numbers an element; NaN where an attribute is missing or no number
 */
export function scanElements(bytes: Uint8Array, from: number, shape: ElementShape, into: NumberList): Scan {
  let at = from;
  for (;;) {
    while (at < bytes.length && isSpace(bytes[at] ?? 0)) at += 1;
    if (bytes[at] !== LESS) return { kind: 'stopped', at };
    const quickly = readUsual(bytes, at, shape.usual);
    if (quickly >= 0) {
      into.add(found[0], found[1], found[2]);
      at = quickly;
      continue;
    }
    const next = bytes[at + 1];
    if (next === EXCLAMATION) {
      const beyond = afterComment(bytes, at);
      if (beyond < 0) return { kind: 'stopped', at };
      at = beyond;
      continue;
    }
    const start = next === SLASH ? at + 2 : at + 1;
    const end = nameEnd(bytes, start);
    if (end === bytes.length) return { kind: 'stopped', at };
    const isElement = isNamed(bytes, start, end, shape.name);
    if (next === SLASH) {
      // The end tag of an element that was not closed at once; any other ends the list.
      if (!isElement) return { kind: 'ended', at };
      const close = bytes.indexOf(GREATER, end);
      if (close < 0) return { kind: 'stopped', at };
      at = close + 1;
      continue;
    }
    const beyond = isElement ? readAttributes(bytes, end, shape) : -1;
    if (beyond < 0) return { kind: 'stopped', at };
    into.add(found[0], found[1], found[2]);
    at = beyond;
  }
}
