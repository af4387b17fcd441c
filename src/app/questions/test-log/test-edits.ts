import type { JointDocument, TestRecord } from '../../../storage/document.ts';
import { LIMITS } from '../../../storage/limits.ts';
import { RESULTS_OF_KIND } from '../../../wording/bench-tests.ts';
import type { Edit } from '../../state/edit.ts';

const NUMBERED = /^test-(\d+)$/;

const numberOf = ({ id }: TestRecord): number => Number(NUMBERED.exec(id)?.[1] ?? 0);
const highest = (numbers: readonly number[]): number => numbers.reduce((most, one) => Math.max(most, one), 0);

/** The number that the next test gets: one above the highest. */
export const nextNumber = (tests: readonly TestRecord[]): number => highest(tests.map(numberOf)) + 1;

/** The number that the next coupon bears, as they are counted on its sheet: one above the highest in the log. */
export const nextCoupon = (tests: readonly TestRecord[]): number =>
  Math.min(highest(tests.map((test) => test.coupon ?? numberOf(test))) + 1, LIMITS.couponNumber.greatest);

/** Where the units of a kind of test begin: a hanging scale in kg, a torque driver in N·m. */
const usualUnit = (kind: TestRecord['kind']): TestRecord['unit'] =>
  kind === 'pull-out' || kind === 'proof-pull' ? 'kgf' : 'N·m';

/** A first test: the joint's own set-up and the insert on the sheet. */
function firstTest(document: JointDocument, insert: string): Omit<TestRecord, 'id' | 'date'> {
  const { joint } = document;
  const { host } = joint;
  return {
    insert,
    ...(joint.printer === undefined ? {} : { printer: joint.printer }),
    material: host.material,
    axis: host.axis,
    ...(host.wall.kind === 'lines' ? { wallLines: host.wall.count } : {}),
    infill_percent: host.infill.density_percent,
    setting: joint.setting,
    kind: 'pull-out',
    value: 0,
    unit: 'kgf',
    leverRatio: 1,
    result: 'insert-out-with-plastic',
    note: '',
  };
}

/** Tests with one more: set up like the last one, its reading, bore, photo and note still to come. */
export function withNextTest(
  document: JointDocument,
  { insert, date }: { readonly insert: string; readonly date: string },
): { readonly id: string; readonly test: TestRecord; readonly edit: Edit } {
  const { tests } = document;
  const id = `test-${nextNumber(tests)}`;
  const last = tests.at(-1);
  const setUp = last ? blank(last) : firstTest(document, insert);
  const test: TestRecord = { ...setUp, id, coupon: nextCoupon(tests), date };
  return { id, test, edit: { path: 'tests', value: [...tests, test] } };
}

function blank(last: TestRecord): Omit<TestRecord, 'id' | 'date'> {
  const { id: _id, coupon: _coupon, date: _date, photo: _photo, bore_mm: _bore, ...kept } = last;
  return { ...kept, value: 0, note: '' };
}

export const withoutTest = ({ tests }: JointDocument, id: string): Edit => ({
  path: 'tests',
  value: tests.filter((test) => test.id !== id),
});

/** What has to change along with the kind of a test: a unit and a result that it can have. */
export function alongKind(test: TestRecord, index: number, kind: TestRecord['kind']): readonly Edit[] {
  const unit = usualUnit(kind);
  const isSameQuantity = usualUnit(test.kind) === unit;
  const [usual] = RESULTS_OF_KIND[kind];
  return [
    ...(isSameQuantity
      ? []
      : [
          { path: `tests.${index}.unit`, value: unit },
          // A scale's resolution and end say nothing of a torque driver.
          { path: `tests.${index}.resolution`, value: undefined },
          { path: `tests.${index}.greatest`, value: undefined },
        ]),
    ...(RESULTS_OF_KIND[kind].includes(test.result) ? [] : [{ path: `tests.${index}.result`, value: usual }]),
  ];
}
