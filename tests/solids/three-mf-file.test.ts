import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { couponMesh } from '../../src/solids/coupon-mesh.ts';
import { boxOf, meshFindings } from '../../src/solids/mesh-checks.ts';
import { rectangle } from '../../src/solids/outline.ts';
import { readSolid } from '../../src/solids/read-solid.ts';
import { stackMesh } from '../../src/solids/stack.ts';
import { threeMfBytes } from '../../src/solids/three-mf-file.ts';
import { couponSet } from '../support/coupon-set.ts';
import { expectRelative } from '../support/published.ts';

const BLOCK = stackMesh([{ from: 0, to: 4, foot: rectangle(20, 30) }]);
const SMALL = stackMesh([{ from: 0, to: 1e-7 + 3, foot: rectangle(2, 5) }]);
const METADATA = { Title: 'Bores < 5 & "more"', Application: 'Knurlwright' };
const BYTES = threeMfBytes(
  [
    { name: 'block <1>', mesh: BLOCK },
    { name: 'small', mesh: SMALL },
  ],
  METADATA,
);
const parts = Object.fromEntries(
  Object.entries(unzipSync(BYTES)).map(([name, part]) => [name, strFromU8(part)]),
);
const model = parts['3D/3dmodel.model'] ?? '';

/** What the core specification asks of a package, as remembered; another program checks it in .ci/meshes.mjs. */
describe('threeMfBytes (structure after the 3MF core specification, from memory)', () => {
  test('holds content types, one relationship and one model', () => {
    expect(Object.keys(parts)).toEqual(['[Content_Types].xml', '_rels/.rels', '3D/3dmodel.model']);
  });
  test('names the type of both kinds of part', () => {
    const types = parts['[Content_Types].xml'] ?? '';
    expect(types).toContain(
      'Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"',
    );
    expect(types).toContain(
      'Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"',
    );
  });
  test('points at the model that is there', () => {
    const [, target = ''] = /Target="\/([^"]+)"/.exec(parts['_rels/.rels'] ?? '') ?? [];
    expect(Object.keys(parts)).toContain(target);
    expect(parts['_rels/.rels']).toContain(
      'Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"',
    );
  });
  test('is in millimetres, in the core name space, needs no extension', () => {
    const [root = ''] = /<model [^>]*>/.exec(model) ?? [];
    expect(root).toContain('unit="millimeter"');
    expect(root).toContain('xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"');
    expect(root).not.toContain('requiredextensions');
  });
  test('has metadata, resources and build in that order, with signs of XML escaped', () => {
    const order = ['<metadata name="Title">', '<metadata name="Application">', '<resources>', '<build>'];
    const places = order.map((text) => model.indexOf(text));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    expect(model).toContain('>Bores &lt; 5 &amp; &quot;more&quot;</metadata>');
    expect(model).toContain('name="block &lt;1&gt;"');
  });
  test('builds every object once, side by side with 10 mm between', () => {
    const ids = [...model.matchAll(/<object id="(\d+)" type="model"/g)].map(([, id]) => id);
    const items = [
      ...model.matchAll(/<item objectid="(\d+)" transform="1 0 0 0 1 0 0 0 1 ([\d.]+) 0 0"\/>/g),
    ];
    expect(ids).toEqual(['1', '2']);
    expect(items.map(([, id, left]) => [id, left])).toEqual([
      ['1', '0'],
      ['2', '30'],
    ]);
  });
  test('writes plain decimals, and triangles of three vertices that are there', () => {
    const numbers = [...model.matchAll(/ [xyz]="([^"]*)"/g)].map(([, text = '']) => text);
    expect(numbers.length).toBe(3 * 16);
    for (const text of numbers) expect(text).toMatch(/^\d+(\.\d{1,6})?$/);
    const vertices = [...model.matchAll(/ v[123]="(\d+)"/g)].map(([, text]) => Number(text));
    expect(vertices.length).toBe(3 * 24);
    expect(Math.max(...vertices)).toBe(7);
  });
  test('is the same file whenever it is made', () => {
    expect(threeMfBytes([{ name: 'block', mesh: BLOCK }], METADATA)).toEqual(
      threeMfBytes([{ name: 'block', mesh: BLOCK }], METADATA),
    );
  });
  test('leaves out signs that XML has none for', () => {
    const file = unzipSync(threeMfBytes([{ name: 'a\u0000b\u0007c', mesh: BLOCK }], METADATA));
    expect(strFromU8(file['3D/3dmodel.model'] ?? new Uint8Array())).toContain('name="a b c"');
  });
});

describe('a coupon in a 3MF file', () => {
  test.each(Object.entries(couponSet()))(
    'is read back closed, as large as it was: %s',
    async (name, coupon) => {
      const mesh = couponMesh(coupon);
      const reading = await readSolid(
        threeMfBytes([{ name, mesh }], { Title: name, Application: 'Knurlwright' }),
      );
      if (reading.kind !== 'read') throw new Error(reading.refusal.code);
      const findings = meshFindings(reading.solid.mesh);
      expect(reading.solid.notices).toEqual([]);
      expect(findings).toMatchObject({ openEdges: 0, flatTriangles: 0 });
      expectRelative(findings.volume, meshFindings(mesh).volume, 1e-7);
      boxOf(mesh).greatest.forEach((size, axis) => {
        expectRelative(findings.box.greatest[axis] ?? 0, size, 1e-7);
      });
    },
  );
});
