import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { JointDocument, TestRecord } from '../../src/storage/document.ts';
import { LIMITS, type LimitName } from '../../src/storage/limits.ts';
import {
  FORCE_UNITS,
  TEST_KINDS,
  TEST_RESULTS,
  TEST_SETTINGS,
  TORQUE_UNITS,
} from '../../src/storage/workshop-schema.ts';
import fc from './fast-check.ts';

const within = (name: LimitName) => {
  const { least, greatest } = LIMITS[name];
  return fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: least, max: greatest, noNaN: true }).map((value) => value + 0) },
    { weight: 1, arbitrary: fc.constantFrom(least, greatest) },
  );
};
const perhaps = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: undefined });
/** What a bench shows, in whatever unit; and now and then anything that the door takes. */
const shown = fc.oneof(
  { weight: 5, arbitrary: fc.double({ min: 0.2, max: 300, noNaN: true }) },
  { weight: 1, arbitrary: within('testValue') },
  { weight: 1, arbitrary: within('asWritten') },
  { weight: 1, arbitrary: fc.constantFrom(0, Number.MIN_VALUE, 1e-9, 1e-3, 50) },
);
const usualKind: Readonly<Record<TestRecord['kind'], TestRecord['result']>> = {
  'pull-out': 'insert-out-clean',
  'proof-pull': 'held',
  'jack-out-torque': 'insert-out-with-plastic',
  'torque-out': 'insert-turned',
};

/** About what the ideal shear cylinder of an insert bears, N or N·m: 20 MPa over its whole length. */
function roughLoad({ kind, insert }: Pick<TestRecord, 'kind' | 'insert'>, { drawer }: JointDocument): number {
  const { knurlDiameter_mm: [knurl = 5] = [], length_mm: [length = 5] = [] } =
    drawer.find(({ id }) => id === insert) ?? {};
  const force = 20 * Math.PI * knurl * length;
  if (kind === 'torque-out') return (force * knurl) / 2 / 1000;
  return kind === 'jack-out-torque' ? (0.1 * force * knurl) / 1000 : force;
}

/** One test with nothing to fit anything else; half of them of the joint’s own set-up, half about as strong as a knurl is. */
const anyTest = (document: JointDocument): fc.Arbitrary<TestRecord> =>
  fc
    .record({
      kind: fc.constantFrom(...TEST_KINDS),
      own: fc.boolean(),
      insert: fc.constantFrom(...document.drawer.map(({ id }) => id), 'gone'),
      material: fc.constantFrom(...CATALOGUE.hostMaterials.map(({ id }) => id), 'chalk'),
      setting: fc.constantFrom(...TEST_SETTINGS),
      printer: perhaps(fc.constantFrom('attic', 'cellar')),
      axis: fc.constantFrom<TestRecord['axis'][]>('along-build', 'across-build'),
      anything: shown,
      share: fc.double({ min: 0.02, max: 3, noNaN: true }),
      force: fc.constantFrom(...FORCE_UNITS),
      torque: fc.constantFrom(...TORQUE_UNITS),
      result: fc.constantFrom(...TEST_RESULTS),
      usual: fc.boolean(),
      leverRatio: fc.oneof(
        { weight: 5, arbitrary: fc.constant(1) },
        { weight: 5, arbitrary: within('leverRatio') },
        { weight: 1, arbitrary: fc.constantFrom(0, -2, 1e6) },
      ),
      rest: fc.record(
        {
          resolution: fc.oneof(fc.constantFrom(0, 0.1, 1), within('testValue')),
          coupon: fc.integer({ min: LIMITS.couponNumber.least, max: LIMITS.couponNumber.greatest }),
          greatest: within('testValue'),
          bore_mm: within('holeDiameter_mm'),
          wallLines: fc.integer({ min: LIMITS.wallLines.least, max: LIMITS.wallLines.greatest }),
          infill_percent: within('infill_percent'),
          ironTemperature_degC: within('ironTemperature_degC'),
          settingTime_s: within('settingTime_s'),
          batch: fc.string({ maxLength: 40 }),
        },
        { requiredKeys: [] },
      ),
    })
    .map(
      ({
        own,
        force,
        torque,
        usual,
        result,
        printer,
        rest,
        material,
        setting,
        anything,
        share,
        ...record
      }) => {
        const turns = record.kind === 'jack-out-torque' || record.kind === 'torque-out';
        return {
          ...record,
          id: 'drawn',
          date: '2026-05-17',
          material: own ? document.joint.host.material : material,
          setting: own ? document.joint.setting : setting,
          ...(own || printer === undefined ? {} : { printer }),
          ...(usual
            ? {
                unit: turns ? 'N·m' : 'N',
                value: Math.min(
                  LIMITS.testValue.greatest,
                  (share * roughLoad(record, document)) / record.leverRatio,
                ),
                result: usualKind[record.kind],
                ...(rest.resolution === undefined ? {} : { resolution: rest.resolution }),
              }
            : { unit: turns === own ? torque : force, value: anything, result, ...rest }),
          note: '',
        };
      },
    );

/** Up to five tests that the schema accepts for a document. */
export const anyTests = (document: JointDocument): fc.Arbitrary<TestRecord[]> =>
  fc
    .array(anyTest(document), { maxLength: 5 })
    .map((tests) => tests.map((test, index) => ({ ...test, id: `test-${index + 1}` })));
