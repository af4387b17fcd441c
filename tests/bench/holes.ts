import { findHoles } from '../../src/core/hole-finding/find-holes.ts';
import { readSolid } from '../../src/solids/read-solid.ts';
import { movedSurface } from '../support/drilled-plate.ts';
import { largePart } from '../support/large-part.ts';
import { plainModel, stlBinary, threeMf } from '../support/solid-files.ts';

/** A file and how many holes are in it. */
export interface LargeFile {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly holes: number;
}

/** Hundred-thousandths of a millimetre, as programs write them. */
const rounded = (values: Float64Array) => values.map((value) => Math.round(value * 1e5) / 1e5);

/** Turned, so that the coordinates have all their digits. */
const TURN = { axis: [1, 2, 3], angle: 0.6, scale: 1, shift: [11, 7, 5] } as const;

const TRIANGLES_OF_STL = 400_000;
const TRIANGLES_OF_THREE_MF = 1_500_000;

/** A binary STL and a 3MF of about 20 MB each. */
export function largeFiles(): readonly LargeFile[] {
  const stl = largePart(TRIANGLES_OF_STL);
  const other = largePart(TRIANGLES_OF_THREE_MF);
  const turned = movedSurface(other.surface, TURN);
  const model = plainModel({ ...turned, positions: rounded(turned.positions) });
  return [
    { name: 'part.stl', bytes: stlBinary(stl.surface), holes: stl.holes },
    { name: 'part.3mf', bytes: threeMf(model), holes: other.holes },
  ];
}

/** Reads a file and finds its holes; how many. */
export async function holesIn({ bytes }: LargeFile): Promise<number> {
  const reading = await readSolid(bytes);
  if (reading.kind === 'refused') throw new Error(`refused: ${reading.refusal.code}`);
  return findHoles(reading.solid.mesh).total;
}
