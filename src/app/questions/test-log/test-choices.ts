import type { JointDocument, TestRecord } from '../../../storage/document.ts';
import {
  RESULTS_OF_KIND,
  TEST_KIND_NAMES,
  TEST_RESULT_NAMES,
  TEST_SETTING_NAMES,
} from '../../../wording/bench-tests.ts';
import type { Choice } from '../../fields/field-props.ts';

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
  (kind === 'pull-out' || kind === 'proof-pull' ? FORCES : TORQUES).map((value) => ({ value, label: value }));

/** A choice of what a document may name or leave out: none, or one of its printers. */
export const NO_PRINTER = '';
export const printersOf = ({ printers }: JointDocument): readonly Choice<string>[] => [
  { value: NO_PRINTER, label: 'not named' },
  ...printers.map(({ id, name }) => ({ value: id, label: name })),
];

/** The inserts of the drawer, and the one that the test names even where it has gone. */
export function insertsOf(named: readonly Choice<string>[], test: TestRecord): readonly Choice<string>[] {
  return named.some(({ value }) => value === test.insert)
    ? named
    : [...named, { value: test.insert, label: `“${test.insert}”, not in the drawer` }];
}
