import type { Insert } from '../../../core/inserts/insert.ts';
import { insertDimensions } from '../../../core/inserts/insert-dimensions.ts';
import type { InsertRecord } from '../../../storage/document.ts';
import { decimalText, lengthNumber } from '../../../wording/amount.ts';
import { nameOfInsert } from '../../../wording/names.ts';
import { figure, type Sentence, said } from '../../../wording/sentence.ts';

/** An insert as its drawer names it: M3 5.0 × 5.0. */
export const insertName = (insert: Insert): string =>
  nameOfInsert(insert.thread.designation, insertDimensions(insert));

/** What was measured beside the name, and how many there are: "pilot 4.25, 7 readings, 40 pieces". */
export function readingsLine(record: InsertRecord, insert: Insert): Sentence {
  const lists = [record.knurlDiameter_mm, record.pilotDiameter_mm, record.length_mm, record.knurledLength_mm];
  const readings = lists.reduce((sum, list) => sum + (list?.length ?? 0), 0);
  const { estimate } = insertDimensions(insert).pilotDiameter;
  const pieces = record.count === undefined ? '' : `, ${decimalText(record.count, 0)} pieces`;
  return said`pilot ${figure(estimate, lengthNumber(estimate.value))}, ${String(readings)} readings${pieces}`;
}
