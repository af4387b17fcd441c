import { Inflate } from 'fflate';
import { crc32 } from './crc.ts';

/** Packed bytes taken at a time: they unpack to 66 MB at the very most. */
export const PIECE = 65_536;

/** What a zip says of bytes before they are unpacked. */
export interface Said {
  /** CRC-32 of the unpacked bytes. */
  readonly crc: number;
  /** How many there are. */
  readonly unpacked: number;
}

/**
 * What deflated bytes unpack to, piece by piece; throws where they are damaged, not all there or, at the end, other
 * than what was said of them.
 */
export type Inflating = (
  packed: Uint8Array<ArrayBuffer>,
  said: Said,
) => AsyncIterable<Uint8Array> | Iterable<Uint8Array>;

/** RFC 1952: the mark of the format, deflated, no flags, no time, no system. */
const GZIP_HEAD = Uint8Array.of(0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 255);

/** Deflated bytes as a gzip file in pieces: whoever unpacks one compares the CRC-32 and the length at its end. */
function* asGzip(
  packed: Uint8Array<ArrayBuffer>,
  { crc, unpacked }: Said,
): Generator<Uint8Array<ArrayBuffer>, void, undefined> {
  yield GZIP_HEAD;
  for (let at = 0; at < packed.length; at += PIECE) yield packed.subarray(at, at + PIECE);
  const tail = new DataView(new ArrayBuffer(8));
  tail.setUint32(0, crc, true);
  tail.setUint32(4, unpacked, true);
  yield new Uint8Array(tail.buffer);
}

/** By the browser itself: several times as fast, and it takes little memory of its own. */
export async function* inflatingByBrowser(
  packed: Uint8Array<ArrayBuffer>,
  said: Said,
): AsyncGenerator<Uint8Array, void, undefined> {
  const pieces = asGzip(packed, said);
  const source = new ReadableStream<BufferSource>(
    {
      pull(controller) {
        const piece = pieces.next();
        if (piece.done === true) controller.close();
        else controller.enqueue(piece.value);
      },
    },
    // Nothing ahead of what is asked for.
    { highWaterMark: 0 },
  );
  const reader = source.pipeThrough(new DecompressionStream('gzip')).getReader();
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) yield piece.value;
}

/** Pieces as they come; throws after the last where their CRC-32 is not the one that was said. */
export function* checkedPieces(
  pieces: Iterable<Uint8Array>,
  { crc }: Pick<Said, 'crc'>,
): Generator<Uint8Array, void, undefined> {
  let found = 0;
  for (const piece of pieces) {
    found = crc32(piece, found);
    yield piece;
  }
  if (found !== crc) throw new Error('the bytes are not those that were packed');
}

function* inflated(packed: Uint8Array): Generator<Uint8Array, void, undefined> {
  const unpacked: Uint8Array[] = [];
  const inflate = new Inflate((piece) => unpacked.push(piece));
  for (let at = 0; at < packed.length; at += PIECE) {
    inflate.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
    yield* unpacked.splice(0);
  }
}

/** By a program: for browsers that cannot. */
export const inflatingByProgram = (packed: Uint8Array<ArrayBuffer>, said: Said): Iterable<Uint8Array> =>
  checkedPieces(inflated(packed), said);

/** The faster way that there is. */
export function inflatingHere(
  platform: Pick<typeof globalThis, 'DecompressionStream'> = globalThis,
): Inflating {
  try {
    // Throws where there is none, or where it does not know this way of packing.
    new platform.DecompressionStream('gzip');
    return inflatingByBrowser;
  } catch {
    return inflatingByProgram;
  }
}
