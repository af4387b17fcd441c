import type { HoleReadingRecord, JointDocument, PrinterRecord } from '../../../storage/document.ts';
import type { Refusal } from '../../../storage/refusal.ts';
import { printerRefusals } from '../../../storage/with-printer.ts';

/** What the door would say of holes that are not in the document yet. */
export interface HoleCheck {
  /** Of the new holes, by their place among them. */
  readonly ofNew: ReadonlyMap<number, Refusal>;
  /** Of holes that are there already: beside the new ones they look wrong. */
  readonly ofOld: readonly { readonly place: number; readonly refusal: Refusal }[];
}

/** Looks at new holes beside those of the printer: a radius for a diameter, inches, a swap, another hole. */
export function checkHoles(
  document: JointDocument,
  printer: PrinterRecord,
  added: readonly HoleReadingRecord[],
): HoleCheck {
  const known = printer.holes.length;
  const one: PrinterRecord = { ...printer, holes: [...printer.holes, ...added] };
  const ofNew = new Map<number, Refusal>();
  const ofOld: { place: number; refusal: Refusal }[] = [];
  for (const refusal of printerRefusals({ ...document, printers: [one] })) {
    const place = Number(refusal.path.split('.')[3]);
    if (place < known) ofOld.push({ place, refusal });
    else ofNew.set(place - known, refusal);
  }
  return { ofNew, ofOld };
}

/** Most of the holes, and by half a tenth or more, larger than drawn: the columns may be the other way round. */
export function mostlyLarger(holes: readonly HoleReadingRecord[]): boolean {
  const larger = holes.filter(({ drawn_mm, measured_mm }) => (measured_mm[0] ?? 0) - drawn_mm > LARGER);
  return holes.length >= ENOUGH_TO_ASK && larger.length > holes.length / 2;
}
const LARGER = 0.05;
const ENOUGH_TO_ASK = 3;
