import { SaxesParser } from 'saxes';
import { toCore } from '../core/units/convert.ts';
import { assembling, partName } from './assemble.ts';
import { type Inflating, inflatingHere } from './inflate.ts';
import type { Mesh } from './mesh.ts';
import type { ModelPart } from './model-gatherer.ts';
import { ModelReader } from './model-reader.ts';
import {
  atOnce,
  READING_LIMITS,
  type Reading,
  type ReadingNotice,
  type Refused,
  refused,
  stretch,
} from './reading.ts';
import { weld } from './weld.ts';
import { unpacking, type ZipDirectory, zipDirectory } from './zip-file.ts';

const ROOT_RELATIONS = '_rels/.rels';
const MODEL_RELATION = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
const MOST_RELATION_BYTES = 1_000_000;
/** Parts of one file that hold models, no more. */
const MOST_PARTS = 1000;
const INCHES_PER_FOOT = 12;

type Steps<Result> = AsyncGenerator<number, Result, undefined>;

/** Millimetres in a unit of the 3MF core specification. */
const UNITS: ReadonlyMap<string, number> = new Map([
  ['micron', toCore(1, 'µm')],
  ['millimeter', 1],
  ['centimeter', toCore(1, 'cm')],
  ['inch', toCore(1, 'in')],
  ['foot', toCore(INCHES_PER_FOOT, 'in')],
  ['meter', toCore(1, 'm')],
]);

/** A 3MF file that is being read. */
interface Source {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly zip: ZipDirectory;
  readonly inflating: Inflating;
}

/** Names of the models that the file itself points to. */
async function* rootModels({ bytes, zip, inflating }: Source): Steps<Refused | readonly string[]> {
  const entry = zip.get(ROOT_RELATIONS);
  if (entry === undefined) return refused({ code: 'no-model' });
  const names: string[] = [];
  let fault = false;
  const parser = new SaxesParser();
  parser.on('error', () => {
    fault = true;
  });
  parser.on('opentag', ({ name, attributes }) => {
    if (/(?:^|:)Relationship$/.test(name) && attributes['Type'] === MODEL_RELATION)
      names.push(partName(attributes['Target'] ?? ''));
  });
  const decoder = new TextDecoder();
  const take = (piece: Uint8Array) => {
    if (!fault) parser.write(decoder.decode(piece, { stream: true }));
    return undefined;
  };
  try {
    const refusal = yield* unpacking(bytes, { entry, limit: MOST_RELATION_BYTES, inflating, take });
    if (refusal !== undefined) return refusal;
    parser.close();
  } catch {
    fault = true;
  }
  return fault ? refused({ code: 'damaged-model', part: ROOT_RELATIONS }) : names;
}

interface ReadPart {
  readonly kind: 'part';
  readonly part: ModelPart;
  /** Bytes that it unpacked to. */
  readonly unpacked: number;
}

async function* partReading(
  { bytes, zip, inflating }: Source,
  name: string,
  limit: number,
): Steps<Refused | ReadPart> {
  const entry = zip.get(name);
  if (entry === undefined) return refused({ code: 'no-model' });
  const reader = new ModelReader(name);
  const take = (piece: Uint8Array) => reader.take(piece);
  const refusal = yield* unpacking(bytes, { entry, limit, inflating, take });
  if (refusal !== undefined) return refusal;
  const part = reader.end();
  return part.kind === 'refused' ? part : { kind: 'part', part, unpacked: entry.unpacked };
}

/** The root model and every other one that its objects stand in. */
async function* allParts(source: Source, root: string): Steps<Refused | Map<string, ModelPart>> {
  const parts = new Map<string, ModelPart>();
  const wanted = [root];
  let left: number = READING_LIMITS.unpackedBytes;
  for (const name of wanted) {
    if (parts.has(name)) continue;
    if (parts.size >= MOST_PARTS) return refused({ code: 'several-models', models: wanted.length });
    const done = parts.size / wanted.length;
    const read = yield* stretch(partReading(source, name, left), {
      from: done,
      to: done + 1 / wanted.length,
    });
    if (read.kind === 'refused') return read;
    left -= read.unpacked;
    parts.set(name, read.part);
    const placed = [
      ...read.part.items,
      ...[...read.part.objects.values()].flatMap(({ components }) => components),
    ];
    for (const { part } of placed) if (part !== undefined) wanted.push(partName(part));
  }
  return parts;
}

