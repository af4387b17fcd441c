import type { ColumnKey } from '../storage/tests-table/columns.ts';
import type { CellFault } from '../storage/tests-table/read-cells.ts';
import type { TableReading } from '../storage/tests-table/table.ts';
import { decimalText } from './amount.ts';

export const COLUMN_NAMES = {
  coupon: 'number on the coupon',
  date: 'date',
  insert: 'insert',
  kind: 'test',
  value: 'reading',
  unit: 'unit',
  result: 'how it ended',
  setting: 'way of setting',
  material: 'material',
  printer: 'printer',
  leverRatio: 'lever ratio',
  bore_mm: 'bore, mm',
  batch: 'what was varied',
  note: 'note',
  axis: 'axis against the build',
  wallLines: 'wall lines',
  infill_percent: 'infill, %',
  resolution: 'step of the instrument',
  greatest: 'greatest reading',
  ironTemperature_degC: 'iron, °C',
  settingTime_s: 'time to set, s',
} as const satisfies Record<ColumnKey, string>;

/** Why a cell of a table was not taken. */
export function sentenceOfCell(fault: CellFault): string {
  switch (fault.code) {
    case 'no-number':
      return fault.text === '' ? 'There is no reading.' : `“${fault.text}” is no number.`;
    case 'ambiguous-number':
      return `“${fault.text}” may be a thousand or a decimal. Write it with a point for decimals and no sign for thousands.`;
    case 'out-of-range':
      return `“${fault.text}” lies outside of ${decimalText(fault.least, 2)} to ${decimalText(fault.greatest, 0)}.`;
    case 'unknown-unit':
      return `“${fault.text}” is no unit of a force or torque. Write kg, N, lbf, N·m, cN·m, in·lb or kgf·cm.`;
    case 'no-date':
      return `“${fault.text}” is no day. Write it as 2026-03-09.`;
    case 'ambiguous-date':
      return `“${fault.text}” may be two days. Write it as 2026-03-09.`;
    case 'too-long':
      return `It has ${decimalText(fault.characters, 0)} characters; up to ${decimalText(fault.greatest, 0)} are kept.`;
    case 'unknown-word':
      return `“${fault.text}” is none of: ${fault.choices}.`;
  }
}

type Refused = Extract<TableReading, { kind: 'refused' }>;

/** Why a table as a whole was not taken. */
export function sentenceOfTable({ code, facts }: Refused): string {
  const count = (key: string) => decimalText(facts[key] ?? 0, 0);
  switch (code) {
    case 'empty':
      return 'There is nothing in it.';
    case 'no-rows':
      return 'It has a header and no line below it. The first line names the columns.';
    case 'too-long':
      return `It has ${count('characters')} characters; up to ${count('greatest')} are taken at once.`;
    case 'too-many-lines':
      return `It has ${count('lines')} lines; up to ${count('greatest')} are taken at once.`;
  }
}
