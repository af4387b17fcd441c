import { crc32 } from 'node:zlib';
import { deflateSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import {
  type Inflating,
  inflatingByBrowser,
  inflatingByProgram,
  inflatingHere,
  type Said,
} from '../../src/solids/inflate.ts';

/** Shuffled digits, which pack to about a half: several pieces packed, many more unpacked. */
const bytes = Uint8Array.from(
  { length: 400_000 },
  (_, place) => 48 + (Math.floor(1e6 * Math.sin(place ** 2)) & 15),
);
const packed = deflateSync(bytes);
const SAID: Said = { crc: crc32(bytes), unpacked: bytes.length };

async function unpackedBy(
  inflating: Inflating,
  from: Uint8Array<ArrayBuffer>,
  said: Said = SAID,
): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  for await (const piece of inflating(from, said)) pieces.push(piece);
  return new Uint8Array(await new Blob(pieces.map((piece) => piece.slice())).arrayBuffer());
}

describe.each([
  ['the browser', inflatingByBrowser],
  ['a program', inflatingByProgram],
])('unpacking by %s', (_who, inflating) => {
  test('gives what was packed, in pieces', async () => {
    expect(packed.length).toBeGreaterThan(2 * 65_536);
    expect(Buffer.compare(await unpackedBy(inflating, packed), bytes)).toBe(0);
  });
  test('takes bytes that lie within a larger buffer', async () => {
    const room = new Uint8Array(packed.length + 9);
    room.set(packed, 5);
    const within = room.subarray(5, 5 + packed.length);
    expect(Buffer.compare(await unpackedBy(inflating, within), bytes)).toBe(0);
  });
  test('throws where the end is missing', async () => {
    await expect(unpackedBy(inflating, packed.slice(0, -7))).rejects.toThrow();
  });
  test('throws at the end where one bit of the CRC-32 is another', async () => {
    const taken: number[] = [];
    const all = async () => {
      for await (const piece of inflating(packed, { ...SAID, crc: (SAID.crc ^ 1) >>> 0 }))
        taken.push(piece.length);
    };
    await expect(all()).rejects.toThrow();
    expect(taken.length).toBeGreaterThan(1);
  });
  test('throws where the bytes are of something else', async () => {
    await expect(unpackedBy(inflating, Uint8Array.of(7, 255, 255, 1, 2, 3))).rejects.toThrow();
  });
});

describe('inflatingHere', () => {
  test('is by the browser where it can', () => {
    expect(inflatingHere()).toBe(inflatingByBrowser);
  });
  test('is by a program where the browser knows another way of packing only', () => {
    class Refusing extends DecompressionStream {
      constructor(format: CompressionFormat) {
        if (format === 'gzip') throw new TypeError(`no ${format}`);
        super(format);
      }
    }
    expect(inflatingHere({ DecompressionStream: Refusing })).toBe(inflatingByProgram);
  });
});
