import { describe, expect, test } from 'vitest';
import type { Surface } from '../../src/core/hole-finding/surface.ts';
import { inflatingByBrowser, inflatingByProgram } from '../../src/solids/inflate.ts';
import { readThreeMf } from '../../src/solids/read-three-mf.ts';
import type { Reading, Solid } from '../../src/solids/reading.ts';
import { blind, drilledPlate, through } from '../support/drilled-plate.ts';
import fc from '../support/fast-check.ts';
import { expectRelative } from '../support/published.ts';
import { meshText, modelText, plainModel, RELATIONS, threeMf, zipOf } from '../support/solid-files.ts';

const plate = drilledPlate([through(4.3, 12), blind(5.2, 6.1, 11)]);
const object = (id: number, attributes = '') =>
  `<object id="${id}" ${attributes}>${meshText(plate)}</object>`;

type File = Uint8Array<ArrayBuffer>;

/** What a file is read as: the same whichever way it is unpacked. */
async function read(bytes: File): Promise<Reading> {
  const byBrowser = await readThreeMf(bytes, inflatingByBrowser);
  expect(await readThreeMf(bytes, inflatingByProgram)).toEqual(byBrowser);
  return byBrowser;
}

async function solidOf(bytes: File): Promise<Solid> {
  const reading = await read(bytes);
  if (reading.kind === 'refused') throw new Error(JSON.stringify(reading.refusal));
  return reading.solid;
}
const solidIn = (model: string, others: Readonly<Record<string, string>> = {}) =>
  solidOf(threeMf(model, others));
/** A refusal with its code, or a part without a number that is none. */
const isWhole = (reading: Reading) =>
  reading.kind === 'refused'
    ? /^[a-z-]+$/.test(reading.refusal.code)
    : reading.solid.mesh.positions.every(Number.isFinite);
const refusal = (code: string, facts: object = {}) => ({ kind: 'refused', refusal: { code, ...facts } });

/** Six times the volume, with its sign: below 0 for a surface that is inside out. */
function sixfoldVolume({ positions, triangles }: Surface): number {
  let sum = 0;
  for (let at = 0; at < triangles.length; at += 3) {
    const [a = 0, b = 0, c = 0] = triangles.slice(at, at + 3);
    const [ax = 0, ay = 0, az = 0] = positions.slice(3 * a, 3 * a + 3);
    const [bx = 0, by = 0, bz = 0] = positions.slice(3 * b, 3 * b + 3);
    const [cx = 0, cy = 0, cz = 0] = positions.slice(3 * c, 3 * c + 3);
    sum += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return sum;
}

const firstPlace = ({ mesh }: Solid) => Array.from(mesh.positions.subarray(0, 3));
const [x = 0, y = 0, z = 0] = plate.positions;

describe('readThreeMf', () => {
  test('gives vertices and triangles to the last digit', async () => {
    const { mesh, format, extent, notices } = await solidIn(plainModel(plate));
    expect(mesh.positions).toEqual(plate.positions.map((value) => value + 0));
    expect(mesh.triangles).toEqual(plate.triangles);
    expect({ format, extent, notices }).toEqual({ format: 'three-mf', extent: 40, notices: [] });
  });
  test.each([
    ['micron', 0.001],
    ['millimeter', 1],
    ['centimeter', 10],
    ['inch', 25.4],
    ['foot', 304.8],
    ['meter', 1000],
  ])('takes the unit %s as %f mm (3MF core specification, by definition)', async (unit, millimetres) => {
    expectRelative((await solidIn(plainModel(plate, unit))).extent, 40 * millimetres);
  });
  test('takes millimetres where no unit is given', async () => {
    const model = modelText({ attributes: '', resources: object(1), build: '<item objectid="1"/>' });
    expect((await solidIn(model)).extent).toBe(40);
  });
  test('puts an item where its transform says: a row vector times four rows', async () => {
    const build = '<item objectid="1" transform="0 2 0 -1 0 0 0 0 1 7 8 9"/>';
    expect(firstPlace(await solidIn(modelText({ resources: object(1), build })))).toEqual([
      -y + 7,
      2 * x + 8,
      z + 9,
    ]);
  });
  test('puts a component into its object first, then the object on the bed', async () => {
    const resources = `${object(1)}<object id="2"><components><component objectid="1" transform="3 0 0 0 1 0 0 0 1 0 0 5"/></components></object>`;
    const build = '<item objectid="2" transform="0 1 0 -1 0 0 0 0 1 100 0 0"/>';
    expect(firstPlace(await solidIn(modelText({ resources, build })))).toEqual([-y + 100, 3 * x, z + 5]);
  });
  test('turns the triangles of a mirrored item round', async () => {
    const build = '<item objectid="1" transform="-1 0 0 0 1 0 0 0 1 0 0 0"/>';
    const { mesh } = await solidIn(modelText({ resources: object(1), build }));
    expectRelative(sixfoldVolume(mesh), sixfoldVolume(plate));
  });
  test('reads all that stands on the bed, and says how many; supports and what is not placed are left', async () => {
    const { mesh, notices } = await solidIn(
      modelText({
        resources: object(1) + object(2, 'type="support"') + object(3) + object(4),
        build: '<item objectid="1"/><item objectid="2"/><item objectid="4"/>',
      }),
    );
    expect(mesh.triangles.length).toBe(2 * plate.triangles.length);
    expect(notices).toEqual([{ code: 'several-parts', parts: 2 }]);
  });
  test('follows a component into another part of the file (production extension)', async () => {
    const production = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
    const model = modelText({
      attributes: `unit="centimeter" xmlns:q="${production}" requiredextensions="q"`,
      resources:
        '<object id="5"><components><component q:path="/3D/Bodies/One.model" objectid="1"/></components></object>',
      build: '<item objectid="5"/>',
    });
    const other = modelText({ resources: object(1), build: '' });
    expect((await solidIn(model, { '3D/Bodies/One.model': other })).extent).toBe(400);
  });
  test('reads lists however they are written', async () => {
    const list = meshText(plate)
      .replaceAll('<', '<c:')
      .replaceAll('<c:/', '</c:')
      .replace('<c:vertex ', '<!-- a <vertex x="9"/> > --><c:vertex\n\t')
      .replace(
        /<c:vertex x="([^"]*)" y="([^"]*)" z="([^"]*)"\/>/,
        "<c:vertex z = '$3' q:x='5' x=' $1 ' y='$2' ></c:vertex >",
      )
      .replace('<c:triangle ', '<c:triangle pid="1" p1="0" ');
    const core = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
    const model = `<!-- <vertices> --><c:model xmlns:c="${core}" xmlns:q="urn:q"><c:metadata name="a>b">&lt;triangles> <![CDATA[<vertices>]]></c:metadata><c:resources><c:object id="1">${list}</c:object></c:resources><c:build><c:item objectid="1"/></c:build></c:model>`;
    const { mesh } = await solidIn(model);
    expect(mesh.positions).toEqual(plate.positions.map((value) => value + 0));
    expect(mesh.triangles).toEqual(plate.triangles);
  });
  test('welds triangles that have corners of their own', async () => {
    const positions = Float64Array.from(
      [...plate.triangles].flatMap((v) => Array.from(plate.positions.subarray(3 * v, 3 * v + 3))),
    );
    const { mesh } = await solidIn(
      plainModel({ positions, triangles: Uint32Array.from(plate.triangles, (_, at) => at) }),
    );
    expect(mesh.positions.length).toBe(plate.positions.length);
  });
  test('reads files that are stored, not packed', async () => {
    const names = { '_rels/.rels': RELATIONS('3D/a.model'), '3D/a.model': plainModel(plate) };
    expect((await solidOf(zipOf(names, 0))).extent).toBe(40);
  });
});

