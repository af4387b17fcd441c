import { describe, expect, test } from 'vitest';
import { faultOfTest } from '../../../src/core/bench/test-fault.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint } from '../../support/joints.ts';

const JOINT = answerableJoint();
const faultOf = (changes: Partial<TestRecord>, before: readonly Partial<TestRecord>[] = []) =>
  faultOfTest(
    benchTest(changes),
    before.map((one) => benchTest(one)),
    JOINT,
  );

describe('faultOfTest', () => {
  test('finds nothing wrong with an insert that came out at 107 kg', () => {
    expect(faultOf({})).toBeUndefined();
  });
  test.each<[string, Partial<TestRecord>, object]>([
    ['no reading', { value: 0 }, { code: 'no-reading' }],
    ['a reading below zero', { value: -3.5 }, { code: 'reading-below-zero' }],
    [
      'a lever ratio of zero',
      { leverRatio: 0 },
      { code: 'no-such-lever', ratio: 0, least: 0.05, greatest: 100 },
    ],
    ['a lever ratio below zero', { leverRatio: -2.5 }, { code: 'no-such-lever', ratio: -2.5 }],
    ['a lever ratio that no lever has', { leverRatio: 4500 }, { code: 'no-such-lever', ratio: 4500 }],
    ['an insert that has gone', { insert: 'gone' }, { code: 'not-in-drawer', insert: 'gone' }],
    ['a material of no table', { material: 'bakelite' }, { code: 'unknown-material', material: 'bakelite' }],
    ['a printer that has gone', { printer: 'cellar' }, { code: 'printer-gone', printer: 'cellar' }],
    ['a pull in N·m', { unit: 'N·m', value: 1.3 }, { code: 'unit-of-other-kind', wanted: 'force' }],
    [
      'a turn in kg',
      { kind: 'torque-out', result: 'insert-turned' },
      { code: 'unit-of-other-kind', wanted: 'torque' },
    ],
    ['a pull that turned the insert', { result: 'insert-turned' }, { code: 'result-of-other-kind' }],
    [
      'a turn that drew the insert out',
      { kind: 'torque-out', unit: 'N·m', value: 1.4 },
      { code: 'result-of-other-kind' },
    ],
    ['a scale of 50 kg that shows 62', { value: 62, greatest: 50 }, { code: 'above-instrument' }],
    // M3 of class 8.8: 5.03 mm² · 800 MPa = 4,024 N; 700 kgf are 6,865 N.
    ['700 kg on an M3 of class 8.8', { value: 700 }, { code: 'above-screw', screw: 'M3' }],
    // Breaking torque of such a screw 1.5 N·m (iso-898-7).
    [
      '2.6 N·m on it',
      { kind: 'torque-out', unit: 'N·m', value: 2.6, result: 'held' },
      { code: 'above-screw', screw: 'M3' },
    ],
    ['a reading below one step of its scale', { value: 0.4, resolution: 0.5 }, { code: 'below-step' }],
  ])('names %s', (_, changes, fault) => {
    expect(faultOf(changes)).toMatchObject(fault);
  });
  test('takes a jack-out that ends either way, and no screw for one of another thread', () => {
    const jacked = { kind: 'jack-out-torque', unit: 'N·m', value: 0.9 } as const;
    expect(faultOf({ ...jacked, result: 'insert-turned' })).toBeUndefined();
    expect(faultOf({ ...jacked, result: 'insert-out-clean' })).toBeUndefined();
    const wider = answerableJoint({ screw: { thread: 'M4' }, clamped: { clearanceHole_mm: 4.5 } });
    expect(faultOfTest(benchTest(jacked), [], wider)).toEqual({
      code: 'screw-of-other-thread',
      insert: 'M3',
      screw: 'M4',
    });
  });
  test('takes the thread of the insert for the screw, and the joint’s class', () => {
    const wider = answerableJoint({ screw: { thread: 'M4' }, clamped: { clearanceHole_mm: 4.5 } });
    // M3 of class 8.8 bears 4,024 N at least: 6,036 N are half as much again, 615.5 kgf.
    expect(faultOfTest(benchTest({ value: 614 }), [], wider)?.code).toBeUndefined();
    expect(faultOfTest(benchTest({ value: 617 }), [], wider)?.code).toBe('above-screw');
  });
  test('asks a stainless screw too, which ISO 898-7 leaves out: M3 of A2-70 up to 1.5 · 1,612 N·mm', () => {
    const stainless = answerableJoint({ screw: { propertyClass: 'A2-70' } });
    const turned = (value: number) =>
      benchTest({ kind: 'torque-out', unit: 'N·m', value, result: 'screw-broke' });
    expect(faultOfTest(turned(2.41), [], stainless)).toBeUndefined();
    expect(faultOfTest(turned(2.43), [], stainless)?.code).toBe('above-screw');
  });
  test('takes the ends of what levers have', () => {
    expect(faultOf({ leverRatio: 0.05 })).toBeUndefined();
    expect(faultOf({ leverRatio: 100, value: 1.07 })).toBeUndefined();
    expect(faultOf({ leverRatio: 0.0499 })?.code).toBe('no-such-lever');
    expect(faultOf({ leverRatio: 100.1, value: 1.07 })?.code).toBe('no-such-lever');
  });
});

