const SIGNS = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Signs of a text as they are shown: a mark over a letter takes no room. */
const widthOf = (text: string): number => [...SIGNS.segment(text)].length;

const padded = (text: string, width: number): string => text + ' '.repeat(width - widthOf(text));

/** A bar inside a cell would end it. */
const escaped = (text: string): string => text.replaceAll('|', '\\|');

/** A table in Markdown, its columns as wide as their widest cell, as the formatter writes it. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = [head, ...rows].map((row) => row.map(escaped));
  const widths = head.map((_, column) => Math.max(3, ...cells.map((row) => widthOf(row[column] ?? ''))));
  const line = (row: readonly string[]) =>
    `| ${widths.map((width, column) => padded(row[column] ?? '', width)).join(' | ')} |`;
  const [first = [], ...others] = cells;
  return [
    line(first),
    `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`,
    ...others.map(line),
  ].join('\n');
}
