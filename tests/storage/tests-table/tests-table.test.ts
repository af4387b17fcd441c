import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import { LIMITS } from '../../../src/storage/limits.ts';
import { proposedColumns, unitInHeader } from '../../../src/storage/tests-table/columns.ts';
import { testsTable } from '../../../src/storage/tests-table/export-tests.ts';
import { importTests } from '../../../src/storage/tests-table/import-tests.ts';
import { readDate, readNumber, readReading, readUnit } from '../../../src/storage/tests-table/read-cells.ts';
import { readTable, type Table, tableText } from '../../../src/storage/tests-table/table.ts';
import { TEST_KIND_NAMES, TEST_RESULT_NAMES, TEST_SETTING_NAMES } from '../../../src/wording/bench-tests.ts';
import { COLUMN_NAMES } from '../../../src/wording/tests-table.ts';
import { anyTests } from '../../support/any-tests.ts';
import { testRecord } from '../../support/bench-tests.ts';
import fc from '../../support/fast-check.ts';
import { insertRecord, jointDocument } from '../../support/joints.ts';

const WORDS = { kinds: TEST_KIND_NAMES, results: TEST_RESULT_NAMES, settings: TEST_SETTING_NAMES };
const {
  id: _id,
  value: _value,
  ...SET_UP
} = testRecord({ insert: 'tall-five', greatest: 50, resolution: 0.1 });

const MATERIALS = CATALOGUE.hostMaterials.map(({ id }) => id);

function tableOf(text: string): Table {
  const reading = readTable(text);
  if (reading.kind === 'refused') throw new Error(reading.code);
  return reading.table;
}
const imported = (text: string, materials: readonly string[] = ['petg', 'abs']) => {
  const table = tableOf(text);
  return importTests(table, {
    columns: proposedColumns(table.header),
    setUp: SET_UP,
    firstNumber: 4,
    words: WORDS,
    inserts: new Map([
      ['tall-five', 'tall-five'],
      ['m3 4.6 × 5.7', 'slim-long'],
    ]),
    materials: new Map(materials.map((id) => [id, id])),
    printers: new Map([['the attic one', 'attic']]),
  });
};

describe('proposedColumns', () => {
  test('knows every column by the name that the page gives it, with its unit', () => {
    const names = Object.entries(COLUMN_NAMES);
    expect(proposedColumns(names.map(([, name]) => name))).toEqual(
      Object.fromEntries(names.map(([key], index) => [key, index])),
    );
  });
  test('reads a unit after a comma like one in brackets', () => {
    expect(proposedColumns(['Bore, mm', 'Iron (°C)', 'Force, N'])).toEqual({
      bore_mm: 0,
      ironTemperature_degC: 1,
      value: 2,
    });
    expect(unitInHeader('Force, N')).toBe('N');
    expect(unitInHeader('Torque [N·m]')).toBe('N·m');
    expect(unitInHeader('Force')).toBeUndefined();
  });
});

describe('readNumber', () => {
  test.each([
    ['41,5', 41.5],
    ['41.5', 41.5],
    ['0,250', 0.25],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['12 345', 12345],
    ['12’345,5', 12345.5],
    ['1E-07', 1e-7],
    ['1,5e+02', 150],
    ['-3', -3],
    ['1.250', 1.25],
  ])('reads %s', (text, value) => {
    expect(readNumber(text)).toEqual({ kind: 'read', value });
  });
  test('asks about 1,250, which may be a thousand', () => {
    expect(readNumber('1,250')).toEqual({
      kind: 'refused',
      fault: { code: 'ambiguous-number', text: '1,250' },
    });
  });
  test.each(['', 'forty', '1e9', '4..5', '=1+2', '1,2,3', '4 5', '1 2345'])('refuses “%s”', (text) => {
    expect(readNumber(text).kind).toBe('refused');
  });
});

describe('readUnit', () => {
  test.each([
    ['kg', 'kgf'],
    ['KGF', 'kgf'],
    ['N', 'N'],
    ['lbs', 'lbf'],
    ['Nm', 'N·m'],
    ['N*m', 'N·m'],
    ['cN·m', 'cN·m'],
    ['N cm', 'cN·m'],
    ['in-lb', 'in·lb'],
    ['lbf.in', 'in·lb'],
    ['kgf·cm', 'kgf·cm'],
  ])('takes %s for %s', (text, unit) => {
    expect(readUnit(text)).toEqual({ kind: 'read', value: unit });
  });
  // A force over a length, and words that every object of the language knows.
  test.each(['stone', 'N/m', 'kg/cm', 'constructor', 'toString', ''])('takes “%s” for none', (text) => {
    expect(readUnit(text)).toEqual({ kind: 'refused', fault: { code: 'unknown-unit', text } });
  });
});