describe('readThreeMf refuses', () => {
  const file = threeMf(plainModel(plate));
  const itemOf = (resources: string, build = '<item objectid="1"/>', attributes = '') =>
    threeMf(modelText({ attributes, resources, build }));
  const view = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  /** The file with a 32-bit field of the directory's last entry overwritten. */
  const directoryField = (offset: number, value: number, whole = file) => {
    const bytes = whole.slice();
    let at = bytes.length - 1;
    while (view(bytes).getUint32(Math.max(0, Math.min(at, bytes.length - 4)), true) !== 0x02014b50) at -= 1;
    view(bytes).setUint32(at + offset, value, true);
    return bytes;
  };
  const storedFile = zipOf({ '_rels/.rels': RELATIONS('3D/a.model'), '3D/a.model': plainModel(plate) }, 0);
  /** The file with the first such text in it overwritten by one as long. */
  const swapped = (from: string, to: string, whole: File) => {
    const bytes = whole.slice();
    const at = Buffer.from(bytes.buffer).indexOf(from);
    expect(at).toBeGreaterThan(0);
    bytes.set(Buffer.from(to), at);
    return bytes;
  };
  const sizedAs = (unpacked: number, whole = file) => directoryField(24, unpacked, whole);
  const small: Surface = {
    positions: Float64Array.of(0, 0, 0, 9, 0, 0, 0, 8, 0),
    triangles: Uint32Array.of(0, 1, 2),
  };
  const edited = (from: string, to: string) => threeMf(plainModel(small).replace(from, to));
  const doubling = Array.from(
    { length: 24 },
    (_, level) =>
      `<object id="${level + 2}"><components><component objectid="${level + 1}"/><component objectid="${level + 1}"/></components></object>`,
  ).join('');

  test.each<[string, File, object]>([
    ['an empty file', new Uint8Array(), refusal('empty-file')],
    ['a zip that was cut off', file.slice(0, -30), refusal('damaged-zip')],
    ['a zip without its beginning', file.slice(200), { kind: 'refused' }],
    ['a zip of something else', zipOf({ 'word/document.xml': '<a/>' }), refusal('no-model')],
    ['a file that points to no model', zipOf({ '_rels/.rels': RELATIONS() }), refusal('no-model')],
    [
      'a file whose model is not there',
      zipOf({ '_rels/.rels': RELATIONS('/3D/a.model') }),
      refusal('no-model'),
    ],
    [
      'a file that points to two models',
      zipOf({ '_rels/.rels': RELATIONS('/a.model', '/b.model') }),
      refusal('several-models', { models: 2 }),
    ],
    [
      'what would unpack to half a gigabyte',
      sizedAs(500_000_000),
      refusal('unpacks-too-large', { bytes: 500_000_000, limit: 400_000_000 }),
    ],
    ['what unpacks to more than it says', sizedAs(1000), refusal('damaged-zip')],
    [
      'a bomb: 8 MB of blanks where it says 1 kB',
      sizedAs(1000, threeMf(' '.repeat(8_000_000))),
      refusal('damaged-zip'),
    ],
    ['what unpacks to less than it says', sizedAs(90_000), refusal('damaged-zip')],
    [
      'a packed model with another CRC-32 than it says',
      directoryField(16, 0x12345678),
      refusal('damaged-zip'),
    ],
    [
      'a stored model with another CRC-32 than it says',
      directoryField(16, 0x12345678, storedFile),
      refusal('damaged-zip'),
    ],
    [
      'a stored model with one digit changed on the way',
      swapped('x="20"', 'x="21"', storedFile),
      refusal('damaged-zip'),
    ],
    ['an encrypted file', directoryField(8, 0x00080001), refusal('encrypted')],
    ['another way of packing', directoryField(8, 0x000e0000), refusal('packed-otherwise', { method: 14 })],
    [
      'a part that is no XML',
      threeMf('no model at all'),
      refusal('damaged-model', { part: '3d/part.model' }),
    ],
    ['an XML of something else', threeMf('<html><model/></html>'), refusal('damaged-model')],
    ['a model that was cut off', threeMf(plainModel(plate).slice(0, -9)), refusal('damaged-model')],
    [
      'a list of vertices that was cut off',
      threeMf(plainModel(plate).slice(0, 900)),
      refusal('damaged-model'),
    ],
    ['a model with a tag too many', edited('</build>', '</build></build>'), refusal('damaged-model')],
    ['an unknown unit', edited('millimeter', 'furlong'), refusal('unknown-unit', { unit: 'furlong' })],
    ['a vertex without z', edited(' z="0"', ''), refusal('not-a-number')],
    ['a vertex with a word', edited('x="9"', 'x="nine"'), refusal('not-a-number')],
    [
      'a vertex far away',
      edited('x="9"', 'x="1e300"'),
      refusal('out-of-range', { coordinate: 1e300, limit: 1e7 }),
    ],
    [
      'a triangle with a vertex that is not there',
      edited('v2="1"', 'v2="3"'),
      refusal('not-a-number', { triangle: 1 }),
    ],
    [
      'a triangle with a part of a vertex',
      edited('v2="1"', 'v2="1.5"'),
      refusal('not-a-number', { triangle: 1 }),
    ],
    [
      'a transform of eleven numbers',
      itemOf(object(1), '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0"/>'),
      refusal('damaged-model'),
    ],
    [
      'an item that is not there',
      itemOf(object(1), '<item objectid="2"/>'),
      refusal('missing-object', { object: '2' }),
    ],
    ['an empty bed', itemOf(object(1), ''), refusal('no-triangles')],
    [
      'an object of itself',
      itemOf('<object id="1"><components><component objectid="1"/></components></object>'),
      refusal('circular-object', { object: '1' }),
    ],
    [
      'objects that double themselves',
      itemOf(object(1) + doubling, '<item objectid="25"/>'),
      refusal('too-many-triangles'),
    ],
    [
      'an extension that is not read',
      itemOf(object(1), '<item objectid="1"/>', 'xmlns:b="urn:beams" requiredextensions="b"'),
      refusal('needs-extension', { extension: 'urn:beams' }),
    ],
  ])('%s', async (_what, bytes, expected) => {
    expect(await read(bytes)).toMatchObject(expected);
  });
  test('or reads whatever bytes there are, and never throws', async () => {
    const anyDamage = fc.array(fc.tuple(fc.double({ min: 0, max: 0.9999, noNaN: true }), fc.nat(255)), {
      maxLength: 12,
    });
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(file, storedFile),
        anyDamage,
        fc.nat(3),
        async (whole, damage, cut) => {
          const bytes = whole.slice(0, whole.length - cut);
          for (const [share, value] of damage) bytes[Math.floor(share * bytes.length)] = value;
          for (const inflating of [inflatingByBrowser, inflatingByProgram])
            expect(isWhole(await readThreeMf(bytes, inflating))).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });
});
