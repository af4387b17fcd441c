import type { UnitSymbol } from '../../core/units/units.ts';
import { parsePlain } from './parse-plain.ts';
import type { Refusal } from './parsed-quantity.ts';
import { plainText } from './plain-text.ts';
import type { QuantityDefinition } from './quantity-definition.ts';

/** Some eighty readings; nobody types more. */
const LONGEST_READINGS = 600;

export interface Reading {
  /** Core unit. */
  readonly value: number;
  readonly typedUnit: UnitSymbol;
}

export interface BadReading {
  /** Counted from 1. */
  readonly position: number;
  readonly text: string;
  readonly refusal: Refusal;
}

export type ReadingsRefusal = { readonly kind: 'refused' } & (
  | { readonly code: 'empty' }
  | { readonly code: 'too-long'; readonly limit: number }
  | { readonly code: 'too-few'; readonly count: number; readonly least: number }
  | { readonly code: 'too-many'; readonly count: number; readonly most: number }
  | { readonly code: 'bad-readings'; readonly bad: readonly BadReading[] }
);

export type ParsedReadings =
  | { readonly kind: 'readings'; readonly readings: readonly Reading[] }
  | ReadingsRefusal;

/** A comma is a separator before a blank; between digits it is a decimal comma. */
const SEPARATORS = /[;|\n\r\t]+|,(?=\s|$)|\s[/·]\s/;
/** 4.24,4.26: with a decimal point on both sides the comma can only stand between readings. */
const POINT_COMMA_POINT = /^[+-]?\d*\.\d+(?:,[+-]?\d*\.\d+)+$/;

/** Words of one stretch put together: a word that begins with a figure begins a reading, others are its unit. */
function readingsOf(stretch: string): string[] {
  const readings: string[] = [];
  for (const word of stretch.split(' ')) {
    if (POINT_COMMA_POINT.test(word)) readings.push(...word.split(','));
    else if (readings.length === 0 || /^[+-]?[\d.,]/.test(word)) readings.push(word);
    else readings.push(`${readings.pop()} ${word}`);
  }
  return readings;
}

/** Reads several values typed in one field; each bad one is named by its place. */
export function parseReadings(
  text: string,
  definition: QuantityDefinition,
  count: { readonly least?: number; readonly most?: number } = {},
): ParsedReadings {
  if (text.length > LONGEST_READINGS) return { kind: 'refused', code: 'too-long', limit: LONGEST_READINGS };
  const texts = text
    .split(SEPARATORS)
    .map(plainText)
    .filter((stretch) => stretch !== '')
    .flatMap(readingsOf);
  if (texts.length === 0) return { kind: 'refused', code: 'empty' };

  const readings: Reading[] = [];
  const bad: BadReading[] = [];
  texts.forEach((typed, index) => {
    const parsed = parsePlain(typed, definition);
    if (parsed.kind === 'quantity') readings.push({ value: parsed.value, typedUnit: parsed.typedUnit });
    else {
      const refusal: Refusal =
        parsed.kind === 'refused' ? parsed : { kind: 'refused', code: 'not-understood', part: typed };
      bad.push({ position: index + 1, text: typed, refusal });
    }
  });
  if (bad.length > 0) return { kind: 'refused', code: 'bad-readings', bad };
  const { least = 1, most = Number.POSITIVE_INFINITY } = count;
  if (readings.length < least) return { kind: 'refused', code: 'too-few', count: readings.length, least };
  if (readings.length > most) return { kind: 'refused', code: 'too-many', count: readings.length, most };
  return { kind: 'readings', readings };
}
