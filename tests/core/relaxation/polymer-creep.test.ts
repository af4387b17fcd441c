import { describe, expect, test } from 'vitest';
import { polymerAt } from '../../../src/core/host/little-known.ts';
import { creepFactorOf } from '../../../src/core/relaxation/findley.ts';
import { creepEntry, isCreepInDoubt, polymerCreep } from '../../../src/core/relaxation/polymer-creep.ts';
import { wayOf } from '../../../src/core/steps/steps.ts';
import { PA6, PC, PETG, PLA } from '../../../src/data/host-materials.ts';
import { expectPublished } from '../../support/published.ts';

describe('polymerCreep', () => {
  test('of PETG at 23 °C leaves 0.65 after 1000 h, between 0.481 and 0.788 (hand calculation)', () => {
    const creep = polymerCreep(PETG, 23);
    expectPublished(1 / creepFactorOf(creep.middle, 1000), '0.65');
    expectPublished(1 / creepFactorOf(creep.low, 1000), '0.481');
    expectPublished(1 / creepFactorOf(creep.high, 1000), '0.788');
  });
  test('of PLA at 23 °C keeps the ends of its own range, 0.4 and 0.75 (printed-materials, remembered)', () => {
    const creep = polymerCreep(PLA, 23);
    expectPublished(1 / creepFactorOf(creep.low, 1000), '0.4');
    expectPublished(1 / creepFactorOf(creep.high, 1000), '0.75');
  });
  test('of PC, known from a data sheet, has one law, also in the warmth (iso-899 values)', () => {
    expect(isCreepInDoubt(polymerCreep(PC, 23))).toBe(false);
    const { low, middle, high } = polymerCreep(PC, 23);
    expect([low, high]).toEqual([middle, middle]);
    expectPublished(1 / creepFactorOf(low, 1000), '0.792');
  });
  test('of PA6 is in doubt only where its strength in the warmth is', () => {
    expect(isCreepInDoubt(polymerCreep(PA6, 23))).toBe(false);
    expect(isCreepInDoubt(polymerCreep(PA6, 50))).toBe(true);
  });
  test('at an end is that of the polymer which is known to be so', () => {
    for (const end of ['low', 'middle', 'high'] as const) {
      expect(polymerCreep(polymerAt(PLA, end), 37)[end]).toEqual(polymerCreep(PLA, 37)[end]);
      expect(isCreepInDoubt(polymerCreep(polymerAt(PLA, end), 37))).toBe(false);
    }
  });
  test('creeps the most at the low end of what is left, the least at the high end, at any time', () => {
    for (const hours of [0.3, 7, 400, 90_000]) {
      const { low, middle, high } = polymerCreep(PETG, 51);
      expect(creepFactorOf(low, hours)).toBeGreaterThan(creepFactorOf(middle, hours));
      expect(creepFactorOf(middle, hours)).toBeGreaterThan(creepFactorOf(high, hours));
    }
  });
});

describe('creepEntry', () => {
  test('puts in the most creep, with the way to it', () => {
    const creep = polymerCreep(PETG, 29);
    const put = creepEntry(creep, 410);
    expect(put).toMatchObject({ symbol: 'c', unit: '-', value: creepFactorOf(creep.low, 410) });
    expect(wayOf(put)).toMatchObject({ value: put.value, range: { high: put.value } });
  });
});
