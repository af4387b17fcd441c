import { describe, expect, test } from 'vitest';
import { sustainedCapacity } from '../../../src/core/joint/sustained.ts';
import type { FailureMode } from '../../../src/core/pull-out/limit.ts';
import { wayOf } from '../../../src/core/steps/steps.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import fc from '../../support/fast-check.ts';
import { given } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const LAW = { m: 0.1, n: 0.5 };
const OF_PETG = { polymer: PETG, serviceTemperature: 37 };
const KNOWN = { ...OF_PETG, low: LAW, middle: LAW, high: LAW };
const CAPACITY = { median: given('F_ks', 900, 'N'), characteristic: given('R_k', 460, 'N') };
const lasting = (mode: FailureMode, hours: number) => sustainedCapacity(mode, CAPACITY, KNOWN, hours);

describe('sustainedCapacity', () => {
  test('is half of 900 and 460 N after 100 h with m 0.1 and n 0.5: 1 + 0.1 · √100 (hand calculation)', () => {
    const { median, characteristic } = lasting('knurl-shear', 100);
    expectRelative(median.value, 450);
    expectRelative(characteristic.value, 230);
  });
  test.each<FailureMode>(['knurl-shear', 'wall-plug', 'boss-tear', 'boss-split', 'shoulder-punch'])(
    'of %s falls with time',
    (mode) => {
      expect(lasting(mode, 25).median.value).toBeLessThan(900);
      expect(lasting(mode, 2500).median.value).toBeLessThan(lasting(mode, 25).median.value);
    },
  );
  test.each<FailureMode>(['screw-yield', 'insert-thread', 'head-bearing', 'shoulder-yield'])(
    'of %s does not: metal, or plastic with its long-term value',
    (mode) => {
      expect(lasting(mode, 7300)).toBe(CAPACITY);
    },
  );
  test('is that of the short load at once, and comes to it without a step', () => {
    expect(lasting('knurl-shear', 0)).toBe(CAPACITY);
    expectRelative(lasting('knurl-shear', 1e-12).median.value, 900, 2e-7);
  });
  test('keeps the ratio of characteristic value and median', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 438_000, noNaN: true }), (hours) => {
        const { median, characteristic } = lasting('boss-tear', hours);
        expectRelative(characteristic.value / median.value, 460 / 900);
      }),
    );
  });
  test('takes the most creep off the characteristic value, what is expected off the median (hand calculation)', () => {
    const little = { ...OF_PETG, low: { m: 0.2, n: 0.5 }, middle: LAW, high: { m: 0.05, n: 0.5 } };
    const { median, characteristic } = sustainedCapacity('boss-tear', CAPACITY, little, 100);
    // 1 + 0.1 · 10, 1 + 0.2 · 10; at best 1 + 0.05 · 10
    expectRelative(median.value, 450);
    expectRelative(characteristic.value, 460 / 3);
    const [, c] = characteristic.entries;
    expect(c).toMatchObject({ symbol: 'c', value: 3 });
    expect(c && wayOf(c)).toMatchObject({ range: { low: 1.5, middle: 2, high: 3 } });
  });
  test('keeps what it came from', () => {
    expect(lasting('boss-tear', 100).characteristic).toMatchObject({
      symbol: 'R_t',
      unit: 'N',
      entries: [{ symbol: 'R', from: { value: 460 } }, { symbol: 'c', value: 2 }, { symbol: 't' }],
    });
  });
});
