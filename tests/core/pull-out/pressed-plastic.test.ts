import { describe, expect, test } from 'vitest';
import { pressedPlastic } from '../../../src/core/pull-out/pressed-plastic.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const pressed = (creep: number) =>
  pressedPlastic({
    symbol: 'F_x',
    area: given('A_x', 13.7, 'mm²'),
    compressive: given('σ_c', 53, 'MPa'),
    polymer: { ...PETG, creepRatio1000h: { value: creep, provenance: 'from-memory' } },
  });

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
});