describe('readReading', () => {
  test('takes a unit in the cell', () => {
    expect(readReading('41,5 kg')).toEqual({ kind: 'read', value: { value: 41.5, unit: 'kgf' } });
    expect(readReading('1.2Nm')).toEqual({ kind: 'read', value: { value: 1.2, unit: 'N·m' } });
    expect(readReading('37')).toEqual({ kind: 'read', value: { value: 37 } });
  });
});

describe('readDate', () => {
  test.each([
    ['2026-03-09', '2026-03-09'],
    ['9.3.2026', '2026-03-09'],
    ['25/3/2026', '2026-03-25'],
    ['3/25/2026', '2026-03-25'],
    ['4/4/2026', '2026-04-04'],
  ])('reads %s as %s', (text, day) => {
    expect(readDate(text)).toEqual({ kind: 'read', value: day });
  });
  test('asks about 9/3/2026, and refuses a day that no month has', () => {
    expect(readDate('9/3/2026')).toMatchObject({ fault: { code: 'ambiguous-date' } });
    expect(readDate('2026-02-30')).toMatchObject({ fault: { code: 'no-date' } });
  });
});

describe('readTable', () => {
  test.each([
    ['commas', 'insert,force\na,1\nb,2\n'],
    ['semicolons', 'insert;force\r\na;1\r\nb;2'],
    ['tabs', 'insert\tforce\na\t1\n\nb\t2\n'],
    ['a mark of its byte order', '\ufeffinsert,force\na,1\nb,2'],
    ['quotes', '"insert","force"\n"a","1"\n"b","2"'],
  ])('reads a table with %s', (_, text) => {
    const { header, rows } = tableOf(text);
    expect(header).toEqual(['insert', 'force']);
    expect(rows.map(({ cells }) => cells)).toEqual([
      ['a', '1'],
      ['b', '2'],
    ]);
  });
  test('counts the lines as they stand, empty ones too', () => {
    expect(tableOf('insert,force\n\na,1').rows[0]?.line).toBe(3);
  });
  test('counts the lines within a cell in quotes', () => {
    const { rows } = tableOf('insert,note\r\na,"two\r\nlines"\r\nb,one');
    expect(rows.map(({ line }) => line)).toEqual([2, 4]);
  });
  test('refuses nothing, a header alone, and too many lines', () => {
    expect(readTable(' \n')).toMatchObject({ code: 'empty' });
    expect(readTable('insert,force')).toMatchObject({ code: 'no-rows' });
    expect(readTable(`force\n${'1\n'.repeat(10_001)}`)).toMatchObject({ code: 'too-many-lines' });
  });
  test('takes ten thousand lines', () => {
    expect(tableOf(`force\n${'1\n'.repeat(10_000)}`).rows).toHaveLength(10_000);
  });
});

