import { strToU8, zipSync } from 'fflate';
import type { Surface } from '../../src/core/hole-finding/surface.ts';

type Place = readonly [number, number, number];

const facesOf = ({ positions, triangles }: Surface): readonly (readonly [Place, Place, Place])[] => {
  const at = (corner: number): Place => {
    const vertex = 3 * (triangles[corner] ?? 0);
    return [positions[vertex] ?? 0, positions[vertex + 1] ?? 0, positions[vertex + 2] ?? 0];
  };
  return Array.from({ length: triangles.length / 3 }, (_, face) => [
    at(3 * face),
    at(3 * face + 1),
    at(3 * face + 2),
  ]);
};

/** A binary STL file with normals of 0, which the format allows. */
export function stlBinary(surface: Surface, header = ''): Uint8Array<ArrayBuffer> {
  const faces = facesOf(surface);
  const bytes = new Uint8Array(84 + 50 * faces.length);
  bytes.set(strToU8(header));
  const view = new DataView(bytes.buffer);
  view.setUint32(80, faces.length, true);
  faces.forEach((face, place) => {
    face.flat().forEach((value, number) => {
      view.setFloat32(84 + 50 * place + 12 + 4 * number, value, true);
    });
  });
  return bytes;
}

/** The text of an STL file, with numbers as the language writes them. */
export function stlText(surface: Surface, name = 'part'): string {
  const facets = facesOf(surface).map(
    (face) =>
      ` facet normal 0 0 0\n  outer loop\n${face.map((place) => `   vertex ${place.join(' ')}\n`).join('')}  endloop\n endfacet\n`,
  );
  return `solid ${name}\n${facets.join('')}endsolid ${name}\n`;
}

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';

export const meshText = ({ positions, triangles }: Surface): string => {
  const three = (list: ArrayLike<number>, element: string, names: Place | readonly string[]) =>
    Array.from(
      { length: list.length / 3 },
      (_, at) =>
        `<${element} ${names[0]}="${list[3 * at]}" ${names[1]}="${list[3 * at + 1]}" ${names[2]}="${list[3 * at + 2]}"/>\n`,
    ).join('');
  return `<mesh><vertices>\n${three(positions, 'vertex', ['x', 'y', 'z'])}</vertices><triangles>\n${three(triangles, 'triangle', ['v1', 'v2', 'v3'])}</triangles></mesh>`;
};

export interface ModelText {
  /** Attributes of the model besides its namespace. */
  readonly attributes?: string;
  readonly resources: string;
  readonly build: string;
}

export const modelText = ({ attributes = 'unit="millimeter"', resources, build }: ModelText): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<model xmlns="${CORE}" ${attributes}><resources>${resources}</resources><build>${build}</build></model>`;

/** A model of one object that stands once on the bed. */
export const plainModel = (surface: Surface, unit = 'millimeter'): string =>
  modelText({
    attributes: `unit="${unit}"`,
    resources: `<object id="1" type="model">${meshText(surface)}</object>`,
    build: '<item objectid="1"/>',
  });

export const RELATIONS = (...targets: readonly string[]): string =>
  `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${targets
    .map(
      (target, place) =>
        `<Relationship Id="r${place}" Target="${target}" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>`,
    )
    .join('')}</Relationships>`;

/** A zip of texts by their names, packed as hard as the level says: 0 not at all. */
export const zipOf = (texts: Readonly<Record<string, string>>, level: 0 | 6 = 6): Uint8Array<ArrayBuffer> =>
  zipSync(Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, strToU8(text)])), { level });

/** A 3MF file with one model, and other parts by their names. */
export const threeMf = (
  model: string,
  others: Readonly<Record<string, string>> = {},
): Uint8Array<ArrayBuffer> =>
  zipOf({ '_rels/.rels': RELATIONS('/3D/part.model'), '3D/part.model': model, ...others });
