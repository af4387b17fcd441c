import { readNumber } from './read-number.ts';
import { type Corners, type InSteps, READING_LIMITS, type Refused, refused } from './reading.ts';

/** Bytes read between two looks at the messages. */
const CHUNK = 4_000_000;
const NEWLINE = 0x0a;
const SPACE = 0x20;
/** A longer word is none of the language's. */
const LONGEST_WORD = 16;

/** Words of a text one after the other, with the line they stand in. */
class Words {
  from = 0;
  to = 0;
  line = 1;
  private readonly bytes: Uint8Array;

  constructor(bytes: Uint8Array) {
    this.bytes = bytes;
    // The mark of UTF-8 that some programs put first.
    if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) this.to = 3;
  }

  /** Goes to the next word; false at the end. */
  next(): boolean {
    const { bytes } = this;
    let at = this.to;
    for (; at < bytes.length && (bytes[at] ?? 0) <= SPACE; at += 1) if (bytes[at] === NEWLINE) this.line += 1;
    this.from = at;
    while (at < bytes.length && (bytes[at] ?? 0) > SPACE) at += 1;
    this.to = at;
    return this.from < at;
  }

  skipLine(): void {
    const end = this.bytes.indexOf(NEWLINE, this.to);
    this.to = end < 0 ? this.bytes.length : end;
  }

  word(): string {
    const end = Math.min(this.to, this.from + LONGEST_WORD);
    return String.fromCharCode(...this.bytes.subarray(this.from, end)).toLowerCase();
  }

  number(): number {
    return this.next() ? readNumber(this.bytes, this.from, this.to) : Number.NaN;
  }

  /** Goes over three numbers. */
  skipThree(): void {
    this.next();
    this.next();
    this.next();
  }
}

/** The corners in the text of an STL. Whatever stands in it may be broken; the words between the corners are checked. */
export function* cornersOfText(bytes: Uint8Array): InSteps<Corners | Refused> {
  const words = new Words(bytes);
  let corners = new Float64Array(9 * 1024);
  let filled = 0;
  let parts = 0;
  let isOpen = false;
  let report = CHUNK;
  const limit = READING_LIMITS.triangles;
  const damaged = () => refused({ code: 'damaged-text', line: words.line });

  /** Three corners up to the end of the facet; false where they are not. */
  function facet(): boolean {
    if (!words.next() || words.word() !== 'normal') return false;
    words.skipThree();
    if (!words.next() || words.word() !== 'outer' || !words.next() || words.word() !== 'loop') return false;
    for (let corner = 0; corner < 3; corner += 1) {
      if (!words.next() || words.word() !== 'vertex') return false;
      for (let side = 0; side < 3; side += 1) corners[filled + 3 * corner + side] = words.number();
    }
    return words.next() && words.word() === 'endloop' && words.next() && words.word() === 'endfacet';
  }

  while (words.next()) {
    const word = words.word();
    if (word === 'solid' || word === 'endsolid') {
      if (isOpen === (word === 'solid')) return damaged();
      isOpen = word === 'solid';
      if (isOpen) parts += 1;
      words.skipLine();
    } else if (word === 'facet' && isOpen) {
      if (filled / 9 >= limit) return refused({ code: 'too-many-triangles', triangles: limit + 1, limit });
      if (filled + 9 > corners.length) {
        const larger = new Float64Array(2 * corners.length);
        larger.set(corners);
        corners = larger;
      }
      if (!facet())
        return words.to >= bytes.length ? refused({ code: 'truncated', bytes: bytes.length }) : damaged();
      filled += 9;
      if (words.to > report) {
        report += CHUNK;
        yield words.to / bytes.length;
      }
    } else return damaged();
  }
  if (isOpen) return refused({ code: 'truncated', bytes: bytes.length });
  return { kind: 'corners', corners: corners.slice(0, filled), parts };
}
