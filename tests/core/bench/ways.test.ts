import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../../src/core/bench/evidence.ts';
import { type ComparedBy, waysOfSetups } from '../../../src/core/bench/ways.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint } from '../../support/joints.ts';

const JOINT = answerableJoint();
const waysOf = (tests: readonly Partial<TestRecord>[], by: ComparedBy) =>
  waysOfSetups(
    evidenceOf(
      tests.map((one, index) => benchTest({ id: `test-${index + 1}`, unit: 'N', ...one })),
      JOINT,
      undefined,
    ).findings,
    by,
  );
const loadsOf = (tests: readonly Partial<TestRecord>[], by: ComparedBy) =>
  waysOf(tests, by).map(({ ways }) => ways.map(({ sample }) => sample.values));

describe('waysOfSetups', () => {
  test('puts heat-set beside hammered and screwed in, lever and all: no model is asked', () => {
    const [setup] = waysOf(
      [
        { value: 1040 },
        { value: 310, setting: 'hammered' },
        { value: 330, setting: 'screwed-in' },
        { value: 420, leverRatio: 2.5 },
      ],
      'setting',
    );
    expect(setup?.ways.map(({ made, sample }) => [made, sample.values])).toEqual([
      [{ of: 'setting', setting: 'heat-set' }, [1040, 1050]],
      [{ of: 'setting', setting: 'hammered' }, [310]],
      [{ of: 'setting', setting: 'screwed-in' }, [330]],
    ]);
    expect(setup).not.toHaveProperty('setting');
  });
  test('puts one hole beside another, and leaves out whose bore nobody measured', () => {
    const [setup] = waysOf(
      [{ value: 900, bore_mm: 4.44 }, { value: 700, bore_mm: 4.61 }, { value: 880 }],
      'bore',
    );
    expect(setup).toMatchObject({ setting: 'heat-set', unnamed: 1, held: 0 });
    expect(setup?.ways.map(({ sample }) => sample.values)).toEqual([[900], [700]]);
  });
  test('puts one iron beside another, and one time to set beside another', () => {
    const tests = [
      { value: 900, ironTemperature_degC: 240, settingTime_s: 6 },
      { value: 950, ironTemperature_degC: 265, settingTime_s: 3 },
      { value: 910, ironTemperature_degC: 240, settingTime_s: 3 },
    ];
    expect(loadsOf(tests, 'iron-temperature')).toEqual([[[900, 910], [950]]]);
    expect(loadsOf(tests, 'setting-time')).toEqual([[[950, 910], [900]]]);
  });
  test('has a batch without a name for the usual one', () => {
    expect(loadsOf([{ value: 900, batch: 'wet' }, { value: 910 }], 'batch')).toEqual([[[910], [900]]]);
  });
  test.each([
    ['kinds of test', { kind: 'torque-out', unit: 'N·m', value: 2.1, result: 'insert-turned' }],
    ['directions of the layers', { axis: 'across-build' }],
    ['materials', { material: 'pla' }],
    ['ways of setting', { setting: 'cold-pressed', value: 400 }],
  ] as const)('does not compare %s with each other by their batch', (_name, changes) => {
    expect(waysOf([{ value: 900 }, { value: 800, batch: 'wet', ...changes }], 'batch')).toEqual([]);
  });
  test('counts what held or broke elsewhere, and has no value of it', () => {
    const [setup] = waysOf(
      [
        { value: 900 },
        { value: 700, batch: 'wet' },
        { value: 990, result: 'held' },
        { value: 640, result: 'boss-split', batch: 'wet' },
      ],
      'batch',
    );
    expect(setup?.held).toBe(2);
    expect(setup?.ways.map(({ sample }) => sample.values)).toEqual([[900], [700]]);
  });
  test('has nothing to compare of one way, and of tests that are left out', () => {
    expect(waysOf([{ value: 900 }, { value: 940 }], 'bore')).toEqual([]);
    expect(waysOf([{ value: 900 }, { value: 0, batch: 'wet' }], 'batch')).toEqual([]);
    expect(waysOf([], 'batch')).toEqual([]);
  });
});
