import { Inflate } from 'fflate';

/** Packed bytes taken at a time: they unpack to 66 MB at the very most. */
export const PIECE = 65_536;

/** What deflated bytes unpack to, piece by piece; throws where they are damaged or not all there. */
export type Inflating = (packed: Uint8Array<ArrayBuffer>) => AsyncIterable<Uint8Array> | Iterable<Uint8Array>;

/** By the browser itself: several times as fast, and it takes little memory of its own. */
export async function* inflatingByBrowser(
  packed: Uint8Array<ArrayBuffer>,
): AsyncGenerator<Uint8Array, void, undefined> {
  let at = 0;
  const source = new ReadableStream<BufferSource>(
    {
      pull(controller) {
        if (at >= packed.length) controller.close();
        else controller.enqueue(packed.subarray(at, at + PIECE));
        at += PIECE;
      },
    },
    // Nothing ahead of what is asked for.
    { highWaterMark: 0 },
  );
  const reader = source.pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) yield piece.value;
}

/** By a program: for browsers that cannot. */
export function* inflatingByProgram(packed: Uint8Array<ArrayBuffer>): Generator<Uint8Array, void, undefined> {
  const unpacked: Uint8Array[] = [];
  const inflate = new Inflate((piece) => unpacked.push(piece));
  for (let at = 0; at < packed.length; at += PIECE) {
    inflate.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
    yield* unpacked.splice(0);
  }
}

/** The faster way that there is. */
export function inflatingHere(
  platform: Pick<typeof globalThis, 'DecompressionStream'> = globalThis,
): Inflating {
  try {
    // Throws where there is none, or where it does not know this way of packing.
    new platform.DecompressionStream('deflate-raw');
    return inflatingByBrowser;
  } catch {
    return inflatingByProgram;
  }
}
