import { describe, expect, test } from 'vitest';
import type { PrintedMaterial } from '../../../src/core/host/material.ts';
import { greatestServiceTemperature, strengthLeft } from '../../../src/core/host/temperature.ts';
import { HOST_MATERIALS, PA12, PC, PETG, PLA } from '../../../src/data/host-materials.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { wayTo } from '../../support/ways.ts';

const PRINTED: readonly PrintedMaterial[] = HOST_MATERIALS.filter((row) => row.melts);
const anyPolymer = fc.constantFrom(...PRINTED);

describe('strengthLeft', () => {
  test('of PETG at 45 °C is 0.614 (hand calculation: (80 − 45)/(80 − 23))', () => {
    expectPublished(strengthLeft(PETG, 45).value, '0.614');
  });
  test('takes the lower of line and remembered ratio: PLA at 50 °C (hand calculation: 10/37 below 0.45)', () => {
    expectPublished(strengthLeft(PLA, 50).value, '0.270');
  });
  test('follows the remembered ratios where they are lower: PC at 30 °C (hand calculation: 1 − 0.07 · 7/17)', () => {
    // The line gives (147 − 30)/124 = 0.944.
    expectPublished(strengthLeft(PC, 30).value, '0.944');
    expectPublished(strengthLeft(PC, 60).value, '0.702');
  });
  test('joins remembered ratios by straight lines (hand calculation, invented ratios)', () => {
    const ratio = (temperature: number, value: number) =>
      ({ temperature, ratio: { value, provenance: 'from-memory' } }) as const;
    const flat = { ...PC, strengthRatios: [ratio(43, 0.6), ratio(63, 0.5)] };
    expectPublished(strengthLeft(flat, 33).value, '0.8');
    expectPublished(strengthLeft(flat, 48).value, '0.575');
    expectPublished(strengthLeft(flat, 71).value, '0.5');
  });
  test('is 1 at 23 °C and below, for every material', () => {
    for (const material of PRINTED) {
      expect(strengthLeft(material, 23).value).toBe(1);
      expect(strengthLeft(material, -40).value).toBe(1);
      expect(strengthLeft(material, 23).entries).toMatchObject([{ symbol: 'T', value: 23 }]);
      expect(evaluated(strengthLeft(material, 22.7))).toBe(1);
    }
  });
  test('falls with temperature, never to 0 where the door still answers', () => {
    fc.assert(
      fc.property(anyPolymer, fc.double({ min: -40, max: 1, noNaN: true }), (material, below) => {
        const warm = greatestServiceTemperature(material);
        const cooler = warm + Math.min(below, 0);
        expect(strengthLeft(material, warm).value).toBeGreaterThan(0);
        expect(strengthLeft(material, cooler).value).toBeGreaterThanOrEqual(
          strengthLeft(material, warm).value,
        );
      }),
    );
  });
  test('has no step at 23 °C nor at a remembered temperature', () => {
    for (const material of PRINTED) {
      for (const at of [23, ...material.strengthRatios.map(({ temperature }) => temperature)]) {
        if (at > greatestServiceTemperature(material)) continue;
        expectRelative(
          strengthLeft(material, at - 1e-9).value,
          strengthLeft(material, at + 1e-9).value,
          1e-8,
        );
      }
    }
  });
  test('shows both estimates, the little known ratio at its low end: 0.75 with the loss doubled is 0.6', () => {
    const { entries, range } = strengthLeft(PLA, 40);
    expect(entries).toMatchObject([
      { symbol: 'T_s', value: 60, unit: '°C' },
      { symbol: 'T', value: 40, unit: '°C' },
      { symbol: 'r_T', value: 0.75 / 1.25, unit: '-' },
    ]);
    expect(entries.map((one) => wayTo(one)?.range)).toEqual([
      undefined,
      undefined,
      { low: 0.75 / 1.25, middle: 0.75, high: 0.75 / 0.875 },
    ]);
    // The line to softening is lower at both ends: 20/37.
    expect(range).toBeUndefined();
  });
  test('of a polymer that may soften sooner follows the low end: PA12, 95 to 120 °C (hand calculation)', () => {
    // At 60 °C: lines (95 − 60)/72 = 0.486, 50/87 = 0.575, 60/97 = 0.619; ratio 0.65/1.35 = 0.481, 0.65, 0.65/0.825
    const { value, range, entries } = strengthLeft(PA12, 60);
    expectPublished(value, '0.481');
    expectPublished(range?.low ?? 0, '0.481');
    expectPublished(range?.middle ?? 0, '0.575');
    expectPublished(range?.high ?? 0, '0.619');
    expect(entries[0]).toMatchObject({ value: 95, from: { range: { low: 95, middle: 110, high: 120 } } });
  });
});

describe('greatestServiceTemperature', () => {
  test('lies 10 K below softening: 50 °C for PLA that softens at 60 °C', () => {
    expect(greatestServiceTemperature(PLA)).toBe(50);
    expect(greatestServiceTemperature(PC)).toBe(137);
  });
  test('counts from the low end of a little known softening, 95 … 120 °C of PA12, unless asked otherwise', () => {
    expect(greatestServiceTemperature(PA12)).toBe(85);
    expect(greatestServiceTemperature(PA12, 'middle')).toBe(100);
    expect(greatestServiceTemperature(PA12, 'high')).toBe(110);
  });
});
