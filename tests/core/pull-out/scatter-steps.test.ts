import { describe, expect, test } from 'vitest';
import {
  characteristicQuantile,
  priorDeviation,
  widerDeviation,
} from '../../../src/core/pull-out/scatter-steps.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { expectPublished } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

describe('characteristicQuantile', () => {
  test('with 9 degrees of freedom is 1.833 (printed tables), shown with its share', () => {
    const t = characteristicQuantile(entry('ν', 9, '-'));
    expectPublished(t.value, '1.833');
    expect(t.entries).toMatchObject([
      { symbol: 'p', value: 0.95 },
      { symbol: 'ν', value: 9 },
    ]);
    expectWays([t]);
  });
});

describe('priorDeviation', () => {
  test('is √(0.30² + 0.10²) = 0.3162 (hand calculation)', () => {
    expectPublished(priorDeviation().value, '0.3162');
    expectWays([priorDeviation()]);
  });
});

describe('widerDeviation', () => {
  test('of 0.2 and a strength between 12 and 33 is 0.367 (hand calculation: ln 2.75/3.290 = 0.3075)', () => {
    const row = { value: 23, low: 12, high: 33, provenance: 'from-memory', lowConfidence: true } as const;
    const symbols = { value: 'σ_z', low: 'σ_low', high: 'σ_high' };
    const wider = widerDeviation(entry('s', 0.2, '-'), { row, symbols });
    expectPublished(wider.value, '0.367');
    expect(wider.entries[0]).toEqual(entry('s_0', 0.2, '-'));
    expectWays([wider]);
  });
});
