import type { JointDocument, TestRecord } from '../../../storage/document.ts';
import {
  RESULTS_OF_KIND,
  TEST_KIND_NAMES,
  TEST_RESULT_NAMES,
  TEST_SETTING_NAMES,
  testUnitText,
} from '../../../wording/bench-tests.ts';
import type { Choice } from '../../fields/field-props.ts';
import { HOST_MATERIALS } from '../../joint/choices.ts';

const FORCES: readonly TestRecord['unit'][] = ['kgf', 'N', 'lbf'];
const TORQUES: readonly TestRecord['unit'][] = ['N·m', 'cN·m', 'in·lb', 'kgf·cm'];

export const isTorque = ({ unit }: Pick<TestRecord, 'unit'>): boolean => TORQUES.includes(unit);

const worded = <Value extends string>(values: readonly Value[], names: Readonly<Record<Value, string>>) =>
  values.map((value): Choice<Value> => ({ value, label: names[value] }));

export const KINDS = worded<TestRecord['kind']>(
  ['pull-out', 'proof-pull', 'jack-out-torque', 'torque-out'],
  TEST_KIND_NAMES,
);
export const TEST_SETTINGS_CHOICES = worded<TestRecord['setting']>(
  ['heat-set', 'cold-pressed', 'hammered', 'screwed-in', 'nut'],
  TEST_SETTING_NAMES,
);

export const resultsOf = (kind: TestRecord['kind']): readonly Choice<TestRecord['result']>[] =>
  worded(RESULTS_OF_KIND[kind], TEST_RESULT_NAMES);

export const unitsOf = (kind: TestRecord['kind']): readonly Choice<TestRecord['unit']>[] =>
  (kind === 'pull-out' || kind === 'proof-pull' ? FORCES : TORQUES).map((value) => ({
    value,
    label: testUnitText(value),
  }));

/** A choice of what a document may name or leave out: none, or one of its printers. */
export const NO_PRINTER = '';
export const printersOf = (
  { printers }: Pick<JointDocument, 'printers'>,
  { printer = NO_PRINTER }: TestRecord,
): readonly Choice<string>[] =>
  withNamed(
    [
      { value: NO_PRINTER, label: 'not named' },
      ...printers.map(({ id, name }) => ({ value: id, label: name })),
    ],
    printer,
    'not among your printers',
  );

/** The inserts of the drawer, and the one that the test names even where it has gone. */
export const insertsOf = (
  drawer: readonly Choice<string>[],
  { insert }: TestRecord,
): readonly Choice<string>[] => withNamed(drawer, insert, 'not in the drawer');

/** The materials of the tables, and the one that the test names even where they do not hold it. */
export const materialsOf = ({ material }: TestRecord): readonly Choice<string>[] =>
  withNamed(HOST_MATERIALS, material, 'not in the tables');

/** Choices with what a test names among them, so that none is shown that it does not name. */
const withNamed = (
  choices: readonly Choice<string>[],
  named: string,
  missing: string,
): readonly Choice<string>[] =>
  choices.some(({ value }) => value === named)
    ? choices
    : [...choices, { value: named, label: `“${named}”, ${missing}` }];
