import { describe, expect, test } from 'vitest';
import type { Margin } from '../../src/core/service/margins.ts';
import type { Loosening, ServiceState, StateId } from '../../src/core/service/service-state.ts';
import { type Derived, entry } from '../../src/core/sources/derived.ts';
import {
  LOOSENING_NAMES,
  nameOfEnd,
  STATE_NAMES,
  sentenceOfMargin,
  titleOfState,
  whenOf,
} from '../../src/wording/hold.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { openedBy } from './opened-by.ts';

const share: Derived = {
  symbol: 'R_F',
  value: 0.62,
  unit: '-',
  formula: 'c',
  entries: [entry('c', 1.7, '-')],
  source: 'own-model',
  standing: 'estimate',
};
const force = (symbol: string, value: number): Derived => ({ ...share, symbol, value, unit: 'N' });

const stateAt = (id: StateId, hours: number, temperature: number): ServiceState => ({
  id,
  hours,
  temperature,
  preloadLeft: share,
  limits: [],
  closed: [],
  margin: 1.37,
  by: 'opens',
});
const marginOf = (by: Margin['by'], held: number, asked: number): Margin => ({
  by,
  held: force('R_k', held),
  asked: force('F_d', asked),
  governs: true,
});

const STATES: Readonly<Record<StateId, readonly [ServiceState, string, string]>> = {
  assembly: [stateAt('assembly', 0, 23), 'While tightening', 'while tightening'],
  'in-service': [stateAt('in-service', 0, 47), 'In service', 'warm and loaded, at 47\u00a0°C'],
  after: [stateAt('after', 26_280, 38), 'After 3\u00a0years', 'after 3\u00a0years at 38\u00a0°C'],
};

describe('a state', () => {
  test.each(Object.values(STATES))('$id has a heading and a clause', (state, title, when) => {
    expect(titleOfState(state)).toBe(title);
    expect(whenOf(state)).toBe(when);
  });
  test('has a name each', () => {
    expect(new Set(Object.values(STATE_NAMES)).size).toBe(Object.keys(STATES).length);
  });
  test('is not called warm at room temperature', () => {
    expect(whenOf(stateAt('in-service', 0, 23))).toBe('loaded, at 23\u00a0°C');
  });
});

describe('sentenceOfMargin', () => {
  const [state] = STATES.after;
  test('of a mode says what gives way, when, held and asked with its factor', () => {
    const margin = marginOf('knurl-shear', 640, 181);
    const sentence = sentenceOfMargin(state, margin, 1.5);
    expect(plainText(sentence)).toBe(
      'The knurl gives way first, after 3\u00a0years at 38\u00a0°C: 640\u00a0N held, 181\u00a0N times 1.5 asked.',
    );
    expect(openedBy(sentence)).toEqual([margin.held, margin.asked]);
  });
  test('leaves a factor of 1 out', () => {
    expect(plainText(sentenceOfMargin(state, marginOf('screw-yield', 2040, 1370), 1))).toContain(
      '2,040\u00a0N held, 1,370\u00a0N asked.',
    );
  });
  test('of opening and slipping names what is needed, its factor already in it', () => {
    const endings = {
      opens: ['The joint opens first', '212\u00a0N clamp, 96\u00a0N needed.'],
      slips: ['The joint slips first', 'friction holds 212\u00a0N, 96\u00a0N needed.'],
    } as const satisfies Record<Loosening, readonly string[]>;
    for (const [by, parts] of Object.entries(endings)) {
      const sentence = plainText(sentenceOfMargin(state, marginOf(by as Loosening, 212, 96), 1.5));
      for (const part of parts) expect(sentence).toContain(part);
    }
  });
});

describe('nameOfEnd', () => {
  test('takes failure modes and loosening alike', () => {
    expect(nameOfEnd('opens')).toBe(LOOSENING_NAMES.opens);
    expect(nameOfEnd('slips')).toBe('Joint slips');
    expect(nameOfEnd('wall-plug')).toBe('Wall plug pulls out');
  });
});
