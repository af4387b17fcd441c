import type { TestRecord } from '../document.ts';
import { type ColumnKey, type Columns, unitInHeader } from './columns.ts';
import {
  type Cell,
  type CellFault,
  isForce,
  readDate,
  readKind,
  readReading,
  readResult,
  readSetting,
  readUnit,
  readWithin,
  type TestWords,
} from './read-cells.ts';
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
}

export interface ImportedLine {
  readonly line: number;
  readonly test: TestRecord;
}
export interface RefusedLine {
  readonly line: number;
  readonly column: ColumnKey;
  readonly fault: CellFault;
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

type LineFault = Omit<RefusedLine, 'line'>;

/** Reads one cell after the other and keeps the first fault. */
interface LineReader {
  readonly text: (key: ColumnKey) => string | undefined;
  readonly cell: <Value>(key: ColumnKey, read: (text: string) => Cell<Value>) => Value | undefined;
  readonly fault: () => LineFault | undefined;
}

function lineReader(cells: readonly string[], columns: Columns): LineReader {
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

function testOf(
  header: readonly string[],
  cells: readonly string[],
  { columns, setUp, words, inserts, materials }: ImportFrame,
): Omit<TestRecord, 'id'> | LineFault {
  const line = lineReader(cells, columns);
  const reading = line.cell('value', readReading);
  const unitOfHeader = headerUnit(header, columns);
  const written = line.cell('unit', readUnit) ?? reading?.unit ?? unitOfHeader;
  const kind = line.cell('kind', (text) => readKind(words, text)) ?? kindFor(setUp.kind, written);
  const known = (names: ReadonlyMap<string, string>, text: string) => names.get(foldedName(text));
  const insert = line.text('insert');
  const material = line.cell('material', (text): Cell<string> => {
    const id = known(materials, text);
    const choices = [...materials.values()].join(', ');
    return id === undefined
      ? { kind: 'refused', fault: { code: 'unknown-word', text, choices } }
      : { kind: 'read', value: id };
  });
  const result = line.cell('result', (text) => readResult(words, text));
  const date = line.cell('date', readDate);
  const setting = line.cell('setting', (text) => readSetting(words, text));
  const leverRatio = line.cell('leverRatio', (text) => readWithin('leverRatio', text));
  const bore = line.cell('bore_mm', (text) => readWithin('holeDiameter_mm', text));
  const fault = line.fault();
  if (fault) return fault;
  if (reading === undefined) return { column: 'value', fault: { code: 'no-number', text: '' } };
  const unit = written ?? setUp.unit;
  const { resolution, greatest, ...frame } = setUp;
  const sameInstrument = unit === setUp.unit;
  return {
    ...frame,
    ...(sameInstrument && resolution !== undefined ? { resolution } : {}),
    ...(sameInstrument && greatest !== undefined ? { greatest } : {}),
    kind,
    unit,
    value: reading.value,
    result: result ?? (kind === 'torque-out' && setUp.kind !== 'torque-out' ? 'insert-turned' : setUp.result),
    ...(date === undefined ? {} : { date }),
    ...(insert === undefined ? {} : { insert: (known(inserts, insert) ?? insert).slice(0, 60) }),
    ...(material === undefined ? {} : { material }),
    ...(setting === undefined ? {} : { setting }),
    ...(leverRatio === undefined ? {} : { leverRatio }),
    ...(bore === undefined ? {} : { bore_mm: bore }),
    ...textOf(line, 'printer', 60),
    ...textOf(line, 'batch', 40),
    note: (line.text('note') ?? setUp.note).slice(0, 400),
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

const textOf = <Key extends 'printer' | 'batch'>(line: LineReader, key: Key, greatest: number) => {
  const text = line.text(key);
  return text === undefined ? {} : { [key]: text.slice(0, greatest) };
};
