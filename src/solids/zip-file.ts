import { checkedPieces, type Inflating, PIECE } from './inflate.ts';
import { type Refused, refused } from './reading.ts';

// Records of the zip format, by their first four bytes.
const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_ENTRY = 0x04034b50;
const LARGE_LOCATOR = 0x07064b50;
const LARGE_END = 0x06064b50;

const END_LENGTH = 22;
const LONGEST_COMMENT = 65_535;
const LOCATOR_LENGTH = 20;
const ENTRY_LENGTH = 46;
const LOCAL_LENGTH = 30;
/** Stands in a 32-bit field whose value is in the extra field of large files. */
const ELSEWHERE = 0xffffffff;
const LARGE_EXTRA = 0x0001;
const IS_ENCRYPTED = 0x0001;
const STORED = 0;
const DEFLATED = 8;
/** Unpacked bytes between two looks at the messages. */
const MOST_AT_ONCE = 2_000_000;

/** One file in a zip. */
export interface ZipEntry {
  readonly isEncrypted: boolean;
  readonly method: number;
  /** CRC-32 of what is in it. */
  readonly crc: number;
  readonly packed: number;
  /** What the directory says; unpacking stops where it turns out to be more. */
  readonly unpacked: number;
  /** Of its local record. */
  readonly start: number;
}

/** Files of a zip by their names in small letters, without a leading slash. */
export type ZipDirectory = ReadonlyMap<string, ZipEntry>;

const large = (view: DataView, at: number) => Number(view.getBigUint64(at, true));

/** Where the directory begins; undefined where there is none. */
function directoryStart(view: DataView): number | undefined {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at -= 1) {
    if (view.getUint32(at, true) !== END_OF_DIRECTORY) continue;
    const start = view.getUint32(at + 16, true);
    if (start !== ELSEWHERE) return start;
    const locator = at - LOCATOR_LENGTH;
    if (locator < 0 || view.getUint32(locator, true) !== LARGE_LOCATOR) return undefined;
    const end = large(view, locator + 8);
    if (end + 56 > view.byteLength || view.getUint32(end, true) !== LARGE_END) return undefined;
    return large(view, end + 48);
  }
  return undefined;
}

/** Sizes and start of an entry, from the extra field where they do not fit. */
function placeOf(view: DataView, at: number): Pick<ZipEntry, 'packed' | 'unpacked' | 'start'> {
  const place = {
    unpacked: view.getUint32(at + 24, true),
    packed: view.getUint32(at + 20, true),
    start: view.getUint32(at + 42, true),
  };
  let extra = at + ENTRY_LENGTH + view.getUint16(at + 28, true);
  const end = Math.min(view.byteLength, extra + view.getUint16(at + 30, true));
  for (; extra + 4 <= end; extra += 4 + view.getUint16(extra + 2, true)) {
    if (view.getUint16(extra, true) !== LARGE_EXTRA) continue;
    let next = extra + 4;
    // Only what does not fit stands there, in this order.
    for (const key of ['unpacked', 'packed', 'start'] as const) {
      if (place[key] !== ELSEWHERE || next + 8 > end) continue;
      place[key] = large(view, next);
      next += 8;
    }
  }
  return place;
}

/** The directory of a zip; undefined where it is damaged. */
export function zipDirectory(bytes: Uint8Array): ZipDirectory | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const start = directoryStart(view);
  if (start === undefined) return undefined;
  const entries = new Map<string, ZipEntry>();
  let at = start;
  while (at + ENTRY_LENGTH <= view.byteLength && view.getUint32(at, true) === DIRECTORY_ENTRY) {
    const nameEnd = at + ENTRY_LENGTH + view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + ENTRY_LENGTH, nameEnd));
    entries.set(name.replace(/^\/+/, '').toLowerCase(), {
      isEncrypted: (view.getUint16(at + 8, true) & IS_ENCRYPTED) !== 0,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      ...placeOf(view, at),
    });
    at = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries.size > 0 ? entries : undefined;
}

/** The packed bytes of an entry; undefined where they are not all there. */
function packedBytes(
  bytes: Uint8Array<ArrayBuffer>,
  { start, packed }: ZipEntry,
): Uint8Array<ArrayBuffer> | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (start + LOCAL_LENGTH > view.byteLength || view.getUint32(start, true) !== LOCAL_ENTRY) return undefined;
  const data = start + LOCAL_LENGTH + view.getUint16(start + 26, true) + view.getUint16(start + 28, true);
  return data + packed <= bytes.length ? bytes.subarray(data, data + packed) : undefined;
}

/** Stored bytes in pieces, as if they had been unpacked. */
function* inPieces(bytes: Uint8Array): Generator<Uint8Array, void, undefined> {
  for (let at = 0; at < bytes.length; at += PIECE) yield bytes.subarray(at, at + PIECE);
}

export interface Unpacking {
  readonly entry: ZipEntry;
  /** Most bytes that it may unpack to. */
  readonly limit: number;
  readonly inflating: Inflating;
  /** Takes what is unpacked, piece by piece; a refusal ends it. */
  readonly take: (piece: Uint8Array) => Refused | undefined;
}

/**
 * Unpacks one file in steps. What would become larger than the limit is refused before it is unpacked; where the
 * directory lies about the size, as soon as it shows; where the bytes have another CRC-32 than it says, at their end.
 */
export async function* unpacking(
  bytes: Uint8Array<ArrayBuffer>,
  { entry, limit, inflating, take }: Unpacking,
): AsyncGenerator<number, Refused | undefined, undefined> {
  if (entry.isEncrypted) return refused({ code: 'encrypted' });
  if (entry.method !== STORED && entry.method !== DEFLATED)
    return refused({ code: 'packed-otherwise', method: entry.method });
  if (entry.unpacked > limit) return refused({ code: 'unpacks-too-large', bytes: entry.unpacked, limit });
  const packed = packedBytes(bytes, entry);
  if (packed === undefined) return refused({ code: 'damaged-zip' });
  const pieces = entry.method === STORED ? checkedPieces(inPieces(packed), entry) : inflating(packed, entry);
  let unpacked = 0;
  let report = 0;
  try {
    for await (const piece of pieces) {
      unpacked += piece.length;
      if (unpacked > entry.unpacked) break;
      const refusal = take(piece);
      if (refusal !== undefined) return refusal;
      if (unpacked < report) continue;
      report = unpacked + MOST_AT_ONCE;
      yield unpacked / entry.unpacked;
    }
  } catch {
    return refused({ code: 'damaged-zip' });
  }
  return unpacked === entry.unpacked ? undefined : refused({ code: 'damaged-zip' });
}
