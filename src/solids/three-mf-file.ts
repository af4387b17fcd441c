import { strToU8, zipSync } from 'fflate';
import type { Mesh } from './mesh.ts';

/** One object of a 3MF file. */
export interface NamedMesh {
  readonly name: string;
  readonly mesh: Mesh;
}

/** The well-known names of the core specification that this program fills in; Application is required here. */
export interface ThreeMfMetadata {
  readonly Title: string;
  readonly Application: string;
  readonly Description?: string;
  readonly CreationDate?: string;
}

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const MODEL_PART = '3D/3dmodel.model';
const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
/** Decimal places of a coordinate, mm: a micrometre's thousandth. */
const PLACES = 6;
/** Free bed between two objects, mm. */
const APART = 10;
/** A fixed date, so that the same coupons make the same file. */
const ZIP_DATE = new Date(2020, 0, 1);

const CONTENT_TYPES = `${HEAD}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>\n`;

const RELATIONSHIPS = `${HEAD}<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="model" Target="/${MODEL_PART}" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>\n`;

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
/** Text that XML takes: what it knows no sign for becomes a space. */
const escaped = (text: string): string =>
  text
    .replaceAll(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, ' ')
    .replaceAll(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign);

/** Never in powers of ten, never −0. */
const decimal = (value: number): string => String(Number(value.toFixed(PLACES)) + 0);

function meshText({ positions, triangles }: Mesh): string {
  const vertices: string[] = [];
  for (let at = 0; at < positions.length; at += 3) {
    const [x = 0, y = 0, z = 0] = positions.subarray(at, at + 3);
    vertices.push(`<vertex x="${decimal(x)}" y="${decimal(y)}" z="${decimal(z)}"/>`);
  }
  const faces: string[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const [a = 0, b = 0, c = 0] = triangles.subarray(at, at + 3);
    faces.push(`<triangle v1="${a}" v2="${b}" v3="${c}"/>`);
  }
  return `<mesh><vertices>\n${vertices.join('\n')}\n</vertices><triangles>\n${faces.join('\n')}\n</triangles></mesh>`;
}

const widthOf = ({ positions }: Mesh): number => {
  let width = 0;
  for (let at = 0; at < positions.length; at += 3) width = Math.max(width, positions[at] ?? 0);
  return width;
};

/** Where each object stands: side by side along x with room between. */
function itemsText(objects: readonly NamedMesh[]): string {
  let left = 0;
  return objects
    .map(({ mesh }, place) => {
      const item = `<item objectid="${place + 1}" transform="1 0 0 0 1 0 0 0 1 ${decimal(left)} 0 0"/>`;
      left += widthOf(mesh) + APART;
      return item;
    })
    .join('');
}

function modelText(objects: readonly NamedMesh[], metadata: ThreeMfMetadata): string {
  const about = Object.entries(metadata)
    .map(([name, text]) => `<metadata name="${name}">${escaped(String(text))}</metadata>`)
    .join('');
  const resources = objects
    .map(
      ({ name, mesh }, place) =>
        `<object id="${place + 1}" type="model" name="${escaped(name)}">${meshText(mesh)}</object>`,
    )
    .join('\n');
  return `${HEAD}<model unit="millimeter" xml:lang="en" xmlns="${CORE}">${about}<resources>${resources}</resources><build>${itemsText(objects)}</build></model>\n`;
}

/**
 * Meshes as one 3MF file of the core specification: millimetres, a name for each object, each standing once on the bed
 * beside the others.
 */
export const threeMfBytes = (
  objects: readonly NamedMesh[],
  metadata: ThreeMfMetadata,
): Uint8Array<ArrayBuffer> =>
  zipSync(
    {
      '[Content_Types].xml': strToU8(CONTENT_TYPES),
      '_rels/.rels': strToU8(RELATIONSHIPS),
      [MODEL_PART]: strToU8(modelText(objects, metadata)),
    },
    { level: 6, mtime: ZIP_DATE },
  );
