import { LIMITS } from '../../../storage/limits.ts';
import type { ReadingsRefusal } from '../../quantity/parse-readings.ts';
import { parseReadings } from '../../quantity/parse-readings.ts';
import { definitionOf } from '../../state/quantity-of-key.ts';
import { HOLE } from './printer-edits.ts';

/** More lines than a gauge will ever have; ten thousand short ones are read at once. */
export const MOST_LINES = 20_000;
/** Text beyond this is not looked at, characters. */
export const MOST_CHARACTERS = 2_000_000;

export type ColumnOrder = 'drawn-first' | 'measured-first';

/** One hole of a pasted list, mm, with the line it stands on, counted from 1. */
export interface PastedHole {
  readonly line: number;
  readonly drawn: number;
  readonly measured: readonly number[];
}

/** A line that is no hole, and why. */
export interface BadLine {
  readonly line: number;
  readonly text: string;
  readonly refusal: ReadingsRefusal;
}

export type PastedLines =
  | {
      readonly kind: 'read';
      readonly holes: readonly PastedHole[];
      readonly bad: readonly BadLine[];
    }
  | { readonly kind: 'too-large'; readonly lines: number };

const DEFINITION = definitionOf(HOLE);
/** Between cells nobody writes these within a number: a comma is then a decimal one. */
const CELLS = /[;\t|]/;

/** A line in cells: with semicolons or tabs between them each comma is a decimal comma. */
const plainLine = (text: string): string => (CELLS.test(text) ? text.replaceAll(',', '.') : text);

/** A heading has no figure in it, and an empty line nothing at all. */
const saysSomething = (text: string): boolean => /\d/.test(text);

/**
 * Reads holes that were pasted, one a line: a drawn diameter and one or more readings of it, with tabs, semicolons or
 * blanks between.
 */
export function pastedLines(text: string, order: ColumnOrder): PastedLines {
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.length > MOST_LINES || text.length > MOST_CHARACTERS)
    return { kind: 'too-large', lines: lines.length };
  const holes: PastedHole[] = [];
  const bad: BadLine[] = [];
  for (const [index, typed] of lines.entries()) {
    if (!saysSomething(typed)) continue;
    const parsed = parseReadings(plainLine(typed), DEFINITION, {
      least: 2,
      most: LIMITS.readings.greatest + 1,
    });
    if (parsed.kind === 'refused') bad.push({ line: index + 1, text: typed.trim(), refusal: parsed });
    else
      holes.push({
        line: index + 1,
        ...inOrder(
          parsed.readings.map(({ value }) => value),
          order,
        ),
      });
  }
  return { kind: 'read', holes, bad };
}

function inOrder(values: readonly number[], order: ColumnOrder): Omit<PastedHole, 'line'> {
  const [first = 0, ...others] = values;
  return order === 'drawn-first'
    ? { drawn: first, measured: others }
    : { drawn: values.at(-1) ?? 0, measured: values.slice(0, -1) };
}

/** The text without the lines that were taken: nothing else is lost. */
export function withoutLines(text: string, taken: readonly PastedHole[]): string {
  const gone = new Set(taken.map(({ line }) => line));
  return text
    .split(/\r\n|\r|\n/)
    .filter((_, index) => !gone.has(index + 1))
    .join('\n');
}
