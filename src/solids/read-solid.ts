import { stlReading } from './read-stl.ts';
import { threeMfReading } from './read-three-mf.ts';
import { atOnce, type InSteps, type Reading } from './reading.ts';

/** How every zip begins, and so every 3MF. */
const isZip = ([first, second]: Uint8Array) => first === 0x50 && second === 0x4b;

/** The reading of a file in steps; its result is that of `readSolid`. */
export const solidReading = (bytes: Uint8Array<ArrayBuffer>): InSteps<Reading> =>
  isZip(bytes) ? threeMfReading(bytes) : stlReading(bytes);

/** Reads an STL or a 3MF file, told apart by what is in it. */
export const readSolid = (bytes: Uint8Array<ArrayBuffer>): Promise<Reading> => atOnce(solidReading(bytes));