describe('faultOfTest, of a row written twice', () => {
  const written = {
    coupon: 7,
    wallLines: 4,
    infill_percent: 30,
    resolution: 0.1,
    greatest: 200,
    bore_mm: 4.1,
    ironTemperature_degC: 240,
    settingTime_s: 6,
    batch: 'slow',
    note: 'layer 3 loose',
  } as const satisfies Partial<TestRecord>;
  test('names it, and the first one only once', () => {
    expect(faultOf({ ...written, id: 'test-2' }, [written])).toEqual({ code: 'duplicate', of: 'test-1' });
    expect(faultOf(written)).toBeUndefined();
  });
  test('names one that held too: pasted twice it would prove twice as much', () => {
    const held = { value: 50, greatest: 50, result: 'held' } as const;
    expect(faultOf({ id: 'test-2', ...held }, [held])?.code).toBe('duplicate');
    expect(faultOf({ id: 'test-2', ...held, coupon: 2 }, [{ ...held, coupon: 1 }])).toBeUndefined();
  });
  test.each<[string, Partial<TestRecord>]>([
    ['number on the coupon', { coupon: 8 }],
    ['day', { date: '2026-03-15' }],
    ['axis', { axis: 'across-build' }],
    ['wall lines', { wallLines: 5 }],
    ['infill', { infill_percent: 40 }],
    ['way of setting', { setting: 'hammered' }],
    ['kind', { kind: 'proof-pull' }],
    ['reading', { value: 107.1 }],
    ['lever ratio', { leverRatio: 1.1 }],
    ['resolution', { resolution: 0.5 }],
    ['greatest reading', { greatest: 300 }],
    ['result', { result: 'insert-out-clean' }],
    ['bore', { bore_mm: 4.12 }],
    ['iron', { ironTemperature_degC: 245 }],
    ['time to set', { settingTime_s: 7 }],
    ['batch', { batch: 'fast' }],
    ['photo', { photo: 'test-2-1' }],
    ['note', { note: 'layer 4 loose' }],
    ['material', { material: 'abs' }],
    ['printer', { printer: 'attic' }],
  ])('takes two that differ in their %s for two', (_, changes) => {
    expect(faultOf({ ...written, ...changes, id: 'test-2' }, [written])).toBeUndefined();
  });
  test('takes keys in any order for the same', () => {
    const turned = Object.fromEntries(Object.entries(written).reverse());
    expect(faultOf({ ...turned, id: 'test-2' }, [written])?.code).toBe('duplicate');
  });
});
