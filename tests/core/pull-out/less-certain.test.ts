import { describe, expect, test } from 'vitest';
import type { MaterialValue } from '../../../src/core/host/material.ts';
import type { Strength } from '../../../src/core/host/strengths.ts';
import { characteristicOf, deviationOfRange, UNTESTED } from '../../../src/core/pull-out/bond.ts';
import { lessCertain } from '../../../src/core/pull-out/less-certain.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const known: Strength = given('τ', 21, 'MPa');
/** A strength at 23 °C of which little is known. */
const little = (ends: Pick<MaterialValue, 'low' | 'high'>, value = 37): Strength => ({
  ...given('τ', value, 'MPa'),
  littleKnown: {
    row: { value, ...ends, provenance: 'from-memory', lowConfidence: true },
    symbols: { value: 'τ_il', low: 'τ_low', high: 'τ_high' },
  },
});
const careful = (strength: Strength) =>
  characteristicOf(given('F_ks', 731, 'N'), lessCertain(UNTESTED, strength));

describe('lessCertain', () => {
  test('puts ln(45/30)/3.290 on top of the scatter (hand calculation with the printed normal quantile 1.645)', () => {
    // √(0.31623² + 0.12324²) = 0.33940
    expectPublished(lessCertain(UNTESTED, little({ low: 30, high: 45 })).deviation.value, '0.3394');
  });
  test('puts ln(1.3/0.7)/3.290 on top where the row has no range (hand calculation)', () => {
    // √(0.31623² + 0.18816²) = 0.36798
    expectPublished(lessCertain(UNTESTED, little({})).deviation.value, '0.3680');
  });
  test('adds nothing for a strength that is known, and takes the widest of several', () => {
    expect(lessCertain(UNTESTED, known)).toBe(UNTESTED);
    const narrow = little({ low: 30, high: 45 });
    const wider = little({ low: 12, high: 33 }, 23);
    for (const several of [
      [narrow, wider, known],
      [wider, known, narrow],
    ])
      expect(lessCertain(UNTESTED, ...several).deviation.value).toBe(
        lessCertain(UNTESTED, wider).deviation.value,
      );
  });
  test('lowers the characteristic value and leaves the median', () => {
    const doubtful = careful(little({ low: 30, high: 45 }));
    expect(doubtful.value).toBeLessThan(characteristicOf(given('F_ks', 731, 'N')).value);
    expect(doubtful.entries[0]).toMatchObject({ value: 731 });
  });
  test.each([
    ['both ends given', { low: 30, high: 45 }, ['τ_high', 'τ_low', 'z_r']],
    ['the low end given', { low: 30 }, ['τ_il', 'τ_low', 'z_r']],
    ['the high end given', { high: 45 }, ['τ_high', 'τ_il', 'z_r']],
    ['neither given', {}, ['z_r']],
  ] as const)('shows how the wider scatter comes about: %s', (_, ends, symbols) => {
    const { entries, ...rest } = careful(little(ends));
    expectWays([{ entries, ...rest }]);
    const doubt = wayTo(entries[2])?.entries[1];
    expect(wayTo(doubt)?.entries.map(({ symbol }) => symbol)).toEqual(symbols);
    expectRelative(doubt?.value ?? 0, deviationOfRange({ low: 0.7 * 37, high: 1.3 * 37, ...ends }));
  });
});
