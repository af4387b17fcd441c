import type { TestRecord } from '../document.ts';
import type { ColumnKey, Columns } from './columns.ts';
import { type Cell, type CellFault, readCount, readText, readWithin } from './read-cells.ts';

/** The first cell of a line that is not taken. */
export interface LineFault {
  readonly column: ColumnKey;
  readonly fault: CellFault;
}

/** Reads one cell after the other and keeps the first fault. */
export interface LineReader {
  readonly text: (key: ColumnKey) => string | undefined;
  readonly cell: <Value>(key: ColumnKey, read: (text: string) => Cell<Value>) => Value | undefined;
  readonly fault: () => LineFault | undefined;
}

export function lineReader(cells: readonly string[], columns: Columns): LineReader {
  let fault: LineFault | undefined;
  const text = (key: ColumnKey): string | undefined => {
    const at = columns[key];
    const cell = at === undefined ? undefined : cells[at];
    return cell === '' ? undefined : cell;
  };
  return {
    text,
    cell: (key, read) => {
      const written = text(key);
      if (written === undefined) return undefined;
      const cell = read(written);
      if (cell.kind === 'read') return cell.value;
      fault ??= { column: key, fault: cell.fault };
      return undefined;
    },
    fault: () => fault,
  };
}

/** What a test may leave open: a column for it with an empty cell says that it is open. */
export const OPEN_KEYS = [
  'coupon',
  'printer',
  'bore_mm',
  'batch',
  'wallLines',
  'infill_percent',
  'resolution',
  'greatest',
  'ironTemperature_degC',
  'settingTime_s',
] as const;
type OpenKey = (typeof OPEN_KEYS)[number];

/** Text or number of each key that may be left open, where a cell says it; the printer apart, which has names. */
export function openValues(line: LineReader): Partial<Pick<TestRecord, OpenKey>> {
  const values = {
    coupon: line.cell('coupon', (text) => readCount('couponNumber', text)),
    batch: line.cell('batch', (text) => readText(text, 40)),
    bore_mm: line.cell('bore_mm', (text) => readWithin('holeDiameter_mm', text)),
    wallLines: line.cell('wallLines', (text) => readCount('wallLines', text)),
    infill_percent: line.cell('infill_percent', (text) => readWithin('infill_percent', text)),
    resolution: line.cell('resolution', (text) => readWithin('testValue', text)),
    greatest: line.cell('greatest', (text) => readWithin('testValue', text)),
    ironTemperature_degC: line.cell('ironTemperature_degC', (text) =>
      readWithin('ironTemperature_degC', text),
    ),
    settingTime_s: line.cell('settingTime_s', (text) => readWithin('settingTime_s', text)),
  };
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}