describe('importTests', () => {
  test('keeps the good lines and explains the bad ones', () => {
    const { taken, refused } = imported(
      'date;insert;force [kg];failure\n2026-03-09;tall-five;41,5;boss split\n2026-03-09;tall-five;much;held\n30.3.2026;M3 4.6 × 5.7;38;exploded\n2026-03-10;elsewhere;22;held',
    );
    expect(
      taken.map(({ line, test: { id, insert, value, unit, result } }) => [
        line,
        id,
        insert,
        value,
        unit,
        result,
      ]),
    ).toEqual([
      [2, 'test-4', 'tall-five', 41.5, 'kgf', 'boss-split'],
      [5, 'test-5', 'elsewhere', 22, 'kgf', 'held'],
    ]);
    expect(refused.map(({ line, column, fault }) => [line, column, fault.code])).toEqual([
      [3, 'value', 'no-number'],
      [4, 'result', 'unknown-word'],
    ]);
  });
  test('takes mixed units by the cell, and a torque for a turn, without the end of the scale', () => {
    const { taken } = imported('reading\n41 kg\n402 N\n1,3 Nm');
    expect(
      taken.map(({ test: { value, unit, kind, result, greatest } }) => [value, unit, kind, result, greatest]),
    ).toEqual([
      [41, 'kgf', 'pull-out', 'insert-out-with-plastic', 50],
      [402, 'N', 'pull-out', 'insert-out-with-plastic', undefined],
      [1.3, 'N·m', 'torque-out', 'insert-turned', undefined],
    ]);
  });
  test.each([
    ['reading\n10000000', 'value'],
    ['reading;lever\n37;-2000000', 'leverRatio'],
    ['coupon;reading\n0;37', 'coupon'],
    ['reading;bore\n37;0.01', 'bore_mm'],
  ])('refuses what a joint would not keep: %j', (text, column) => {
    expect(imported(text).refused).toMatchObject([{ line: 2, column, fault: { code: 'out-of-range' } }]);
  });
  test('keeps what a row of the log can say and put right: readings and levers that cannot be, unknown names', () => {
    const { taken, refused } = imported(
      'reading;lever;material;printer\n-4;0;bakelite;cellar\n37;-3;abs;The attic one',
    );
    expect(refused).toEqual([]);
    expect(
      taken.map(({ test: { value, leverRatio, material, printer } }) => [
        value,
        leverRatio,
        material,
        printer,
      ]),
    ).toEqual([
      [-4, 0, 'bakelite', 'cellar'],
      [37, -3, 'abs', 'attic'],
    ]);
  });
  test('reads the number on the coupon under its usual names', () => {
    for (const name of ['coupon', 'No.', 'Nr', '#', 'number']) {
      expect(imported(`${name};reading\n12;37`).taken[0]?.test.coupon).toBe(12);
    }
    expect(imported('coupon;reading\n1,5;37').refused).toMatchObject([{ line: 2, column: 'coupon' }]);
  });
  test('cuts no words short: they would be others', () => {
    const long = 'x'.repeat(41);
    expect(imported(`reading;batch\n37;${long}`).refused).toEqual([
      { line: 2, column: 'batch', fault: { code: 'too-long', characters: 41, greatest: 40 } },
    ]);
  });
  test('leaves open what a column leaves empty', () => {
    const [first, second] = imported('reading;greatest reading;walls\n37;;4\n38;60;').taken;
    expect(first?.test).toMatchObject({ value: 37, wallLines: 4, resolution: 0.1 });
    expect(first?.test).not.toHaveProperty('greatest');
    expect(second?.test).toMatchObject({ value: 38, greatest: 60 });
    expect(second?.test).not.toHaveProperty('wallLines');
  });
  test('takes from the set-up what no column says', () => {
    expect(imported('reading\n37').taken[0]?.test).toEqual({ ...SET_UP, id: 'test-4', value: 37 });
  });
});

describe('a long and untidy table', () => {
  // As benches have them: decimal commas, three units, bad lines in between, formulas in the notes.
  const lines = Array.from({ length: 2000 }, (_, index) => {
    const at = index + 1;
    const reading = ['41,5 kg', '407 N', '92.5 lbf', 'broken', ''][index % 5];
    return `${at};${(index % 28) + 1}.3.2026;tall-five;${reading};${index % 7 === 0 ? '=1+1' : 'boss split'};"=SUM(A1:A9)"`;
  });
  const { taken, refused } = imported(`No.;Date;Insert;Reading;How it ended;Note\n${lines.join('\n')}`);
  test('of 2,000 lines is told line by line', () => {
    expect(taken.length + refused.length).toBe(2000);
    expect(refused.slice(0, 4).map(({ line, column, fault }) => [line, column, fault.code])).toEqual([
      [2, 'result', 'unknown-word'],
      [5, 'value', 'no-number'],
      [6, 'value', 'no-number'],
      [9, 'result', 'unknown-word'],
    ]);
    expect(refused.at(-1)?.line).toBe(2001);
  });
  test('keeps numbers, units and words as they were written, and executes nothing', () => {
    expect(
      taken
        .slice(0, 2)
        .map(({ line, test: { coupon, value, unit, note } }) => [line, coupon, value, unit, note]),
    ).toEqual([
      [3, 2, 407, 'N', '=SUM(A1:A9)'],
      [4, 3, 92.5, 'lbf', '=SUM(A1:A9)'],
    ]);
  });
  test('is a document’s fill of good lines, with names of their own', () => {
    const full = imported(`reading\n${'37\n'.repeat(LIMITS.tests.greatest)}`);
    expect(new Set(full.taken.map(({ test: { id } }) => id)).size).toBe(LIMITS.tests.greatest);
  });
});

