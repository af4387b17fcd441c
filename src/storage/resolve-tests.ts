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

/** The tests of a document with what they name; names given twice and unknown materials are reported at their keys. */
export function resolveTests(
  { tests }: JointDocument,
  drawer: readonly Insert[],
  catalogue: Catalogue,
  faults: Faults,
): readonly BenchTest[] {
  const seen = new Set<string>();
  return tests.flatMap((record, index) => {
    if (seen.has(record.id)) faults.add(`tests.${index}.id`, 'duplicate-id', { value: record.id });
    seen.add(record.id);
    const material = catalogue.hostMaterials.find((row) => row.id === record.material);
    if (!material) {
      const choices = catalogue.hostMaterials.map((row) => row.id).join(', ');
      faults.add(`tests.${index}.material`, 'unknown-row', { value: record.material, choices });
      return [];
    }
    const insert = drawer.find(({ id }) => id === record.insert);
    return [
      {
        id: record.id,
        date: record.date,
        insertId: record.insert,
        ...(insert ? { insert } : {}),
        ...(record.printer === undefined ? {} : { printer: record.printer }),
        material,
        axis: record.axis,
        setting: record.setting,
        kind: record.kind,
        shown: shownOf(record),
        leverRatio: record.leverRatio,
        result: record.result,
        ...(record.bore_mm === undefined ? {} : { bore: record.bore_mm }),
        ...(record.batch === undefined ? {} : { batch: record.batch }),
      },
    ];
  });
}

function shownOf({ value, unit, resolution, greatest }: TestRecord): Shown {
  const symbol = UNIT_OF_TEST[unit];
  return {
    quantity: UNITS[symbol].kind === 'torque' ? 'torque' : 'force',
    value: toCore(value, symbol),
    ...(resolution === undefined ? {} : { resolution: toCore(resolution, symbol) }),
    ...(greatest === undefined ? {} : { greatest: toCore(greatest, symbol) }),
  };
}
