import { strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Surface } from '../../src/core/hole-finding/surface.ts';
import { readStl } from '../../src/solids/read-stl.ts';
import type { Reading, Solid } from '../../src/solids/reading.ts';
import { blind, drilledPlate, through } from '../support/drilled-plate.ts';
import fc from '../support/fast-check.ts';
import { stlBinary, stlText } from '../support/solid-files.ts';

const plate = drilledPlate([through(4.3, 24), blind(5.2, 6.1, 31)]);

async function solidIn(pending: Promise<Reading>): Promise<Solid> {
  const reading = await pending;
  if (reading.kind === 'refused') throw new Error(JSON.stringify(reading.refusal));
  return reading.solid;
}
const text = (part: string) => readStl(strToU8(part));
/** A refusal with its code, or a part without a number that is none. */
const isWhole = (reading: Reading) =>
  reading.kind === 'refused'
    ? /^[a-z-]+$/.test(reading.refusal.code)
    : reading.solid.mesh.positions.every(Number.isFinite);
const refusal = (code: string, facts: object = {}) => ({ kind: 'refused', refusal: { code, ...facts } });

/** Corners of all triangles, in their order. */
const cornersOf = ({ positions, triangles }: Surface) =>
  [...triangles].flatMap((vertex) => Array.from(positions.subarray(3 * vertex, 3 * vertex + 3)));
const scaled = (by: number): Surface => ({ ...plate, positions: plate.positions.map((value) => by * value) });

describe('readStl', () => {
  test('gives the triangles of a binary file in their order, corners shared', async () => {
    const { mesh, format, extent, notices } = await solidIn(readStl(stlBinary(plate)));
    expect(cornersOf(mesh)).toEqual(cornersOf(plate).map((value) => Math.fround(value) + 0));
    expect(mesh.positions.length).toBe(plate.positions.length);
    expect({ format, extent, notices }).toEqual({ format: 'stl-binary', extent: 40, notices: [] });
  });
  test('gives those of a text, to the last digit', async () => {
    const { mesh, format } = await solidIn(text(stlText(plate, 'a plate')));
    expect(cornersOf(mesh)).toEqual(cornersOf(plate).map((value) => value + 0));
    expect(mesh.positions.length).toBe(plate.positions.length);
    expect(format).toBe('stl-text');
  });
  test('reads a binary file whose header begins like a text', async () => {
    expect((await solidIn(readStl(stlBinary(plate, 'solid plate')))).format).toBe('stl-binary');
  });
  test('reads a text in capitals, with line ends of two signs, a mark in front and no names', async () => {
    const other = `\u{feff}${stlText(plate, '').toUpperCase().replaceAll('\n', '\r\n')}`;
    expect((await solidIn(text(other))).mesh.triangles).toEqual(
      (await solidIn(text(stlText(plate)))).mesh.triangles,
    );
  });
  test('reads a file that lies within a larger buffer', async () => {
    const file = stlBinary(plate);
    const room = new Uint8Array(file.length + 7);
    room.set(file, 3);
    expect(await readStl(room.subarray(3, 3 + file.length))).toEqual(await readStl(file));
  });
  test('takes several solids of one text together, and says so', async () => {
    const { mesh, notices } = await solidIn(text(stlText(plate, 'one') + stlText(scaled(3), 'two')));
    expect(mesh.triangles.length).toBe(2 * plate.triangles.length);
    expect(notices).toEqual([{ code: 'several-parts', parts: 2 }]);
  });
  test('welds corners that differ by rounding and leaves out what collapses', async () => {
    // Corners of a 40 mm part, 0.00001 mm apart; the last triangle is a sliver between them.
    const positions = [0, 0, 0, 40, 0, 0, 0, 30, 0, 40, 30, 0, 40.00001, 0, 0, 0, 30.00001, 0];
    const file = stlText({
      positions: Float64Array.from(positions),
      triangles: Uint32Array.of(0, 1, 2, 4, 3, 5, 1, 4, 2),
    });
    const { mesh, notices } = await solidIn(text(file));
    expect(mesh.positions.length / 3).toBe(4);
    expect([...mesh.triangles]).toEqual([0, 1, 2, 1, 3, 2]);
    expect(notices).toEqual([{ code: 'left-out', triangles: 1 }]);
  });
  test.each([
    [0.04, 'very-small', 1.6],
    [60, 'very-large', 2400],
  ])('notices a part of unlikely size, scaled by %f', async (by, code, extent) => {
    expect((await solidIn(text(stlText(scaled(by))))).notices).toEqual([{ code, extent }]);
  });
});

