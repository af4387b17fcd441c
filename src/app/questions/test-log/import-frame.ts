import type { JointDocument } from '../../../storage/document.ts';
import type { Columns } from '../../../storage/tests-table/columns.ts';
import { foldedName, type ImportFrame } from '../../../storage/tests-table/import-tests.ts';
import { TEST_KIND_NAMES, TEST_RESULT_NAMES, TEST_SETTING_NAMES } from '../../../wording/bench-tests.ts';
import type { Choice } from '../../fields/field-props.ts';
import { HOST_MATERIALS } from '../../joint/choices.ts';
import { nextNumber, withNextTest } from './test-edits.ts';

/** What the lines of a table are read with: the set-up that the next test would begin with, names of inserts. */
export function importFrame(
  document: JointDocument,
  columns: Columns,
  {
    insert,
    date,
    inserts,
  }: {
    readonly insert: string;
    readonly date: string;
    readonly inserts: readonly Choice<string>[];
  },
): ImportFrame {
  const { test } = withNextTest(document, { insert, date });
  const { id: _id, coupon: _coupon, value: _value, ...setUp } = test;
  const labels = document.drawer.flatMap(({ id, label }) =>
    label === undefined ? [] : [[label, id] as const],
  );
  const names = inserts.map(({ label, value }) => [label, value] as const);
  const ids = document.drawer.map(({ id }) => [id, id] as const);
  const folded = (pairs: readonly (readonly [string, string])[]) =>
    new Map(pairs.map(([name, id]) => [foldedName(name), id]));
  return {
    columns,
    setUp,
    firstNumber: nextNumber(document.tests),
    words: { kinds: TEST_KIND_NAMES, results: TEST_RESULT_NAMES, settings: TEST_SETTING_NAMES },
    inserts: folded([...names, ...labels, ...ids]),
    printers: folded(document.printers.flatMap(({ id, name }) => [[name, id] as const, [id, id] as const])),
    materials: folded(
      HOST_MATERIALS.flatMap(({ value, label }) => [[label, value] as const, [value, value] as const]),
    ),
  };
}
