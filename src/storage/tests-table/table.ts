import Papa from 'papaparse';

/** Largest table that is taken: ten thousand lines of usual length stay below. */
export const MOST_LINES = 10_000;
const MOST_CHARACTERS = 4_000_000;

/** Cells as they stand in a pasted or opened table; nothing in them is ever executed. */
export interface Table {
  readonly header: readonly string[];
  /** Each row with the line that it begins at, counted from 1. */
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
}

export type TableReading =
  | { readonly kind: 'read'; readonly table: Table }
  | {
      readonly kind: 'refused';
      readonly code: 'empty' | 'no-rows' | 'too-long' | 'too-many-lines';
      readonly facts: Readonly<Record<string, number>>;
    };

/**
 * What a spreadsheet would take for a formula is written with an apostrophe before it, and read without: at the start of
 * a cell, and after a sign that a spreadsheet of another country parts cells by.
 */
const MARKED = /(^|[;,\t\r\n])(\s*)'(?='*[=+\-@])/g;
const UNMARKED = /(^|[;,\t\r\n])(\s*)(?='*[=+\-@])/g;

/** Line ends within a cell in quotes. */
const LINE_END = /\r\n|\r|\n/g;

/** A header without any of these has one column, whose decimal commas part nothing. */
const SEPARATORS = ['\t', ';', ','] as const;

/** The separator of a table by its header: its other lines may hold decimal commas. */
function separatorOf(text: string): string {
  const [header = ''] = text
    .replace(/"[^"]*"/g, '')
    .trimStart()
    .split(/\r?\n|\r/);
  return SEPARATORS.find((one) => header.includes(one)) ?? '\t';
}

/**
 * Reads a table of text: separated by commas, semicolons or tabs, with quotes and any line ends. The first row is the
 * header.
 */
export function readTable(text: string): TableReading {
  if (text.length > MOST_CHARACTERS) {
    return {
      kind: 'refused',
      code: 'too-long',
      facts: { characters: text.length, greatest: MOST_CHARACTERS },
    };
  }
  const plain = text.replace(/^\ufeff/, '');
  const { data } = Papa.parse<string[]>(plain, { header: false, delimiter: separatorOf(plain) });
  let line = 1;
  const lines = data.map((cells) => {
    const begin = line;
    line += 1 + cells.reduce((count, cell) => count + (cell.match(LINE_END)?.length ?? 0), 0);
    return { line: begin, cells: cells.map((cell) => cell.trim().replace(MARKED, '$1$2')) };
  });
  const filled = lines.filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [first, ...rows] = filled;
  if (first === undefined) return { kind: 'refused', code: 'empty', facts: {} };
  if (rows.length === 0) return { kind: 'refused', code: 'no-rows', facts: {} };
  if (rows.length > MOST_LINES) {
    return { kind: 'refused', code: 'too-many-lines', facts: { lines: rows.length, greatest: MOST_LINES } };
  }
  return { kind: 'read', table: { header: first.cells, rows } };
}

const NUMBER = /^-?\d+(?:\.\d+)?$/;

/** Writes a table that `readTable` reads back; whatever looks like a formula gets its apostrophe. */
export function tableText(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const safe = (cell: string) => (NUMBER.test(cell) ? cell : cell.trim().replace(UNMARKED, "$1$2'"));
  return `${Papa.unparse([[...header], ...rows.map((row) => row.map(safe))], { newline: '\r\n' })}\r\n`;
}