describe('readStl refuses', () => {
  const file = stlBinary(plate);
  const part = stlText(plate);
  const withNumber = (place: number, value: number) => {
    const bytes = file.slice();
    new DataView(bytes.buffer).setFloat32(84 + 50 * 3 + 12 + 4 * place, value, true);
    return bytes;
  };
  test.each<[string, Uint8Array, object]>([
    ['an empty file', new Uint8Array(), refusal('empty-file')],
    [
      'a picture',
      Uint8Array.from({ length: 5000 }, (_, place) => (place * 167) % 251),
      refusal('not-a-solid'),
    ],
    ['a letter', strToU8('Dear all, please find attached'), refusal('not-a-solid')],
    [
      'a binary file that was cut off',
      file.slice(0, 3000),
      refusal('truncated', { bytes: 3000, expected: file.length }),
    ],
    [
      'a binary file with something after it',
      Uint8Array.from([...file, ...Array.from({ length: 33 }, () => 7)]),
      refusal('wrong-length', { bytes: file.length + 33, expected: file.length }),
    ],
    ['a binary file without triangles', new Uint8Array(84), refusal('no-triangles')],
    ['a text without triangles', strToU8('solid nothing\nendsolid nothing\n'), refusal('no-triangles')],
    ['a number that is none', withNumber(5, Number.NaN), refusal('not-a-number', { triangle: 4 })],
    ['an infinite number', withNumber(2, -Infinity), refusal('not-a-number', { triangle: 4 })],
    [
      'a coordinate beyond all parts',
      withNumber(4, 2 ** 30),
      refusal('out-of-range', { coordinate: 2 ** 30, limit: 1e7 }),
    ],
    ['a text that was cut off', strToU8(part.slice(0, 2000)), refusal('truncated', { bytes: 2000 })],
    ['a text that lacks its end', strToU8(part.replace(/endsolid.*/, '')), { kind: 'refused' }],
    [
      'a text with a foreign word',
      strToU8(part.replace('endloop', 'endlop')),
      refusal('damaged-text', { line: 7 }),
    ],
    [
      'a text with letters for a number',
      strToU8(part.replace(/vertex \S+/, 'vertex 1o.5')),
      refusal('not-a-number', { triangle: 1 }),
    ],
  ])('%s', async (_what, bytes, expected) => {
    expect(await readStl(bytes)).toMatchObject(expected);
  });
  test('a file beyond the limit, whatever is in it', async () => {
    expect(await readStl(new Uint8Array(100_000_001))).toEqual(
      refusal('file-too-large', { bytes: 100_000_001, limit: 100_000_000 }),
    );
  });
  test('or reads whatever bytes there are, and never throws', async () => {
    const anyDamage = fc.array(fc.tuple(fc.nat(file.length - 1), fc.nat(255)), { maxLength: 20 });
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(file, strToU8(part)),
        anyDamage,
        fc.nat(4),
        async (whole, damage, cut) => {
          const bytes = whole.slice(0, whole.length - cut);
          for (const [at, value] of damage) bytes[at] = value;
          expect(isWhole(await readStl(bytes))).toBe(true);
        },
      ),
    );
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
        expect((await readStl(bytes)).kind).toBe('refused');
      }),
    );
  });
});
