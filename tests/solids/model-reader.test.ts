import { strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { ModelPart } from '../../src/solids/model-gatherer.ts';
import { ModelReader } from '../../src/solids/model-reader.ts';
import type { Refused } from '../../src/solids/reading.ts';

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
/** Written in many ways: comments, entities, letters of several bytes, prefixes, end tags. */
const MODEL = `<?xml version="1.0" encoding="UTF-8"?>
<model unit="inch" xmlns="${CORE}" xmlns:c="${CORE}"><!-- no <vertices> -->
<metadata name="Title">Träger &lt;vertices&gt; 螺母 <![CDATA[<triangles>]]></metadata>
<resources><object id="7" type="model"><mesh>
<vertices >
<vertex x="0.5" y="-1.25" z="3"/> <vertex z='1e-1' x=' 2 ' y="4" ></vertex >
<!-- <vertex x="9"/> -- > --><vertex x="5" y="6" z="7" note="a>b" /></vertices>
<c:triangles><c:triangle v1="0" v2="1" v3="2" pid="1"/>
</c:triangles></mesh></object><object id="8"><mesh><vertices/><triangles></triangles></mesh></object></resources>
<build><item objectid="7"/></build>
</model>
`;

/** What is read of bytes that come in pieces of some lengths, the last one again and again. */
function readIn(bytes: Uint8Array, lengths: readonly number[]): ModelPart | Refused {
  const reader = new ModelReader('part');
  for (let at = 0, turn = 0; at < bytes.length; turn += 1) {
    const length = lengths[Math.min(turn, lengths.length - 1)] ?? bytes.length;
    const refusal = reader.take(bytes.subarray(at, at + length));
    if (refusal !== undefined) return refusal;
    at += length;
  }
  return reader.end();
}

const numbersOf = (part: ModelPart | Refused) =>
  part.kind === 'refused'
    ? part
    : {
        unit: part.unit,
        items: part.items,
        objects: [...part.objects].map(([id, { vertices, triangles }]) => ({
          id,
          vertices: vertices.blocks().flatMap((block) => [...block]),
          triangles: triangles.blocks().flatMap((block) => [...block]),
        })),
      };
const EXPECTED = {
  unit: 'inch',
  items: [{ object: '7', part: undefined, transform: undefined }],
  objects: [
    { id: '7', vertices: [0.5, -1.25, 3, 2, 4, 0.1, 5, 6, 7], triangles: [0, 1, 2] },
    { id: '8', vertices: [], triangles: [] },
  ],
};
const bytes = strToU8(MODEL);

describe('ModelReader', () => {
  test('reads a model that comes in one piece', () => {
    expect(numbersOf(readIn(bytes, [bytes.length]))).toEqual(EXPECTED);
  });
  test('reads the same wherever the bytes are cut in two', () => {
    for (let cut = 1; cut < bytes.length; cut += 1)
      expect(numbersOf(readIn(bytes, [cut, bytes.length])), `cut after ${cut}`).toEqual(EXPECTED);
  });
  test.each([1, 2, 3, 7, 31])('reads the same in pieces of %i bytes', (length) => {
    expect(numbersOf(readIn(bytes, [length]))).toEqual(EXPECTED);
  });
  test('reads a comment that is longer than a piece', () => {
    const long = strToU8(MODEL.replace('<!-- <vertex', `<!-- ${'long '.repeat(20_000)}<vertex`));
    expect(numbersOf(readIn(long, [65_536]))).toEqual(EXPECTED);
  });
});

describe('ModelReader refuses', () => {
  test('a model that stops, wherever that is', () => {
    for (let end = 0; end < bytes.length - 3; end += 1)
      expect(readIn(bytes.subarray(0, end), [40]), `stopped after ${end}`).toMatchObject({
        kind: 'refused',
        refusal: { code: 'damaged-model', part: 'part' },
      });
  });
  test.each([
    ['an element that does not end', MODEL.replace('<vertex ', `<vertex ${' '.repeat(2_000_000)}`)],
    ['a start tag that does not end', MODEL.replace('<vertices ', `<vertices ${' '.repeat(2_000_000)}`)],
  ])('%s in a million bytes', (_what, model) => {
    expect(readIn(strToU8(model), [65_536])).toMatchObject({ refusal: { code: 'damaged-model' } });
  });
  test('a fault with its line, as long as no list has come before it', () => {
    const early = strToU8(MODEL.replace('<resources>', '<resources'));
    expect(readIn(early, [50])).toMatchObject({ refusal: { line: 4 } });
    const late = strToU8(MODEL.replace('</build>', '</bed>'));
    expect(readIn(late, [50])).toEqual({ kind: 'refused', refusal: { code: 'damaged-model', part: 'part' } });
  });
  test('letters that are no UTF-8', () => {
    const wrong = bytes.slice();
    wrong[MODEL.indexOf('Tr') + 2] = 0xff;
    expect(readIn(wrong, [64])).toMatchObject({ refusal: { code: 'damaged-model' } });
  });
});
