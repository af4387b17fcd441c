import type { BenchTest, Shown } from '../core/bench/bench-test.ts';
import type { Insert } from '../core/inserts/insert.ts';
import type { Catalogue } from '../core/joint/catalogue.ts';
import { toCore } from '../core/units/convert.ts';
import { UNITS, type UnitSymbol } from '../core/units/units.ts';
import type { JointDocument, TestRecord } from './document.ts';
import type { Faults } from './resolve.ts';

/** The unit of a test as the core knows it. */
export const UNIT_OF_TEST = {
  kgf: 'kgf',
  N: 'N',
  lbf: 'lbf',
  N·m: 'N·m',
  cN·m: 'cN·m',
  in·lb: 'lbf·in',
  kgf·cm: 'kgf·cm',
} as const satisfies Record<TestRecord['unit'], UnitSymbol>;

/** The tests of a document with what they name, where it is there; names given twice are reported at their keys. */
export function resolveTests(
  { tests, printers }: JointDocument,
  drawer: readonly Insert[],
  catalogue: Catalogue,
  faults: Faults,
): readonly BenchTest[] {
  const seen = new Set<string>();
  return tests.map((record, index) => {
    if (seen.has(record.id)) faults.add(`tests.${index}.id`, 'duplicate-id', { value: record.id });
    seen.add(record.id);
    const material = catalogue.hostMaterials.find(({ id }) => id === record.material);
    const insert = drawer.find(({ id }) => id === record.insert);
    return {
      id: record.id,
      date: record.date,
      insertId: record.insert,
      ...(insert ? { insert } : {}),
      ...printerOf(record, printers),
      materialId: record.material,
      ...(material ? { material } : {}),
      axis: record.axis,
      setting: record.setting,
      kind: record.kind,
      shown: shownOf(record),
      leverRatio: record.leverRatio,
      result: record.result,
      ...(record.bore_mm === undefined ? {} : { bore: record.bore_mm }),
      ...madeOf(record),
      ...(record.batch === undefined ? {} : { batch: record.batch }),
      written: writtenOf(record),
    };
  });
}

function printerOf(
  { printer }: TestRecord,
  printers: JointDocument['printers'],
): Pick<BenchTest, 'printer' | 'gonePrinter'> {
  if (printer === undefined) return {};
  return printers.some(({ id }) => id === printer) ? { printer } : { gonePrinter: printer };
}

/** Keys in one order: documents and edits have them in any. */
const writtenOf = ({ id: _id, ...written }: TestRecord): string =>
  JSON.stringify(Object.entries(written).sort(([one], [other]) => (one < other ? -1 : 1)));

/** How the coupon was printed and its insert set, as far as it is written down. */
const madeOf = ({ wallLines, infill_percent, ironTemperature_degC, settingTime_s }: TestRecord) => ({
  ...(wallLines === undefined ? {} : { wallLines }),
  ...(infill_percent === undefined ? {} : { infill: toCore(infill_percent, '%') }),
  ...(ironTemperature_degC === undefined ? {} : { ironTemperature: ironTemperature_degC }),
  ...(settingTime_s === undefined ? {} : { settingTime: toCore(settingTime_s, 's') }),
});

function shownOf({ value, unit, resolution, greatest }: TestRecord): Shown {
  const symbol = UNIT_OF_TEST[unit];
  return {
    quantity: UNITS[symbol].kind === 'torque' ? 'torque' : 'force',
    value: toCore(value, symbol),
    ...(resolution === undefined ? {} : { resolution: toCore(resolution, symbol) }),
    ...(greatest === undefined ? {} : { greatest: toCore(greatest, symbol) }),
  };
}
