import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../src/core/chance/chance-model.ts';
import { assess } from '../../src/core/joint/assess.ts';
import type { JointAssessment } from '../../src/core/joint/assessment.ts';
import { noticesOf } from '../../src/core/joint/notices.ts';
import { admit } from '../../src/core/joint/stop.ts';
import { recommend } from '../../src/core/recommend/recommend.ts';
import { holdOf } from '../../src/core/service/hold.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { JointDocument, TestRecord } from '../../src/storage/document.ts';
import { openDocumentText } from '../../src/storage/open-document.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { withEvidence } from '../../src/storage/with-evidence.ts';
import { documentWithTests, joinedWithTests, resolvedWithTests, testRecord } from '../support/bench-tests.ts';
import { FAULTY_TESTS } from '../support/faulty-tests.ts';
import { type Changes, given, insertRecord } from '../support/joints.ts';

const WEAK: readonly TestRecord[] = [
  testRecord({ id: 'test-1', value: 81 }),
  testRecord({ id: 'test-2', value: 77.5, date: '2026-03-15' }),
  testRecord({ id: 'test-3', value: 84, date: '2026-03-16' }),
];
/** Over a gap the clamp force pulls at the insert, so that its bond speaks in the torque too. */
const OVER_GAP: Changes = {
  gap_mm: 1.3,
  loads: { pull_N: 21, shear_N: 3 },
  tool: { kind: 'torque-driver', settings_Nm: [], step_Nm: 0.01 },
};
const DRAWER = [insertRecord(), insertRecord({ id: 'longer', length_mm: [6.9] })];

function answered(document: JointDocument) {
  const { joint } = joinedWithTests(document);
  const admission = admit(joint);
  if (admission.kind === 'stopped') throw new Error('stopped');
  const { drawer } = resolvedWithTests(document);
  const [insert, longer] = drawer;
  if (!insert || !longer) throw new Error('the drawer is too small');
  const assessment = assess(admission.joint, insert);
  return { joint: admission.joint, insert, longer, assessment, drawer };
}
const knurlOf = ({ limits }: JointAssessment) => {
  const found = limits.find(({ mode }) => mode === 'knurl-shear');
  if (!found) throw new Error('knurl shear is always there on the near side');
  return found.capacity;
};
const noticesIn = ({ joint, insert, assessment }: ReturnType<typeof answered>) =>
  noticesOf(joint, insert, assessment);
const codes = (one: ReturnType<typeof answered>) => noticesIn(one).map(({ code }) => code);

