import { describe, expect, test } from 'vitest';
import { dialMargin } from '../../../src/core/joint/dial-margin.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectRelative } from '../../support/published.ts';

const torque = (symbol: string, value: number): Derived => ({
  symbol,
  value,
  unit: 'N·mm',
  formula: symbol,
  entries: [],
  source: 'own-model',
  standing: 'estimate',
});
const marginIn = (least: number, most: number, dial: number) =>
  dialMargin({
    kind: 'window',
    least: torque('T_least', least),
    most: torque('T_most', most),
    mostAtOnce: torque('T_most', most),
    dial: torque('T', dial),
    limitedBy: 'screw-yield',
    clampForceLow: torque('F_low', 1),
    clampForceHigh: torque('F_high', 2),
  });

describe('dialMargin', () => {
  test('says how far a dial stays below the top of its window, by hand (800 − 600)/800', () => {
    const margin = marginIn(200, 800, 600);
    if (margin.kind !== 'below-top') throw new Error(margin.kind);
    expectRelative(margin.share.value, 0.25);
    expectRelative(evaluated(margin.share) ?? 0, 0.25);
  });
  test('says how wide a window is that is hard to hit, by hand 800 − 700', () => {
    const margin = marginIn(700, 800, 750);
    if (margin.kind !== 'narrow') throw new Error(margin.kind);
    expect(margin.width).toMatchObject({ value: 100, unit: 'N·mm' });
    expectRelative(evaluated(margin.width) ?? 0, 100);
  });
  test('a window is narrow below 15 % of its top and no longer at it (edge)', () => {
    expect(marginIn(681, 800, 750).kind).toBe('narrow');
    expect(marginIn(680, 800, 750).kind).toBe('below-top');
  });
});
