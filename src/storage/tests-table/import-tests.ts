import type { TestRecord } from '../document.ts';
import { type Columns, unitInHeader } from './columns.ts';
import {
  isForce,
  readAxis,
  readDate,
  readKind,
  readReading,
  readResult,
  readSetting,
  readText,
  readUnit,
  readWithin,
  type TestWords,
} from './read-cells.ts';
import { type LineFault, lineReader, OPEN_KEYS, openValues } from './read-line.ts';
import type { Table } from './table.ts';

/** What the lines are read with. */
export interface ImportFrame {
  readonly columns: Columns;
  /** What no column says: a whole test, its id and reading apart. */
  readonly setUp: Omit<TestRecord, 'id' | 'value'>;
  readonly firstNumber: number;
  readonly words: TestWords;
  /** Ids of the drawer by what a cell may call them: the id itself, a label, a name; folded. */
  readonly inserts: ReadonlyMap<string, string>;
  readonly materials: ReadonlyMap<string, string>;
  readonly printers: ReadonlyMap<string, string>;
}

export interface ImportedLine {
  readonly line: number;
  readonly test: TestRecord;
}
export interface RefusedLine extends LineFault {
  readonly line: number;
}

/** Good rows as tests, bad ones with their line and reason; nothing is half taken. */
export interface Imported {
  readonly taken: readonly ImportedLine[];
  readonly refused: readonly RefusedLine[];
}

export const foldedName = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** Reads the lines of a table as tests. */
export function importTests(table: Table, frame: ImportFrame): Imported {
  const taken: ImportedLine[] = [];
  const refused: RefusedLine[] = [];
  for (const { line, cells } of table.rows) {
    const found = testOf(table.header, cells, frame);
    if ('fault' in found) refused.push({ line, ...found });
    else taken.push({ line, test: { ...found, id: `test-${frame.firstNumber + taken.length}` } });
  }
  return { taken, refused };
}

/** The set-up without what a column of the table speaks of, and without an instrument that measures something else. */
function framed(
  setUp: ImportFrame['setUp'],
  columns: Columns,
  unit: TestRecord['unit'],
): ImportFrame['setUp'] {
  const frame = { ...setUp };
  for (const key of OPEN_KEYS) if (columns[key] !== undefined) delete frame[key];
  if (unit !== setUp.unit) {
    delete frame.resolution;
    delete frame.greatest;
  }
  return frame;
}

function testOf(
  header: readonly string[],
  cells: readonly string[],
  { columns, setUp, words, inserts, materials, printers }: ImportFrame,
): Omit<TestRecord, 'id'> | LineFault {
  const line = lineReader(cells, columns);
  const reading = line.cell('value', readReading);
  const written = line.cell('unit', readUnit) ?? reading?.unit ?? headerUnit(header, columns);
  const kind = line.cell('kind', (text) => readKind(words, text)) ?? kindFor(setUp.kind, written);
  // A name that is not known is kept: the row of the log says so, and lets it be put right.
  const named = (names: ReadonlyMap<string, string>) => (text: string) =>
    readText(names.get(foldedName(text)) ?? text, 60);
  const insert = line.cell('insert', named(inserts));
  const material = line.cell('material', named(materials));
  const printer = line.cell('printer', named(printers));
  const result = line.cell('result', (text) => readResult(words, text));
  const date = line.cell('date', readDate);
  const setting = line.cell('setting', (text) => readSetting(words, text));
  const axis = line.cell('axis', readAxis);
  const leverRatio = line.cell('leverRatio', (text) => readWithin('asWritten', text));
  const note = line.cell('note', (text) => readText(text, 400));
  const open = openValues(line);
  const fault = line.fault();
  if (fault) return fault;
  if (reading === undefined) return { column: 'value', fault: { code: 'no-number', text: '' } };
  const unit = written ?? setUp.unit;
  return {
    ...framed(setUp, columns, unit),
    kind,
    unit,
    value: reading.value,
    result: result ?? (kind === 'torque-out' && setUp.kind !== 'torque-out' ? 'insert-turned' : setUp.result),
    ...(date === undefined ? {} : { date }),
    ...(insert === undefined ? {} : { insert }),
    ...(material === undefined ? {} : { material }),
    ...(setting === undefined ? {} : { setting }),
    ...(axis === undefined ? {} : { axis }),
    ...(leverRatio === undefined ? {} : { leverRatio }),
    ...open,
    ...(printer === undefined ? {} : { printer }),
    note: note ?? (columns.note === undefined ? setUp.note : ''),
  };
}

function headerUnit(header: readonly string[], { value }: Columns): TestRecord['unit'] | undefined {
  const name = value === undefined ? undefined : header[value];
  if (name === undefined) return undefined;
  const unit = readUnit(unitInHeader(name) ?? name);
  return unit.kind === 'read' ? unit.value : undefined;
}

/** A torque where the set-up pulls is a turn; a force where it turns is a pull. */
function kindFor(kind: TestRecord['kind'], unit: TestRecord['unit'] | undefined): TestRecord['kind'] {
  if (unit === undefined) return kind;
  const pulls = kind === 'pull-out' || kind === 'proof-pull';
  if (pulls === isForce(unit)) return kind;
  return isForce(unit) ? 'pull-out' : 'torque-out';
}
