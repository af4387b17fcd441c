import { describe, expect, test } from 'vitest';
import { meshFindings } from '../../src/solids/mesh-checks.ts';
import { rectangle } from '../../src/solids/outline.ts';
import { readSolid } from '../../src/solids/read-solid.ts';
import { stackMesh } from '../../src/solids/stack.ts';
import { stlBytes } from '../../src/solids/stl-file.ts';
import { expectRelative } from '../support/published.ts';

const BLOCK = stackMesh([{ from: 0, to: 4.5, foot: rectangle(20.25, 30.5) }]);

describe('stlBytes', () => {
  test('has 80 bytes of header, a count and 50 bytes a triangle (binary STL, from memory)', () => {
    const bytes = stlBytes(BLOCK, 'block');
    expect(bytes.length).toBe(80 + 4 + 50 * 12);
    expect(new DataView(bytes.buffer).getUint32(80, true)).toBe(12);
  });
  test.each([
    'solid',
    'a name that is far longer than the eighty bytes that the header of a binary file has room for',
    'Ø 4,55',
  ])('never begins like a text file: %s', (name) => {
    const header = new TextDecoder().decode(stlBytes(BLOCK, name).slice(0, 80));
    expect(header.startsWith('binary STL, mm: ')).toBe(true);
    expect(header).toMatch(/^[\x20-\x7e]+\0*$/);
  });
  test('gives each triangle a normal of length 1 that points out of the block', () => {
    const view = new DataView(stlBytes(BLOCK, 'block').buffer);
    const middle = [10.125, 15.25, 2.25];
    for (let at = 84; at < view.byteLength; at += 50) {
      const numbers = Array.from({ length: 6 }, (_, place) => view.getFloat32(at + 4 * place, true));
      expectRelative(Math.hypot(...numbers.slice(0, 3)), 1, 1e-6);
      const outward = [0, 1, 2].reduce(
        (sum, axis) => sum + (numbers[axis] ?? 0) * ((numbers[axis + 3] ?? 0) - (middle[axis] ?? 0)),
        0,
      );
      expect(outward).toBeGreaterThan(0);
      expect(view.getUint16(at + 48, true)).toBe(0);
    }
  });
  test('is read back as the same closed block', async () => {
    const reading = await readSolid(stlBytes(BLOCK, 'block'));
    if (reading.kind !== 'read') throw new Error(reading.refusal.code);
    expect(reading.solid.format).toBe('stl-binary');
    const findings = meshFindings(reading.solid.mesh);
    expect(findings).toMatchObject({ openEdges: 0, box: { least: [0, 0, 0], greatest: [20.25, 30.5, 4.5] } });
    expectRelative(findings.volume, 20.25 * 30.5 * 4.5);
  });
});
