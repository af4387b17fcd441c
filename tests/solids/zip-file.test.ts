import { describe, expect, test } from 'vitest';
import { atOnce, refused } from '../../src/solids/reading.ts';
import { type Unpacking, unpacking, zipDirectory } from '../../src/solids/zip-file.ts';
import { zipOf } from '../support/solid-files.ts';

const zip = zipOf({ 'part.txt': 'a part '.repeat(1000) });

/** Unpacks by a way that makes a hundred pieces of a thousand bytes: how many were asked for, and what was taken. */
async function unpackedBy({ says, ...rest }: { says: number } & Partial<Unpacking>) {
  const entry = zipDirectory(zip)?.get('part.txt');
  if (entry === undefined) throw new Error('the zip has no part');
  const count = { asked: 0, taken: 0 };
  function* inflating() {
    while (count.asked < 100) {
      count.asked += 1;
      yield new Uint8Array(1000);
    }
  }
  const take = (piece: Uint8Array) => {
    count.taken += piece.length;
    return undefined;
  };
  const steps = unpacking(zip, {
    entry: { ...entry, unpacked: says },
    limit: 1e6,
    inflating,
    take,
    ...rest,
  });
  return { refusal: (await atOnce(steps))?.refusal, ...count };
}

describe('unpacking', () => {
  test('takes all pieces of what is as long as it says', async () => {
    expect(await unpackedBy({ says: 100_000 })).toEqual({ refusal: undefined, asked: 100, taken: 100_000 });
  });
  test('stops at the first piece that is more than the directory says', async () => {
    const { refusal, asked, taken } = await unpackedBy({ says: 2500 });
    expect({ refusal, asked, taken }).toEqual({ refusal: { code: 'damaged-zip' }, asked: 3, taken: 2000 });
  });
  test('asks for nothing that would be beyond the limit', async () => {
    expect(await unpackedBy({ says: 1_000_001 })).toEqual({
      refusal: { code: 'unpacks-too-large', bytes: 1_000_001, limit: 1_000_000 },
      asked: 0,
      taken: 0,
    });
  });
  test('stops where whoever takes it refuses', async () => {
    const take = () => refused({ code: 'no-triangles' });
    expect(await unpackedBy({ says: 100_000, take })).toMatchObject({
      refusal: { code: 'no-triangles' },
      asked: 1,
    });
  });
});
