import { describe, expect, test } from 'vitest';
import { recommend } from '../../src/core/recommend/recommend.ts';
import { reportOf } from '../../src/headless/report.ts';
import type { JointDocument, TestRecord } from '../../src/storage/document.ts';
import { documentWithTests, joinedWithTests, resolvedWithTests, testRecord } from '../support/bench-tests.ts';
import { notFinite } from '../support/not-finite.ts';
import { expectPublished } from '../support/published.ts';

const TESTS: readonly TestRecord[] = [
  testRecord({ id: 'test-1', value: 81 }),
  testRecord({ id: 'test-2', value: 77.5 }),
  testRecord({ id: 'test-3', value: 50, greatest: 50, result: 'held' }),
  testRecord({ id: 'test-4', value: 62, greatest: 50, result: 'held' }),
  testRecord({ id: 'test-5', value: 93, setting: 'screwed-in' }),
];

function report(tests: readonly TestRecord[], evidence: JointDocument['evidence'] = 'used') {
  const document = documentWithTests(tests, {}, evidence);
  const { drawer } = resolvedWithTests(document);
  const { joint, evidence: found } = joinedWithTests(document);
  const made = reportOf({
    name: document.name,
    joint,
    recommendation: recommend(joint, drawer),
    drawer,
    ...(found ? { evidence: found } : {}),
  });
  if (!('evidence' in made)) throw new Error('stopped');
  return made;
}

describe('the evidence in a report', () => {
  const { evidence } = report(TESTS);
  test('is nothing without tests', () => {
    expect(report([]).evidence).toBeNull();
  });
  test('says of each test what it says, and why one is left out', () => {
    expect(evidence?.tests.map(({ test: id, says }) => [id, says])).toEqual([
      ['test-1', 'broke'],
      ['test-2', 'broke'],
      ['test-3', 'held'],
      ['test-4', 'left-out'],
      ['test-5', 'other'],
    ]);
    expect(evidence?.tests[3]).toEqual({
      test: 'test-4',
      says: 'left-out',
      code: 'above-instrument',
      sentence: 'The reading is above the greatest that the instrument shows. Was a digit too many typed?',
    });
    // 44/√3 MPa over π · 4.93 · 3.9196 mm² are 1542.2 N; 81 kg are 794.3 N.
    const first: Record<string, unknown> = { ...evidence?.tests[0] };
    expectPublished(Number(first['loadAtFullBond_N']), '1542.2');
    expectPublished(Number(first['bondFactor']), '0.5151');
  });
  test('gives the joint’s set-up, and the insert’s pull-out with and without it', () => {
    expect(evidence).toMatchObject({
      used: true,
      ofJoint: { material: 'petg', setting: 'heat-set', broke: 2, held: 1, bondFactorBefore: 0.85 },
    });
    const { median_N, medianWithout_N, characteristic_N } = evidence?.knurlShear ?? {};
    expect(median_N).toBeLessThan(medianWithout_N ?? 0);
    expect(characteristic_N).toBeLessThan(median_N ?? 0);
    expect(notFinite(evidence)).toEqual([]);
  });
  test('says that it is not used where it is left out, and still what it would make of the insert', () => {
    const out = report(TESTS, 'left-out').evidence;
    expect(out).toEqual({ ...evidence, used: false });
  });
});
