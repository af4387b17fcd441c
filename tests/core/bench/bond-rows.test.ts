import { describe, expect, test } from 'vitest';
import { bondBelow, bondRows, slendernessOf } from '../../../src/core/bench/bond-rows.ts';
import { evidenceOf, type SetupEvidence } from '../../../src/core/bench/evidence.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const JOINT = answerableJoint();
function setupOf(tests: readonly Partial<TestRecord>[]): SetupEvidence {
  const [setup] = evidenceOf(
    tests.map((one, index) => benchTest({ id: `test-${index + 1}`, ...one })),
    JOINT,
    undefined,
  ).setups;
  if (setup === undefined) throw new Error('no test of a bond');
  return setup;
}
const THREE = setupOf([{ value: 107 }, { value: 118 }, { value: 80, kind: 'proof-pull', result: 'held' }]);

describe('bondRows', () => {
  const { before, rows } = bondRows(THREE);
  test('begins with the estimate: 0.85, of which 19 of 20 hold 0.433 (t of 4 degrees of freedom 2.1318)', () => {
    expect(before.found.median.value).toBe(0.85);
    expectPublished(before.found.characteristic.value, '0.433');
    // 0.85 · exp(2.1318 · 0.31623) = 1.668
    expectPublished(before.high.value, '1.668');
  });
  test('has a row for the size that was pulled, and one for all others, which are less sure', () => {
    const [pulled, others] = rows;
    expect(pulled).toMatchObject({ insertId: 'usual', coupons: 3, broke: 2 });
    expect(others).not.toHaveProperty('insertId');
    const width = (row: typeof pulled) => Math.log((row?.high.value ?? 0) / (row?.low.value ?? 1));
    expect(width(others)).toBeGreaterThan(width(pulled));
  });
  test('has its lower end where 19 of 20 hold: both leave out 1 in 20', () => {
    for (const { found, low } of rows) expectRelative(low.value, found.characteristic.value, 1e-9);
  });
  test('says how long the knurl of the coupons is: (5.3 − 0.28 · 4.93)/4.93 (hand calculation)', () => {
    expectPublished(slendernessOf(theInsert()).value, '0.795');
    expectPublished(rows[0]?.slenderness?.value ?? 0, '0.795');
  });
});

describe('bondBelow', () => {
  test('leads from its quantile to the degrees of freedom, and from those to the coupons', () => {
    const { after } = bondBelow(setupOf([{ value: 107 }, { value: 118 }]), 'usual', 0.3);
    const quantile = wayTo(after.entries.find(({ symbol }) => symbol === 't'));
    expect(wayTo(quantile?.entries[1])).toMatchObject({ formula: 'ν_0 + n_c', value: 6 });
    expectWays([after]);
  });
  test('is the estimate and its ends without tests: 0.433 for 1 in 20 (t of 4 degrees of freedom 2.1318)', () => {
    expectPublished(bondBelow(THREE, 'usual', 0.05).before.value, '0.433');
    expect(bondBelow(THREE, 'usual', 0.5).before.value).toBe(0.85);
    expectPublished(bondBelow(THREE, 'usual', 0.95).before.value, '1.668');
  });
  test('with the tests is the row of the size, and of an unknown size that of all others', () => {
    const [pulled, others] = bondRows(THREE).rows;
    expectRelative(bondBelow(THREE, 'usual', 0.05).after.value, pulled?.low.value ?? 0, 1e-9);
    expectRelative(bondBelow(THREE, 'another', 0.95).after.value, others?.high.value ?? 0, 1e-9);
  });
});
