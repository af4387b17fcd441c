import { describe, expect, test } from 'vitest';
import { findingOf } from '../../../src/core/bench/evidence.ts';
import { unitInstead } from '../../../src/core/bench/unit-slip.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint } from '../../support/joints.ts';

const JOINT = answerableJoint();
const insteadOf = (unit: 'kgf' | 'N', value: number, changes: Partial<TestRecord> = {}) =>
  unitInstead(findingOf(benchTest({ unit, value, ...changes }), [], JOINT), unit);

// The shear cylinder bears 1,542 N with all of it holding, a heat-set knurl 0.85 of it: 1,311 N, 134 kgf.
describe('unitInstead', () => {
  test('takes 134 N for 134 kgf, and newtons written as kilograms for newtons', () => {
    expect(insteadOf('N', 134)).toBe('kgf');
    expect(insteadOf('kgf', 550)).toBe('N');
  });
  test('leaves usual readings alone, in either unit', () => {
    for (const kilograms of [50, 107, 134, 300]) expect(insteadOf('kgf', kilograms)).toBeUndefined();
    for (const newtons of [500, 1311, 3500]) expect(insteadOf('N', newtons)).toBeUndefined();
  });
  test('begins where the other unit comes within three times the usual, and a third of it', () => {
    // 1,311 N · 9.80665/3 = 4,285 N = 436.9 kgf, which would be 437 N; 1,311 N · 3/9.80665 = 401.0 N
    expect(insteadOf('kgf', 436)).toBeUndefined();
    expect(insteadOf('kgf', 438)).toBe('N');
    expect(insteadOf('N', 402)).toBeUndefined();
    expect(insteadOf('N', 400)).toBe('kgf');
  });
  test('says nothing where the other unit would not help', () => {
    // 12 N, and 12 kgf: a ninth of the usual one.
    expect(insteadOf('N', 12)).toBeUndefined();
    expect(insteadOf('kgf', 12)).toBeUndefined();
  });
  test('lets a proof that only held be as low as it likes', () => {
    expect(insteadOf('N', 134, { kind: 'proof-pull', result: 'held' })).toBeUndefined();
    expect(insteadOf('kgf', 438, { kind: 'proof-pull', result: 'held' })).toBe('N');
  });
  test('asks a hammered insert against a third of that: 437 N, 44.6 kgf', () => {
    expect(insteadOf('N', 120, { setting: 'hammered' })).toBe('kgf');
    expect(insteadOf('kgf', 160, { setting: 'hammered' })).toBe('N');
    expect(insteadOf('kgf', 130, { setting: 'hammered' })).toBeUndefined();
  });
  test('knows nothing of a nut, nor of a test that is left out for another reason', () => {
    expect(insteadOf('N', 134, { setting: 'nut' })).toBeUndefined();
    expect(insteadOf('N', 134, { insert: 'gone' })).toBeUndefined();
  });
});