/** Corners that no two triangles share are welded: the format asks for shared ones, not every program does so. */
function shared(mesh: Mesh, extent: number): Mesh {
  if (mesh.positions.length < 0.8 * mesh.triangles.length) return mesh;
  const corners = new Float64Array(3 * mesh.triangles.length);
  for (let corner = 0; corner < mesh.triangles.length; corner += 1) {
    const from = 3 * (mesh.triangles[corner] ?? 0);
    for (let side = 0; side < 3; side += 1) corners[3 * corner + side] = mesh.positions[from + side] ?? 0;
  }
  return weld(corners, extent).mesh;
}

/** Takes a mesh into millimetres and checks it. */
function finished(mesh: Mesh, millimetres: number, instances: number): Reading {
  if (mesh.triangles.length === 0) return refused({ code: 'no-triangles' });
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  const limit = READING_LIMITS.coordinate;
  for (let place = 0; place < mesh.positions.length; place += 1) {
    const value = (mesh.positions[place] ?? 0) * millimetres;
    mesh.positions[place] = value;
    if (Number.isNaN(value)) return refused({ code: 'not-a-number', triangle: 0 });
    if (Math.abs(value) > limit) return refused({ code: 'out-of-range', coordinate: value, limit });
    const side = place % 3;
    if (value < (least[side] ?? 0)) least[side] = value;
    if (value > (most[side] ?? 0)) most[side] = value;
  }
  const extent = Math.max(...most.map((value, side) => value - (least[side] ?? 0)));
  const notices: ReadingNotice[] = instances > 1 ? [{ code: 'several-parts', parts: instances }] : [];
  return { kind: 'read', solid: { mesh: shared(mesh, extent), format: 'three-mf', extent, notices } };
}

/**
 * The reading of a 3MF file in steps; its result is that of `readThreeMf`.
 *
 * @param inflating - the way to unpack what is in it
 */
export async function* threeMfReading(
  bytes: Uint8Array<ArrayBuffer>,
  inflating: Inflating = inflatingHere(),
): Steps<Reading> {
  const limit = READING_LIMITS.fileBytes;
  if (bytes.length === 0) return refused({ code: 'empty-file' });
  if (bytes.length > limit) return refused({ code: 'file-too-large', bytes: bytes.length, limit });
  const zip = zipDirectory(bytes);
  if (zip === undefined) return refused({ code: 'damaged-zip' });
  const source = { bytes, zip, inflating };
  const roots = yield* stretch(rootModels(source), { from: 0, to: 0.02 });
  if ('kind' in roots) return roots;
  const [root] = roots;
  if (root === undefined) return refused({ code: 'no-model' });
  if (roots.length > 1) return refused({ code: 'several-models', models: roots.length });
  const parts = yield* stretch(allParts(source, root), { from: 0.02, to: 0.85 });
  if ('kind' in parts) return parts;
  const unit = parts.get(root)?.unit ?? '';
  const millimetres = UNITS.get(unit);
  if (millimetres === undefined) return refused({ code: 'unknown-unit', unit });
  const assembled = yield* stretch(assembling(parts, root), { from: 0.85, to: 1 });
  if (assembled.kind === 'refused') return assembled;
  return finished(assembled.mesh, millimetres, assembled.instances);
}

/**
 * Reads a 3MF file: everything that stands on its bed, in millimetres. Materials, textures and supports are passed over.
 *
 * @param bytes - the whole file
 * @param inflating - the way to unpack what is in it
 * @returns the part, or why not
 */
export const readThreeMf = (bytes: Uint8Array<ArrayBuffer>, inflating?: Inflating): Promise<Reading> =>
  atOnce(threeMfReading(bytes, inflating));
