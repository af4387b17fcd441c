import { sharesOf } from '../host/little-known.ts';
import type { PrintedMaterial } from '../host/material.ts';
import type { Strength } from '../host/strengths.ts';
import { carefulEntry, type Derived, entryFrom } from '../sources/derived.ts';
import { characteristicOf, UNTESTED } from './bond.ts';
import { lessCertain } from './less-certain.ts';
import type { Capacity } from './limit.ts';

/**
 * Force that plastic bears on an area: for a moment, and for years.
 *
 *     F = σc · A        long-term F · E(1000 h)/E
 *
 * The characteristic value is the long-term one, unless the scatter between set-ups leaves less. Of a little known creep
 * ratio the low end counts.
 *
 * @param pressed - symbol of the force, area A [mm²], compressive strength σc [MPa], the polymer with its creep ratio
 * @returns median and characteristic force [N]
 * @source printed-materials compressive strength and creep ratio
 */
export function pressedPlastic(pressed: {
  readonly symbol: string;
  readonly area: Derived;
  readonly compressive: Strength;
  readonly polymer: PrintedMaterial;
}): Capacity {
  const { symbol, area, compressive, polymer } = pressed;
  const relaxed = carefulEntry('r_1000', sharesOf(polymer.creepRatio1000h, 'low'), '-');
  const median: Derived = {
    symbol,
    value: compressive.value * area.value,
    unit: 'N',
    formula: `σ_c · ${area.symbol}`,
    entries: [entryFrom(compressive), entryFrom(area)],
    source: 'printed-materials',
    standing: 'estimate',
  };
  const scattered = characteristicOf(median, lessCertain(UNTESTED, compressive));
  const longTerm: Derived = {
    symbol: 'R_k',
    value: median.value * relaxed.value,
    unit: 'N',
    formula: 'R · r_1000',
    entries: [{ symbol: 'R', value: median.value, unit: 'N', from: median }, relaxed],
    source: 'printed-materials',
    standing: 'estimate',
  };
  return { median, characteristic: longTerm.value < scattered.value ? longTerm : scattered };
}
