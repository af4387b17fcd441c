import { describe, expect, test } from 'vitest';
import type { Lever, LeverId } from '../../src/core/service/lever.ts';
import { LEVERS } from '../../src/core/service/levers.ts';
import type { CoreUnit, Derived } from '../../src/core/sources/derived.ts';
import { nameOfMove, sentenceOfRemedy, sentenceOfSensitivity } from '../../src/wording/levers.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { expectSentence } from './expect-sentence.ts';
import { openedBy } from './opened-by.ts';

/** A move up and one down, and how they are said; the second is absent where there is only one way. */
const MOVES = {
  'wall-lines': ['lines', 1, 'one more wall line', -2, 'two fewer wall lines'],
  infill: ['%', 20, 'infill denser by 20\u00a0% of solid', -10, 'infill lighter by 10\u00a0% of solid'],
  'insert-length': ['mm', 1.5, 'an insert 1.5\u00a0mm longer', -0.5, 'an insert 0.5\u00a0mm shorter'],
  'knurl-diameter': ['mm', 0.4, 'a knurl 0.4\u00a0mm wider', -0.2, 'a knurl 0.2\u00a0mm narrower'],
  pull: ['%', 10, '10\u00a0% more pull', -10, '10\u00a0% less pull'],
  shear: ['%', 10, '10\u00a0% more load across the screw', -10, '10\u00a0% less load across the screw'],
  temperature: ['K', 5, '5\u00a0K warmer in service', -5, '5\u00a0K cooler in service'],
  duration: ['times', 2, 'twice the time under load', 0.5, 'half the time under load'],
  retightening: ['times', 3, 'three more re-tightenings', -1, 'one fewer re-tightening'],
  washer: ['change', 1, 'a plain washer under the head'],
  sleeve: ['change', 1, 'a metal spacer through the clamped part'],
  'close-gap': ['change', 1, 'the gap closed and the insert flush'],
  'oiled-thread': ['change', 1, 'oil on the thread'],
  'torque-driver': ['change', 1, 'a torque driver instead of tightening by feel'],
  'stronger-screw': ['change', 1, 'a screw of a higher property class'],
  'far-side': ['change', 1, 'the insert set from behind, against a shoulder'],
  'bigger-thread': ['change', 1, 'the next larger thread, with its insert'],
} as const satisfies Record<
  LeverId,
  readonly [Lever['unit'], number, string, number, string] | readonly ['change', 1, string]
>;

describe('nameOfMove', () => {
  test.each(Object.entries(MOVES))('says a move of %s', (lever, [unit, up, upwards, down, downwards]) => {
    expect(nameOfMove(lever as LeverId, unit, up)).toBe(upwards);
    expect(down === undefined ? undefined : nameOfMove(lever as LeverId, unit, down)).toBe(downwards);
  });
  test('says what is left to solid to a tenth where it is not whole', () => {
    expect(nameOfMove('infill', '%', 5)).toBe('infill denser by 5\u00a0% of solid');
    expect(nameOfMove('infill', '%', 5.5)).toBe('infill denser by 5.5\u00a0% of solid');
  });
  test('has words for the unit that each lever moves in', () => {
    for (const { id, unit } of LEVERS) expect(MOVES[id][0], id).toBe(unit);
    expect(new Set(LEVERS.map(({ id }) => id)).size).toBe(Object.keys(MOVES).length);
  });
});

const derivedOf = (symbol: string, value: number, unit: CoreUnit): Derived => ({
  symbol,
  value,
  unit,
  formula: symbol,
  entries: [],
  source: 'own-model',
  standing: 'estimate',
});

describe('sentences of changes', () => {
  const [before, after, dial] = [
    derivedOf('ψ', 1.82, '-'),
    derivedOf('ψ', 2.14, '-'),
    derivedOf('T', 450, 'N·mm'),
  ];
  test('of a step: from the given margin to the one after it, and both open', () => {
    const move = { lever: 'wall-lines', unit: 'lines', step: 1, margin: 2.14, gain: 0.32 } as const;
    const sentence = sentenceOfSensitivity(before, { ...move, derivedMargin: () => after });
    expect(plainText(sentence)).toBe('One more wall line: 1.82\u00a0→\u00a02.1\u00a0×');
    expect(openedBy(sentence)).toEqual([before, after]);
  });
  test('of a remedy: the move, the margin, and what is dialled then, and both open', () => {
    const remedy = { lever: 'infill', unit: '%', move: 30, margin: 2.14, dial: 450 } as const;
    const sentence = sentenceOfRemedy({ ...remedy, derivedMargin: () => after, derivedDial: () => dial });
    expectSentence(plainText(sentence));
    expect(plainText(sentence)).toBe(
      'Infill denser by 30\u00a0% of solid: holds 2.1\u00a0×, dialled at 0.45\u00a0N·m.',
    );
    expect(openedBy(sentence)).toEqual([after, dial]);
  });
});
