import type { Mesh } from './mesh.ts';
import { cornersOf, uprightOf } from './mesh-checks.ts';

const HEADER_BYTES = 80;
const TRIANGLE_BYTES = 50;

/** Letters that every reader takes; a header that began with the word solid would be read as text. */
const headerOf = (name: string): Uint8Array =>
  new TextEncoder().encode(`binary STL, mm: ${name.replaceAll(/[^\x20-\x7e]/g, '?')}`).slice(0, HEADER_BYTES);

/** A mesh as a binary STL file in mm, with outward normals. STL has no units: the header names them for people. */
export function stlBytes(mesh: Mesh, name: string): Uint8Array<ArrayBuffer> {
  const triangles = cornersOf(mesh);
  const bytes = new Uint8Array(HEADER_BYTES + 4 + TRIANGLE_BYTES * triangles.length);
  bytes.set(headerOf(name));
  const view = new DataView(bytes.buffer);
  view.setUint32(HEADER_BYTES, triangles.length, true);
  triangles.forEach((triangle, place) => {
    const upright = uprightOf(triangle);
    const size = Math.hypot(...upright);
    const normal = upright.map((part) => part / size);
    [...normal, ...triangle.flat()].forEach((value, number) => {
      view.setFloat32(HEADER_BYTES + 4 + TRIANGLE_BYTES * place + 4 * number, value, true);
    });
  });
  return bytes;
}
