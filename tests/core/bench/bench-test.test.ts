import { describe, expect, test } from 'vitest';
import { loadAtInsert, loadOf } from '../../../src/core/bench/bench-test.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { expectRelative } from '../../support/published.ts';

describe('loadAtInsert', () => {
  test.each([
    // 31 kg of 9.80665 N/kg at a lever of 2.5 (hand calculation).
    [benchTest({ value: 31, leverRatio: 2.5 }), 31 * 9.80665 * 2.5, 'N'],
    [
      benchTest({ value: 1.3, unit: 'N·m', kind: 'torque-out', result: 'insert-turned', leverRatio: 1 }),
      1300,
      'N·mm',
    ],
  ] as const)('is the reading times the lever', (one, load, unit) => {
    const found = loadAtInsert(one);
    expectRelative(found.value, load);
    expect(found.value).toBe(loadOf(one));
    expect(found.unit).toBe(unit);
    expectRelative(evaluated(found) ?? Number.NaN, load);
  });
});