describe('withEvidence', () => {
  const without = answered(documentWithTests([], { ...OVER_GAP, drawer: DRAWER }));
  const weak = answered(documentWithTests(WEAK, { ...OVER_GAP, drawer: DRAWER }));
  test('moves the knurl’s limits, the window, the ranking’s torque, the life and the chance', () => {
    expect(knurlOf(weak.assessment).median.value).toBeLessThan(knurlOf(without.assessment).median.value);
    expect(weak.assessment.torque.most.value).not.toBe(without.assessment.torque.most.value);
    const torque = given('T', 110, 'N·mm');
    const worst = ({ joint, insert }: typeof weak) => holdOf(joint, insert, torque).worst.margin;
    expect(worst(weak)).not.toBe(worst(without));
    const knurl = ({ joint, insert }: typeof weak) => {
      const model = chanceModel(joint, insert, 240);
      const { median, deviation } = model.modes.find(({ mode }) => mode === 'knurl-shear') ?? {};
      return { freedom: model.knurlFreedom, median, deviation };
    };
    expect(knurl(without)).toMatchObject({ freedom: 4 });
    expect(knurl(weak)).toMatchObject({ freedom: 7 });
    expect(knurl(weak).deviation).toBeLessThan(knurl(without).deviation ?? 0);
    const merits = ({ joint, drawer }: typeof weak) => {
      const found = recommend(joint, drawer);
      if (found.kind === 'stopped') throw new Error('stopped');
      return [...found.ranked, ...found.rejected].map(
        ({ assessment }) => assessment?.holds.characteristic.value,
      );
    };
    expect(merits(weak)).not.toEqual(merits(without));
  });
  test('says so, and no longer that nobody has tested', () => {
    expect(codes(weak)).toContain('bond-tested');
    expect(codes(weak)).not.toContain('bond-untested');
    expect(codes(without)).toContain('bond-untested');
  });
  test('says from what to what knurl shear moved, with the way to both', () => {
    const told = noticesIn(weak).find(({ code }) => code === 'bond-tested');
    expect(told?.facts['before']).toEqual(knurlOf(without.assessment).median);
    expect(told?.facts['after']).toEqual(knurlOf(weak.assessment).median);
    expect(told?.facts['characteristic']).toEqual(knurlOf(weak.assessment).characteristic);
  });
  test('left out, gives the answer without tests to the last digit', () => {
    const off = answered(documentWithTests(WEAK, { ...OVER_GAP, drawer: DRAWER }, 'left-out'));
    expect(off.assessment).toEqual(without.assessment);
    expect(joinedWithTests(documentWithTests(WEAK, OVER_GAP, 'left-out')).evidence?.findings).toHaveLength(3);
  });
  test('moves a size that was not pulled too, but less', () => {
    const moved = (insert: 'insert' | 'longer') =>
      knurlOf(assess(weak.joint, weak[insert])).median.value /
      knurlOf(assess(without.joint, without[insert])).median.value;
    expect(moved('longer')).toBeLessThan(1);
    expect(moved('longer')).toBeGreaterThan(moved('insert'));
  });
  test('never lowers what holds because a screw broke', () => {
    const broke = [testRecord({ value: 71, result: 'screw-broke' })];
    const after = answered(documentWithTests(broke, { ...OVER_GAP, drawer: DRAWER }));
    // The grid finds its quantiles to 0.2 %.
    expect(knurlOf(after.assessment).characteristic.value).toBeGreaterThan(
      0.998 * knurlOf(without.assessment).characteristic.value,
    );
  });
  test('asks nothing of a joint that is stopped', () => {
    const document = documentWithTests(WEAK, { use: 'overhead' });
    expect(joinedWithTests(document)).toEqual({ joint: resolvedWithTests(document).joint });
  });
});

describe('the tests of a document', () => {
  const refusalsOf = (tests: readonly TestRecord[]) => {
    const found = resolveDocument(documentWithTests(tests), CATALOGUE);
    return found.kind === 'refused' ? found.refusals : [];
  };
  test('are refused for a name given twice', () => {
    expect(
      refusalsOf([testRecord(), testRecord({ value: 98 })]).map(({ path, code }) => [path, code]),
    ).toEqual([['tests.1.id', 'duplicate-id']]);
  });
  test.each(Object.entries(FAULTY_TESTS))(
    'with a row of the fault %s open, keep it as it was written, and take nothing from it',
    (code, { record, joint = {} }) => {
      const sound = testRecord();
      const faulty = testRecord({ ...record, id: 'test-2' });
      const opened = openDocumentText(JSON.stringify(documentWithTests([sound, faulty], joint)));
      if (opened.kind === 'refused') throw new Error(JSON.stringify(opened.refusals));
      expect(opened.document.tests).toEqual([sound, faulty]);
      const { evidence } = withEvidence(opened.document, resolvedWithTests(opened.document));
      expect(evidence?.findings[1]).toMatchObject({ says: 'left-out', fault: { code } });
      const alone = joinedWithTests(documentWithTests([sound], joint));
      expect(evidence?.setups).toEqual(alone.evidence?.setups);
    },
  );
  test('are read in their units: 30 in·lb are 3,389.5 N·mm', () => {
    const [torque] = resolvedWithTests(
      documentWithTests([
        testRecord({ kind: 'torque-out', unit: 'in·lb', value: 30, result: 'insert-turned' }),
      ]),
    ).bench;
    expect(torque?.shown.quantity).toBe('torque');
    expect(Math.round(10 * (torque?.shown.value ?? 0))).toBe(33895);
  });
});
