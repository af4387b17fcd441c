import { describe, expect, test } from 'vitest';
import { strengthShareAt } from '../../../src/core/host/temperature.ts';
import { creepFactorWay, mostCreep } from '../../../src/core/relaxation/creep-ways.ts';
import { creepFactorOf } from '../../../src/core/relaxation/findley.ts';
import { polymerCreep } from '../../../src/core/relaxation/polymer-creep.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import { PA6, PC, PETG } from '../../../src/data/host-materials.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const POLYMERS = CATALOGUE.hostMaterials.flatMap((material) => (material.melts ? [material] : []));

/** Every step of a number, itself first. */
function* stepsOf(derived: Derived): Generator<Derived> {
  yield derived;
  for (const { from } of derived.entries) if (from) yield* stepsOf(from);
}

const entryOf = (derived: Derived, symbol: string) => {
  const found = derived.entries.find((one) => one.symbol === symbol);
  if (found === undefined) throw new Error(`no ${symbol} in ${derived.symbol}`);
  return found;
};

describe('creepFactorWay', () => {
  test.each(POLYMERS.map((polymer) => [polymer.name, polymer] as const))(
    'of %s is the number of its law, and every step comes to what its formula says',
    (_, polymer) => {
      for (const end of ['low', 'middle', 'high'] as const) {
        const creep = polymerCreep(polymer, 31);
        const way = creepFactorWay(creep, end, 370);
        expect(way.value).toBe(creepFactorOf(creep[end], 370));
        for (const step of stepsOf(way)) {
          if (step.formula !== step.symbol) expectRelative(evaluated(step) ?? 0, step.value, 1e-9);
        }
      }
    },
  );
  test('of PC leads to its ratios after 1 h and 1000 h, 0.917 and 0.792 (iso-899 values)', () => {
    const way = creepFactorWay(polymerCreep(PC, 23), 'middle', 24);
    const exponent = entryOf(way, 'n').from;
    if (exponent === undefined) throw new Error('the exponent has a way');
    expectPublished(entryOf(exponent, 'r_1').value, '0.917');
    expectPublished(entryOf(exponent, 'r_1000').value, '0.792');
    // ln[(1/0.7917 − 1)/(1/0.9167 − 1)]/ln 1000 (hand calculation)
    expectPublished(exponent.value, '0.154');
  });
  test('of a warm plastic goes through the strength that is left at that end', () => {
    const at = (end: 'low' | 'middle' | 'high') => {
      const coefficient = entryOf(creepFactorWay(polymerCreep(PA6, 50), end, 90), 'm').from;
      if (coefficient === undefined) throw new Error('the coefficient has a way');
      expect(coefficient.formula).toBe('m_23 · θ^(−2.4)');
      return entryOf(coefficient, 'θ').value;
    };
    const ends = ['low', 'middle', 'high'] as const;
    expect(ends.map(at)).toEqual(ends.map((end) => strengthShareAt(PA6, 50, end)));
    expect(at('low')).toBeLessThan(at('high'));
  });
  test('of a plastic that has not crept after 1 h begins at 24 h', () => {
    const known = (value: number) => ({ value, provenance: 'read' as const });
    const late = { ...PC, creepRatio1h: known(1), creepRatio24h: known(0.93), creepRatio1000h: known(0.81) };
    const steps = [...stepsOf(creepFactorWay(polymerCreep(late, 27), 'middle', 5000))];
    expect(steps.map(({ formula }) => formula)).toContain('(1/r_24 − 1)/24^n');
    for (const step of steps) {
      if (step.formula !== step.symbol) expectRelative(evaluated(step) ?? 0, step.value, 1e-9);
    }
  });
});

describe('mostCreep', () => {
  test('is the most creep, with its range: of PETG after 1000 h 1/0.65 to twice the growth', () => {
    const { value, range } = mostCreep(polymerCreep(PETG, 23), 1000);
    const growth = 1 / 0.65 - 1;
    expectRelative(value, 1 + 2 * growth);
    expectRelative(range?.low ?? 0, 1 + growth / 2);
    expectRelative(range?.middle ?? 0, 1 + growth);
    expectRelative(range?.high ?? 0, value);
  });
  test('of a well known creep has no range', () => {
    expect(mostCreep(polymerCreep(PC, 23), 1000).range).toBeUndefined();
  });
});
