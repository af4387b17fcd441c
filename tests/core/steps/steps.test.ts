import { describe, expect, test } from 'vitest';
import { polymerCreep } from '../../../src/core/relaxation/polymer-creep.ts';
import {
  type Derived,
  entry,
  entryAs,
  entryBy,
  entryFrom,
  entryLater,
} from '../../../src/core/sources/derived.ts';
import { settled, wayOf } from '../../../src/core/steps/steps.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import { given } from '../../support/joints.ts';

describe('wayOf', () => {
  const creep = polymerCreep(PETG, 31);
  const told = entryBy('c', 1.37, '-', (steps) => steps.mostCreep(creep, 210));

  test('of a given value is none', () => {
    expect(wayOf(entry('h', 0.2, 'mm'))).toBeUndefined();
  });
  test('is the derivation that came with the value', () => {
    const ring = given('D_o', 9.3, 'mm');
    expect(wayOf(entryFrom(ring))).toBe(ring);
  });
  test('is made by its maker where only that was told', () => {
    expect(wayOf(told)).toMatchObject({ symbol: 'c', formula: '1 + m · t^n' });
  });
  test('stays with the value under another symbol', () => {
    const renamed = entryAs('c_h', told);
    expect(renamed).toMatchObject({ symbol: 'c_h', value: 1.37, unit: '-' });
    expect(wayOf(renamed)).toMatchObject({ symbol: 'c', formula: '1 + m · t^n' });
  });
});

describe('settled', () => {
  test('makes every way that is made later, down to what is given, so that a copy keeps them all', () => {
    const creep = polymerCreep(PETG, 31);
    const worn: Derived = {
      ...given('R_t', 410, 'N'),
      formula: 'R/c',
      entries: [
        entryLater('R', 562, 'N', () => given('R_k', 562, 'N')),
        entryBy('c', 1.37, '-', (steps) => steps.mostCreep(creep, 210)),
        entry('t', 210, 'h'),
      ],
    };
    const copy = structuredClone(settled(worn));
    const [short, factor, time] = copy.entries;
    expect(short).toEqual({ symbol: 'R', value: 562, unit: 'N', from: given('R_k', 562, 'N') });
    expect(factor).toMatchObject({
      symbol: 'c',
      from: { formula: '1 + m · t^n', entries: [{ symbol: 'm' }, {}, {}] },
    });
    expect(factor?.from?.entries[0]?.from).toMatchObject({ formula: 'm_23 · θ^(−2.4)' });
    expect(time).toEqual({ symbol: 't', value: 210, unit: 'h' });
  });
});
