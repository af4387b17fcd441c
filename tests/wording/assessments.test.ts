import { describe, expect, test } from 'vitest';
import { recommend } from '../../src/core/recommend/recommend.ts';
import { governingMargin, smallestMargin } from '../../src/core/service/margins.ts';
import {
  conditionOfState,
  reasonForService,
  sentenceOfMargin,
  sentenceOfVerdict,
} from '../../src/wording/hold.ts';
import { sentenceOfNotice } from '../../src/wording/notices.ts';
import {
  insertCountSentence,
  reasonForHole,
  reasonForInsert,
  reasonForTorque,
  remarkOfCandidate,
} from '../../src/wording/reasons.ts';
import { sentenceOfRejection } from '../../src/wording/rejections.ts';
import { seatSentence } from '../../src/wording/seat.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { meaningOfSymbol } from '../../src/wording/symbols.ts';
import { assessments, demoJoints, derivedIn, holds } from './assessed.ts';
import { expectSentence } from './expect-sentence.ts';

const all = assessments();
const lives = holds();

describe('symbols of all numbers of many joints', () => {
  test('are many, from every part of the assessment', () => {
    const symbols = new Set(
      all.flatMap(({ assessment }) => derivedIn(assessment).map(({ symbol }) => symbol)),
    );
    expect(symbols.size).toBeGreaterThan(40);
  });
  test('all have a meaning in words', () => {
    const unexplained = new Set<string>();
    for (const found of [...all.map(({ assessment, notices }) => ({ assessment, notices })), ...lives]) {
      for (const derived of derivedIn(found)) {
        const own = meaningOfSymbol(derived.symbol, { unit: derived.unit, source: derived.source });
        if (own === undefined) unexplained.add(`${derived.symbol} [${derived.unit}]`);
        for (const { symbol, unit, from } of derived.entries) {
          const place = { unit, within: derived.symbol, ...(from ? { source: from.source } : {}) };
          if (meaningOfSymbol(symbol, place) === undefined) {
            unexplained.add(`${symbol} [${unit}] in ${derived.symbol} = ${derived.formula}`);
          }
        }
      }
    }
    expect([...unexplained]).toEqual([]);
  });
  test('that stand for two quantities are told apart', () => {
    expect(meaningOfSymbol('k_b', { unit: '-' })).not.toBe(meaningOfSymbol('k_b', { unit: 'N/mm' }));
    expect(meaningOfSymbol('P', { unit: 'mm' })).toBe('pitch');
    expect(meaningOfSymbol('P', { unit: 'N' })).toBe('pull on this joint');
    expect(meaningOfSymbol('x_3')).toBe('reading 3');
  });
  test('that are unknown have none', () => {
    expect(meaningOfSymbol('Ω_none')).toBeUndefined();
  });
});

describe('sentences of all assessments', () => {
  test('are whole, with nothing of the program in them', () => {
    for (const { assessment, notices } of all) {
      expectSentence(plainText(reasonForHole(assessment)));
      expectSentence(plainText(reasonForTorque(assessment)));
      expectSentence(seatSentence(assessment.seat));
      expectSentence(plainText(reasonForInsert(assessment, { rank: 1, rankedCount: 3, drawerCount: 7 })));
      expectSentence(plainText(reasonForInsert(assessment, { rank: 2, rankedCount: 3, drawerCount: 7 })));
      expectSentence(plainText(reasonForInsert(assessment, { rankedCount: 0, drawerCount: 1 })));
      for (const notice of notices) expectSentence(plainText(sentenceOfNotice(notice)));
    }
  });
  test('of their lives too, with and without a setting', () => {
    for (const { joint, hold } of lives) {
      const factor = joint.factors.limits;
      for (const state of hold.states) {
        const margin = governingMargin(state, joint.factors);
        expect(margin?.margin?.value).toBe(state.margin);
        if (margin) expectSentence(plainText(sentenceOfMargin(state, margin, factor)));
        expectSentence(`${conditionOfState(state)}.`.replace(/^at/, 'At'));
      }
      const margin = governingMargin(hold.worst, joint.factors);
      for (const isDialled of [true, false]) {
        expectSentence(plainText(reasonForService(hold, margin, { factor, isDialled })));
        const least = smallestMargin(hold.worst, joint.factors);
        expectSentence(plainText(sentenceOfVerdict(hold, least, isDialled)));
      }
    }
  });
  test('a ranking says of each insert what limits it, or why it is out', () => {
    for (const { joint, drawer } of demoJoints()) {
      const recommendation = recommend(joint, drawer);
      if (recommendation.kind === 'stopped') continue;
      const [best] = recommendation.ranked;
      for (const { assessment } of recommendation.ranked) {
        if (best) expectSentence(plainText(remarkOfCandidate(assessment, best.assessment)));
      }
      for (const { rejection } of recommendation.rejected)
        expectSentence(plainText(sentenceOfRejection(rejection)));
    }
  });
  test('the slicer that corrects holes is named where it does', () => {
    const corrected = all.filter(({ joint }) => joint.holes.compensation === 'in-slicer');
    expect(corrected.length).toBeGreaterThan(0);
    for (const { assessment } of corrected)
      expect(plainText(reasonForHole(assessment))).toContain('slicer corrects');
    const drawn = all.filter(({ joint }) => joint.holes.compensation === 'in-cad');
    for (const { assessment } of drawn)
      expect(plainText(reasonForHole(assessment))).toMatch(/printer (closes|opens)/);
  });
  test.each([
    [1, 1, 'One in the drawer; it fits.'],
    [1, 0, 'One in the drawer; it does not fit.'],
    [7, 5, 'Seven in the drawer, five fit.'],
    [20, 1, '20 in the drawer, one fits.'],
    [3, 0, 'Three in the drawer, none fit.'],
  ])('%i in the drawer of which %i fit', (drawerCount, rankedCount, sentence) => {
    expect(insertCountSentence(drawerCount, rankedCount)).toBe(sentence);
  });
});
