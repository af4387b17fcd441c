import { readNumber } from './read-number.ts';

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

/** Numbers that arrive one after the other. */
export class NumberList {
  length = 0;
  private values = new Float64Array(3 * 1024);

  /** Room for three more, from `length` on. */
  add(a: number, b: number, c: number): void {
    if (this.length + 3 > this.values.length) {
      const larger = new Float64Array(2 * this.values.length);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[this.length] = a;
    this.values[this.length + 1] = b;
    this.values[this.length + 2] = c;
    this.length += 3;
  }

  all(): Float64Array {
    return this.values.subarray(0, this.length);
  }
}

/** What the elements of a list are called and where their three numbers stand. */
export interface ElementShape {
  readonly name: string;
  /** Which of the three numbers an attribute is, by its name from `from` up to `to`; −1 for another one. */
  readonly slotOf: (bytes: Uint8Array, from: number, to: number) => number;
}

const oneOfThree = (slot: number) => (slot >= 0 && slot < 3 ? slot : -1);

/** x, y and z, which follow each other in ASCII. */
export const VERTEX: ElementShape = {
  name: 'vertex',
  slotOf: (bytes, from, to) => (to - from === 1 ? oneOfThree((bytes[from] ?? 0) - 0x78) : -1),
};

/** v1, v2 and v3. */
export const TRIANGLE: ElementShape = {
  name: 'triangle',
  slotOf: (bytes, from, to) =>
    to - from === 2 && bytes[from] === 0x76 ? oneOfThree((bytes[from + 1] ?? 0) - 0x31) : -1,
};

/** Where a scan stands. */
export type Scan =
  /** Stopped to let others go on. */
  | { readonly kind: 'paused'; readonly at: number }
  /** At the end tag of the list, which is for the reader of the whole document. */
  | { readonly kind: 'ended'; readonly at: number }
  /** Something else than the elements of the list. */
  | { readonly kind: 'damaged'; readonly at: number };

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
 * @param from - after the start tag of the list, or where the scan paused
 * @param most - bytes after which it pauses
 * @param into - three numbers an element; NaN where an attribute is missing or no number
 */
export function scanElements(
  bytes: Uint8Array,
  { from, most, shape }: { readonly from: number; readonly most: number; readonly shape: ElementShape },
  into: NumberList,
): Scan {
  let at = from;
  for (;;) {
    while (at < bytes.length && isSpace(bytes[at] ?? 0)) at += 1;
    if (bytes[at] !== LESS) return { kind: 'damaged', at };
    if (at - from > most) return { kind: 'paused', at };
    const next = bytes[at + 1];
    if (next === EXCLAMATION) {
      const after = afterComment(bytes, at);
      if (after < 0) return { kind: 'damaged', at };
      at = after;
      continue;
    }
    const start = next === SLASH ? at + 2 : at + 1;
    const end = nameEnd(bytes, start);
    const isElement = isNamed(bytes, start, end, shape.name);
    if (next === SLASH) {
      // The end tag of an element that was not closed at once; any other ends the list.
      if (!isElement) return { kind: 'ended', at };
      const close = bytes.indexOf(GREATER, end);
      if (close < 0) return { kind: 'damaged', at };
      at = close + 1;
      continue;
    }
    const after = isElement ? readAttributes(bytes, end, shape) : -1;
    if (after < 0) return { kind: 'damaged', at };
    into.add(found[0], found[1], found[2]);
    at = after;
  }
}
