import { describe, expect, test } from 'vitest';
import type { PrintedMaterial } from '../../../src/core/host/material.ts';
import { rememberedStrength } from '../../../src/core/host/remembered-strength-steps.ts';
import {
  greatestServiceTemperature,
  strengthLeft,
  strengthShareAt,
} from '../../../src/core/host/temperature.ts';
import { HOST_MATERIALS, PLA } from '../../../src/data/host-materials.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { wayTo } from '../../support/ways.ts';

const PRINTED: readonly PrintedMaterial[] = HOST_MATERIALS.filter((row) => row.melts);

describe('rememberedStrength', () => {
  test('lies on the straight line between the low ends of PLA at 40 and 50 °C: 0.6 and 0.290 (hand calculation)', () => {
    const between = rememberedStrength(PLA.strengthRatios, 45);
    expectPublished(between.value, '0.445');
    expect(between.entries).toMatchObject([
      { symbol: 'r_a', value: 0.75 / 1.25, from: { formula: 'r_tab/(r_tab + 2 · (1 − r_tab))' } },
      { symbol: 'T_a', value: 40 },
      { symbol: 'T', value: 45 },
      { symbol: 'r_b', value: 0.45 / 1.55, from: { entries: [{ symbol: 'r_tab', value: 0.45 }] } },
      { symbol: 'T_b', value: 50 },
    ]);
  });
  test('begins at 1 at 23 °C and is held beyond the last row, whose own low end is given', () => {
    const first = rememberedStrength(PLA.strengthRatios, 31);
    expectRelative(first.value, 1 - 0.4 * (8 / 17));
    expect(evaluated(first)).toBe(first.value);
    const beyond = rememberedStrength(PLA.strengthRatios, 61);
    expect(beyond).toMatchObject({ value: 0, range: { low: 0, middle: 0.1, high: 0.2 } });
    expect(beyond.entries[0]?.from).toMatchObject({ formula: 'r_a', range: { high: 0.2 } });
  });
  test('comes to the same by its formula at any temperature, and is what the strength left is held against', () => {
    for (const material of PRINTED) {
      for (let at = 23.7; at < 110; at += 4.3) {
        const remembered = rememberedStrength(material.strengthRatios, at);
        expectRelative(evaluated(remembered) ?? Number.NaN, remembered.value);
        if (at > greatestServiceTemperature(material)) continue;
        const left = strengthLeft(material, at);
        expect(wayTo(left.entries[2])).toMatchObject({
          value: remembered.value,
          formula: remembered.formula,
        });
        expectRelative(evaluated(left) ?? Number.NaN, left.value);
        expect(left.value).toBe(strengthShareAt(material, at, 'low'));
      }
    }
  });
});
