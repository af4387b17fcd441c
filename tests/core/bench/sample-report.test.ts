import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../../src/core/bench/evidence.ts';
import { sampleReport } from '../../../src/core/bench/sample-report.ts';
import { testSamples } from '../../../src/core/bench/test-samples.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint } from '../../support/joints.ts';
import { expectPublished } from '../../support/published.ts';

function samplesOf(tests: readonly Partial<TestRecord>[]) {
  const [setup] = evidenceOf(
    tests.map((one, index) => benchTest({ id: `test-${index + 1}`, unit: 'N', ...one })),
    answerableJoint(),
    undefined,
  ).setups;
  if (setup === undefined) throw new Error('no test of a bond');
  return testSamples(setup);
}
const PULLS = [{ value: 1040 }, { value: 1105 }, { value: 998 }, { value: 1122 }, { value: 1075 }];

describe('testSamples', () => {
  test('holds the loads at the insert, lever and all, of those that gave way', () => {
    const [pulled] = samplesOf([...PULLS, { value: 300, leverRatio: 3 }, { value: 700, result: 'held' }]);
    expect(pulled).toMatchObject({ insertId: 'usual', kind: 'pull-out', held: 1 });
    expect(pulled?.sample).toMatchObject({ values: [1040, 1105, 998, 1122, 1075, 900], unit: 'N' });
  });
  test('keeps the way of a load from the lever’s reading, and has none for what was read straight', () => {
    const [levered] = samplesOf([...PULLS, { value: 300, leverRatio: 3 }]);
    const ways = levered?.sample.from?.map((way) => way?.entries.map(({ value }) => value));
    expect(ways).toEqual([...PULLS.map(() => undefined), [300, 3]]);
    expect(samplesOf(PULLS)[0]?.sample.from).toBeUndefined();
  });
  test('keeps pulls and turns apart', () => {
    const samples = samplesOf([
      ...PULLS,
      { kind: 'torque-out', unit: 'N·m', value: 1.1, result: 'insert-turned' },
    ]);
    expect(samples.map(({ kind, sample }) => [kind, sample.unit])).toEqual([
      ['pull-out', 'N'],
      ['torque-out', 'N·mm'],
    ]);
  });
  test('has no sample where every coupon held', () => {
    expect(samplesOf([{ value: 700, result: 'held' }])).toEqual([]);
  });
});

describe('sampleReport', () => {
  const sample = { values: PULLS.map(({ value }) => value), unit: 'N' } as const;
  test('promises by k 4.203 for 5 values at 95 %/95 % (ISO 16269-6)', () => {
    const { summary, tolerance } = sampleReport(sample);
    // mean 1068, s = √(10018/4) = 50.045 (hand calculation): 1068 − 4.203 · 50.045
    expect(summary.mean.value).toBe(1068);
    expectPublished(summary.deviation?.value ?? 0, '50.045');
    expectPublished(tolerance.normal.kind === 'value' ? tolerance.normal.value.value : 0, '858');
  });
  test('predicts the next by k_n 3.37 for 3 values (EN 1990, Table D1)', () => {
    const { prediction } = sampleReport({ ...sample, values: sample.values.slice(0, 3) });
    expectPublished(prediction.normal.kind === 'value' ? prediction.normal.factor.value : 0, '3.37');
  });
  test('says why one value promises nothing', () => {
    const { tolerance, plot } = sampleReport({ values: [1040], unit: 'N' });
    expect(tolerance.lognormal).toMatchObject({ kind: 'refused', code: 'too-few-values' });
    expect(plot.kind).toBe('refused');
  });
});
