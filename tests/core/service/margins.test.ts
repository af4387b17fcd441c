import { describe, expect, test } from 'vitest';
import type { Limit } from '../../../src/core/joint/assessment.ts';
import { askedTorque, holdOf } from '../../../src/core/service/hold.ts';
import { governingMargin, loadFactorOf, marginsOf, screwLoadOf } from '../../../src/core/service/margins.ts';
import type { ServiceState } from '../../../src/core/service/service-state.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { answerableJoint, assessed, type Changes, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const force = (symbol: string, value: number): Derived => ({
  symbol,
  value,
  unit: 'N',
  formula: symbol,
  entries: [],
  source: 'own-model',
  standing: 'estimate',
});

const limit = (mode: Limit['mode'], held: number, median: number, demand: number): Limit => ({
  mode,
  path: 'clamp',
  capacity: { characteristic: force('R_k', held), median: force('R', median) },
  demand: force('F_d', demand),
  ...(demand > 0 ? { factor: held / demand } : {}),
  governs: false,
});

const STATE: ServiceState = {
  id: 'in-service',
  hours: 0,
  temperature: 37,
  preloadLeft: { ...force('R_F', 0.83), unit: '-' },
  limits: [
    limit('insert-thread', 900, 900, 200),
    limit('knurl-shear', 540, 1080, 300),
    limit('wall-plug', 710, 1420, 0),
  ],
  closed: [{ by: 'slips', left: force('Q_held', 28), needed: force('Q_req', 20), margin: 1.4 }],
  margin: 1.2,
  by: 'knurl-shear',
};
const FACTORS = { limits: 1.5, closed: 1.3 };

describe('marginsOf', () => {
  const margins = marginsOf(STATE, FACTORS);
  test('divides what is held by what is asked with its factor, by hand', () => {
    // knurl 540/(1.5 · 300) = 1.2; slips 28/20 = 1.4, its factor already in the 20; thread 900/(1.5 · 200) = 3
    const values = margins.flatMap(({ by, margin }) => (margin ? [[by, margin.value] as const] : []));
    expect(values.map(([by]) => by)).toEqual(['knurl-shear', 'slips', 'insert-thread']);
    for (const [index, hand] of [1.2, 1.4, 3].entries()) expectRelative(values[index]?.[1] ?? 0, hand);
  });
  test('puts what nothing loads last, without a margin', () => {
    expect(margins.at(-1)?.by).toBe('wall-plug');
    expect(margins.at(-1)?.margin).toBeUndefined();
  });
  test('gives the median only where there is a spread: 1080/450 = 2.4', () => {
    expectRelative(margins[0]?.medianMargin ?? 0, 2.4);
    expect(margins.find(({ by }) => by === 'insert-thread')?.medianMargin).toBeUndefined();
    expect(margins.find(({ by }) => by === 'slips')?.medianMargin).toBeUndefined();
  });
  test('marks the one that ends the state', () => {
    expect(margins.filter(({ governs }) => governs).map(({ by }) => by)).toEqual(['knurl-shear']);
    expect(governingMargin(STATE, FACTORS)?.by).toBe('knurl-shear');
  });
  test('carries what went in', () => {
    const { margin } = governingMargin(STATE, FACTORS) ?? {};
    expect(margin?.formula).toBe('R_k/(S · F_d)');
    expect(margin?.entries.map(({ value }) => value)).toEqual([540, 1.5, 300]);
  });
});

const lifeOf = (changes: Changes = {}) => {
  const joint = answerableJoint(changes);
  const torque = askedTorque(assessed(changes).torque);
  if (torque === undefined) throw new Error('no torque is allowed');
  return { joint, hold: holdOf(joint, theInsert(), torque) };
};

describe('margins of a real joint', () => {
  test('the governing one is the margin of its state', () => {
    const { joint, hold } = lifeOf();
    for (const state of hold.states) {
      expectRelative(governingMargin(state, joint.factors)?.margin?.value ?? 0, state.margin);
    }
  });
  test('the screw bears the load factor’s share of a pull besides its clamp force', () => {
    const { torque } = lifeOf().hold;
    const servedWith = (pull_N: number) =>
      holdOf(answerableJoint({ loads: { pull_N } }), theInsert(), torque).states[1];
    const [less, more] = [servedWith(40), servedWith(90)];
    if (!less || !more) throw new Error('no service state');
    const loadFactor = loadFactorOf(more)?.value ?? Number.NaN;
    expect(loadFactor).toBeGreaterThan(0);
    expect(loadFactor).toBeLessThan(1);
    const gained = (screwLoadOf(more)?.value ?? 0) - (screwLoadOf(less)?.value ?? 0);
    expectRelative(gained, loadFactor * (90 - 40), 1e-6);
  });
  test('over a gap the screw bears all of the pull', () => {
    const [, served] = lifeOf({ gap_mm: 1.2, loads: { pull_N: 20, shear_N: 0 } }).hold.states;
    expect(served && loadFactorOf(served)?.value).toBe(1);
  });
});
