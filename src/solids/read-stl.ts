import { cornersOfText } from './read-stl-text.ts';
import {
  atOnce,
  type Corners,
  type InSteps,
  READING_LIMITS,
  type Reading,
  type ReadingNotice,
  type Refused,
  refused,
  type SolidFormat,
  stretch,
} from './reading.ts';
import { weld } from './weld.ts';

const HEADER = 84;
const COUNT_AT = 80;
const RECORD = 50;
/** Bytes of a record before its corners: the normal, which is not used. */
const NORMAL = 12;
/** Triangles read between two looks at the messages. */
const CHUNK = 100_000;
/** Share of the way that reading is; the rest is welding. */
const WITHOUT_WELDING = { from: 0, to: 0.4 } as const;
/** Parts for a printer are larger than this and smaller than that, mm. */
const USUAL_EXTENT = { least: 2, most: 2000 } as const;
/** Records looked at to tell a damaged STL from another file. */
const SPECIMENS = 8;

/** Whether the first records hold what an STL holds: numbers of a drawing, and normals of length 1 or 0. */
function hasRecords(view: DataView): boolean {
  const there = Math.min(SPECIMENS, Math.floor((view.byteLength - HEADER) / RECORD));
  for (let record = 0; record < there; record += 1) {
    const number = (place: number) => view.getFloat32(HEADER + RECORD * record + 4 * place, true);
    const length = Math.hypot(number(0), number(1), number(2));
    if (!(length === 0 || (length > 0.9 && length < 1.1))) return false;
    for (let place = 3; place < 12; place += 1)
      if (!(Math.abs(number(place)) <= READING_LIMITS.coordinate)) return false;
  }
  return there > 0;
}

function* cornersOfRecords(view: DataView, count: number): InSteps<Corners | Refused> {
  const limit = READING_LIMITS.triangles;
  if (count > limit) return refused({ code: 'too-many-triangles', triangles: count, limit });
  const corners = new Float64Array(9 * count);
  for (let triangle = 0; triangle < count; triangle += 1) {
    const start = HEADER + RECORD * triangle + NORMAL;
    for (let place = 0; place < 9; place += 1)
      corners[9 * triangle + place] = view.getFloat32(start + 4 * place, true);
    if (triangle % CHUNK === CHUNK - 1) yield triangle / count;
  }
  return { kind: 'corners', corners, parts: 1 };
}

/** Whether a file begins as the text of an STL does. */
function isText(bytes: Uint8Array): boolean {
  const start = String.fromCharCode(...bytes.subarray(0, 1024)).replace(/^\u00ef\u00bb\u00bf/, '');
  // Some programs begin the binary header with the same word: a text goes on with a facet or ends.
  return /^\s*solid\b/i.test(start) && (/\n\s*(?:facet|endsolid)\b/i.test(start) || !start.includes('\0'));
}

/** Checks corners and welds them. */
function solidOf({ corners, parts }: Corners, format: SolidFormat): Reading {
  if (corners.length === 0) return refused({ code: 'no-triangles' });
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  const limit = READING_LIMITS.coordinate;
  for (let place = 0; place < corners.length; place += 1) {
    const value = corners[place] ?? 0;
    if (!Number.isFinite(value))
      return refused({ code: 'not-a-number', triangle: Math.floor(place / 9) + 1 });
    if (Math.abs(value) > limit) return refused({ code: 'out-of-range', coordinate: value, limit });
    const side = place % 3;
    if (value < (least[side] ?? 0)) least[side] = value;
    if (value > (most[side] ?? 0)) most[side] = value;
  }
  const extent = Math.max(...most.map((value, side) => value - (least[side] ?? 0)));
  const { mesh, leftOut } = weld(corners, extent);
  if (mesh.triangles.length === 0) return refused({ code: 'no-triangles' });
  const notices: ReadingNotice[] = [];
  if (extent < USUAL_EXTENT.least) notices.push({ code: 'very-small', extent });
  if (extent > USUAL_EXTENT.most) notices.push({ code: 'very-large', extent });
  if (parts > 1) notices.push({ code: 'several-parts', parts });
  if (leftOut > 0) notices.push({ code: 'left-out', triangles: leftOut });
  return { kind: 'read', solid: { mesh, format, extent, notices } };
}

/** The reading of an STL file in steps; its result is that of `readStl`. */
export async function* stlReading(bytes: Uint8Array): AsyncGenerator<number, Reading, undefined> {
  const limit = READING_LIMITS.fileBytes;
  if (bytes.length === 0) return refused({ code: 'empty-file' });
  if (bytes.length > limit) return refused({ code: 'file-too-large', bytes: bytes.length, limit });
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = bytes.length >= HEADER ? view.getUint32(COUNT_AT, true) : 0;
  const expected = HEADER + RECORD * count;
  const fits = bytes.length === expected;
  if (!fits && isText(bytes)) {
    const read = yield* stretch(cornersOfText(bytes), WITHOUT_WELDING);
    return read.kind === 'refused' ? read : solidOf(read, 'stl-text');
  }
  if (!fits) {
    if (bytes.length < HEADER || !hasRecords(view)) return refused({ code: 'not-a-solid' });
    const code = bytes.length < expected ? 'truncated' : 'wrong-length';
    return refused({ code, bytes: bytes.length, expected });
  }
  const read = yield* stretch(cornersOfRecords(view, count), WITHOUT_WELDING);
  yield WITHOUT_WELDING.to;
  return read.kind === 'refused' ? read : solidOf(read, 'stl-binary');
}

/**
 * Reads an STL file, binary or text. It has no unit: millimetres are taken, and a part of unlikely size gets a notice.
 *
 * @param bytes - the whole file
 * @returns the part with its corners welded, or why not
 */
export const readStl = (bytes: Uint8Array): Promise<Reading> => atOnce(stlReading(bytes));