describe('a table of tests', () => {
  const TESTS = [
    testRecord({
      id: 'test-4',
      insert: 'tall-five',
      value: 41.25,
      note: '=SUM(A1:A9)',
      batch: 'slow; "hot"',
      leverRatio: 2.5,
    }),
    testRecord({
      id: 'test-5',
      insert: 'tall-five',
      kind: 'torque-out',
      unit: 'cN·m',
      value: 131,
      result: 'insert-turned',
      bore_mm: 4.31,
      note: '-2 °C in the shed',
    }),
  ];
  test('is read back as it was written', () => {
    expect(imported(testsTable(TESTS)).refused).toEqual([]);
    const back = imported(testsTable(TESTS)).taken.map(({ test: one }) => one);
    expect(back).toEqual(TESTS);
  });
  test('brings back any tests that a document holds, photos apart (law)', () => {
    const document = jointDocument({ drawer: [insertRecord({ id: 'tall-five' })] });
    fc.assert(
      fc.property(anyTests(document), (drawn) => {
        const tests = drawn.map(({ batch, ...test }, index) => ({
          ...test,
          id: `test-${index + 4}`,
          ...(batch === undefined || batch.trim() === '' ? {} : { batch: batch.trim() }),
        }));
        if (tests.length === 0) return;
        const { taken, refused } = imported(testsTable(tests), MATERIALS);
        expect(refused).toEqual([]);
        expect(taken.map(({ test: one }) => one)).toEqual(tests);
      }),
      { numRuns: 100 },
    );
  });
  test('keeps an apostrophe that stood before a formula, and blanks before one', () => {
    const cells = ["'=1+2", "''-x", '=1', "it's"];
    expect(tableOf(tableText(['a', 'b', 'c', 'd'], [cells])).rows[0]?.cells).toEqual(cells);
    expect(tableText(['a'], [[' \t=1']])).toBe("a\r\n'=1\r\n");
  });
  test('holds no formula in a spreadsheet that parts cells by semicolons or tabs either', () => {
    const note = 'slow;=HYPERLINK("x")\t@sum\n+1 , -2';
    const text = tableText(['note', 'batch'], [['fast', note]]);
    for (const cell of text.split(/[;,\t\r\n]/)) expect(cell.trim()).not.toMatch(/^"?[=+\-@]/);
    expect(tableOf(text).rows[0]?.cells).toEqual(['fast', note]);
  });
  test('brings back cells of separators, signs and apostrophes in any order (law)', () => {
    const cell = fc
      .string({
        unit: fc.constantFrom(';', ',', '\t', '\n', ' ', "'", '=', '+', '-', '@', 'a', '1'),
        maxLength: 12,
      })
      .map((one) => one.trim());
    fc.assert(
      fc.property(cell, cell, (one, two) => {
        const cells = [`x${one}`, two];
        expect(tableOf(tableText(['a', 'b'], [cells])).rows[0]?.cells).toEqual(cells);
      }),
      { numRuns: 500 },
    );
  });
  test('holds no cell that a spreadsheet would take for a formula', () => {
    for (const row of testsTable(TESTS).split('\r\n')) {
      for (const cell of row.split(',')) expect(cell).not.toMatch(/^"?[=+@]/);
    }
  });
  test('survives any text in its cells (law)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ maxLength: 30 }), { minLength: 2, maxLength: 2 }),
        ([one = '', two = '']) => {
          const cells = [`x${one.trim()}`, `y${two.trim()}`].map((cell) => cell.trim());
          expect(tableOf(tableText(['a', 'b'], [cells])).rows[0]?.cells).toEqual(cells);
        },
      ),
      { numRuns: 200 },
    );
  });
  test('of any bytes gives an answer, never a fault of the program (law)', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const reading = readTable(text);
        const { taken, refused } = reading.kind === 'read' ? imported(text) : { taken: [], refused: [] };
        expect(taken.length + refused.length).toBe(reading.kind === 'read' ? reading.table.rows.length : 0);
      }),
      { numRuns: 200 },
    );
  });
});
