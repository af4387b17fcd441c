import type { InsertRecord } from '../../storage/document.ts';

/** An insert of a demonstration drawer; readings in the order knurl, pilot, length. */
export function demoInsert(
  id: string,
  thread: string,
  readings: {
    readonly knurl: readonly number[];
    readonly pilot: readonly number[];
    readonly length: readonly number[];
    readonly knurled?: readonly number[];
  },
  count?: number,
): InsertRecord {
  return {
    id,
    thread,
    knurlDiameter_mm: [...readings.knurl],
    pilotDiameter_mm: [...readings.pilot],
    length_mm: [...readings.length],
    ...(readings.knurled ? { knurledLength_mm: [...readings.knurled] } : {}),
    ...(count === undefined ? {} : { count }),
  };
}
