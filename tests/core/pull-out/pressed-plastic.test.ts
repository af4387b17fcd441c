import { describe, expect, test } from 'vitest';
import type { MaterialValue } from '../../../src/core/host/material.ts';
import { pressedPlastic } from '../../../src/core/pull-out/pressed-plastic.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const pressedWith = (creepRatio1000h: MaterialValue) =>
  pressedPlastic({
    symbol: 'F_x',
    area: given('A_x', 13.7, 'mm²'),
    compressive: given('σ_c', 53, 'MPa'),
    polymer: { ...PETG, creepRatio1000h },
  });
const pressed = (creep: number) => pressedWith({ value: creep, provenance: 'from-memory' });

describe('pressedPlastic', () => {
  test('bears strength times area for a moment (hand calculation: 53 · 13.7)', () => {
    expectPublished(pressed(0.4).median.value, '726');
    expect(pressed(0.4).median.formula).toBe('σ_c · A_x');
  });
  test('bears for years what creep leaves, or what scatter leaves where that is less', () => {
    expectRelative(pressed(0.4).characteristic.value, 0.4 * 726.1);
    expect(pressed(0.4).characteristic.formula).toBe('R · r_1000');
    expectRelative(pressed(0.8).characteristic.value, 0.5096 * 726.1, 1e-4);
    expect(pressed(0.8).characteristic.formula).toBe('R · exp(−t · s)');
  });
  test('of a little known creep ratio without a range shows how its low end was worked out', () => {
    const { characteristic } = pressedWith({ value: 0.43, provenance: 'from-memory', lowConfidence: true });
    expect(characteristic.entries[1]?.from).toMatchObject({ entries: [{ symbol: 'r_tab', value: 0.43 }] });
    const relaxed = characteristic.entries[1]?.from;
    expectWays(relaxed ? [relaxed] : []);
  });
  test('of a little known creep ratio takes the low end, and shows both', () => {
    const { median, characteristic } = pressedWith({
      value: 0.43,
      low: 0.31,
      high: 0.61,
      provenance: 'from-memory',
      lowConfidence: true,
    });
    expectRelative(median.value, 726.1);
    expectRelative(characteristic.value, 0.31 * 726.1);
    expect(characteristic.entries[1]).toMatchObject({
      symbol: 'r_1000',
      value: 0.31,
      from: { range: { low: 0.31, middle: 0.43, high: 0.61 } },
    });
  });
});
