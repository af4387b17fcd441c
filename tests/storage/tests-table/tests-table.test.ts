import { describe, expect, test } from 'vitest';
import { proposedColumns } from '../../../src/storage/tests-table/columns.ts';
import { testsTable } from '../../../src/storage/tests-table/export-tests.ts';
import { importTests } from '../../../src/storage/tests-table/import-tests.ts';
import { readDate, readNumber, readReading, readUnit } from '../../../src/storage/tests-table/read-cells.ts';
import { readTable, type Table, tableText } from '../../../src/storage/tests-table/table.ts';
import { TEST_KIND_NAMES, TEST_RESULT_NAMES, TEST_SETTING_NAMES } from '../../../src/wording/bench-tests.ts';
import { testRecord } from '../../support/bench-tests.ts';
import fc from '../../support/fast-check.ts';

const WORDS = { kinds: TEST_KIND_NAMES, results: TEST_RESULT_NAMES, settings: TEST_SETTING_NAMES };
const {
  id: _id,
  value: _value,
  ...SET_UP
} = testRecord({ insert: 'tall-five', greatest: 50, resolution: 0.1 });

function tableOf(text: string): Table {
  const reading = readTable(text);
  if (reading.kind === 'refused') throw new Error(reading.code);
  return reading.table;
}
const imported = (text: string) => {
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
    materials: new Map([
      ['petg', 'petg'],
      ['abs', 'abs'],
    ]),
  });
};

describe('readNumber', () => {
  test.each([
    ['41,5', 41.5],
    ['41.5', 41.5],
    ['0,250', 0.25],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['12 345', 12345],
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
  test.each(['', 'forty', '1e9', '4..5', '=1+2', '1,2,3'])('refuses “%s”', (text) => {
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
  test('knows no stone', () => {
    expect(readUnit('stone').kind).toBe('refused');
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
    ['reading\n1000000', 'value'],
    ['reading\n-4', 'value'],
    ['reading;lever\n37;900', 'leverRatio'],
    ['reading;bore\n37;0.01', 'bore_mm'],
  ])('refuses what a joint would not keep: %j', (text, column) => {
    expect(imported(text).refused).toMatchObject([{ line: 2, column, fault: { code: 'out-of-range' } }]);
  });
  test('takes from the set-up what no column says', () => {
    expect(imported('reading\n37').taken[0]?.test).toEqual({ ...SET_UP, id: 'test-4', value: 37 });
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
    const { resolution: _, greatest: __, ...bare } = SET_UP;
    expect(back).toEqual([
      { ...SET_UP, ...TESTS[0] },
      { ...bare, ...TESTS[1] },
    ]);
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
        if (reading.kind === 'read') expect(Array.isArray(imported(text).taken)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
