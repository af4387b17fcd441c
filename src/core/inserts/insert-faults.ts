import type { Insert } from './insert.ts';
import { meanOf } from './measured-length.ts';

/**
 * Brass that must remain round the thread for a knurl to exist at all, on diameter, mm (estimate): M3 inserts of
 * 3.5 mm are in circulation.
 */
export const LEAST_BRASS_ON_DIAMETER = 0.4;
/** Longest insert taken seriously, in thread diameters (estimate; sold ones end near 2.5). */
export const GREATEST_LENGTH_IN_DIAMETERS = 5;
/** Below this length over knurl diameter the knurled length can no longer be estimated from the length. */
export const LEAST_LENGTH_PER_KNURL = 0.4;
/** Below this length, in thread diameters, too few turns are left to carry anything. */
export const LEAST_LENGTH_IN_DIAMETERS = 0.5;
/** Millimetres in an inch, to recognise a reading typed in inches. */
const MILLIMETRES_PER_INCH = 25.4;
/** Knurl over thread diameter beyond which a reading is no longer believed (data sheets end near 1.8). */
const GREATEST_KNURL_IN_DIAMETERS = 3.2;

/** Mean readings of one insert, mm, beside the thread it is said to have. */
export interface InsertReadings {
  readonly threadDiameter: number;
  readonly knurlDiameter: number;
  readonly pilotDiameter: number;
  readonly length: number;
  readonly knurledLength?: number;
  /** Bore over the pilot, mm. */
  readonly fit: number;
}

export type InsertFault =
  | {
      readonly code: 'looks-like-inches';
      readonly feature: 'knurlDiameter' | 'pilotDiameter' | 'length';
      readonly value: number;
      readonly inMillimetres: number;
    }
  | { readonly code: 'pilot-not-below-knurl'; readonly pilotDiameter: number; readonly knurlDiameter: number }
  | { readonly code: 'length-and-knurl-swapped'; readonly knurlDiameter: number; readonly length: number }
  | { readonly code: 'no-brass-left'; readonly knurlDiameter: number; readonly least: number }
  | { readonly code: 'knurl-too-wide'; readonly knurlDiameter: number; readonly greatest: number }
  | { readonly code: 'pilot-below-thread'; readonly pilotDiameter: number; readonly threadDiameter: number }
  | { readonly code: 'no-bite'; readonly knurlDiameter: number; readonly bore: number }
  | { readonly code: 'too-long'; readonly length: number; readonly greatest: number }
  | { readonly code: 'too-short'; readonly length: number; readonly least: number }
  | { readonly code: 'knurled-longer-than-insert'; readonly knurledLength: number; readonly length: number };

/**
 * The first thing wrong with the readings of an insert taken together, with its likely cause.
 *
 * Checked: inch values typed as millimetres; pilot not below the knurl (swapped); no brass left round the thread, and
 * whether length and knurl were swapped; a bore without bite; length above 5 d; a knurled part longer than the whole.
 * It does not judge one reading alone: the field's own range does.
 *
 * @param readings - mean values [mm], every one above 0
 * @returns the fault with the values that show it, or undefined when the insert can exist
 * @source own-model limits of what is taken for an insert
 * @example knurl 4.1 with pilot 4.25 gives pilot-not-below-knurl
 */
export function insertFault(readings: InsertReadings): InsertFault | undefined {
  const { threadDiameter: d, knurlDiameter, pilotDiameter, length, knurledLength, fit } = readings;
  const leastKnurl = d + LEAST_BRASS_ON_DIAMETER;
  const greatestKnurl = GREATEST_KNURL_IN_DIAMETERS * d;
  const greatestLength = GREATEST_LENGTH_IN_DIAMETERS * d;
  const readsAsInch = (value: number, low: number, high: number) =>
    value < low && value * MILLIMETRES_PER_INCH >= low && value * MILLIMETRES_PER_INCH <= high;
  const inches = (feature: 'knurlDiameter' | 'pilotDiameter' | 'length', value: number): InsertFault => ({
    code: 'looks-like-inches',
    feature,
    value,
    inMillimetres: value * MILLIMETRES_PER_INCH,
  });
  if (readsAsInch(knurlDiameter, leastKnurl / 2, greatestKnurl))
    return inches('knurlDiameter', knurlDiameter);
  if (readsAsInch(pilotDiameter, d / 2, greatestKnurl)) return inches('pilotDiameter', pilotDiameter);
  if (readsAsInch(length, d / 4, greatestLength)) return inches('length', length);
  if (pilotDiameter >= knurlDiameter) return { code: 'pilot-not-below-knurl', pilotDiameter, knurlDiameter };
  if (knurlDiameter < leastKnurl) {
    return length >= leastKnurl && length <= greatestKnurl && length > pilotDiameter && knurlDiameter >= d
      ? { code: 'length-and-knurl-swapped', knurlDiameter, length }
      : { code: 'no-brass-left', knurlDiameter, least: leastKnurl };
  }
  if (knurlDiameter > greatestKnurl)
    return { code: 'knurl-too-wide', knurlDiameter, greatest: greatestKnurl };
  if (pilotDiameter <= d) return { code: 'pilot-below-thread', pilotDiameter, threadDiameter: d };
  if (pilotDiameter + fit >= knurlDiameter)
    return { code: 'no-bite', knurlDiameter, bore: pilotDiameter + fit };
  if (length > greatestLength) return { code: 'too-long', length, greatest: greatestLength };
  const estimable = knurledLength === undefined ? LEAST_LENGTH_PER_KNURL * knurlDiameter : 0;
  const leastLength = Math.max(LEAST_LENGTH_IN_DIAMETERS * d, estimable);
  if (length < leastLength) return { code: 'too-short', length, least: leastLength };
  if (knurledLength !== undefined && knurledLength > length) {
    return { code: 'knurled-longer-than-insert', knurledLength, length };
  }
  return undefined;
}

/**
 * The first thing wrong with an insert, from the means of its readings; see insertFault.
 *
 * @param insert - thread and readings [mm]
 * @param fit - bore over the pilot [mm]
 * @returns the fault, or undefined when the insert can exist
 * @source own-model limits of what is taken for an insert
 */
export const faultOf = (insert: Insert, fit: number): InsertFault | undefined =>
  insertFault({
    threadDiameter: insert.thread.nominalDiameter,
    knurlDiameter: meanOf(insert.knurlDiameter),
    pilotDiameter: meanOf(insert.pilotDiameter),
    length: meanOf(insert.length),
    ...(insert.knurledLength ? { knurledLength: meanOf(insert.knurledLength) } : {}),
    fit,
  });
