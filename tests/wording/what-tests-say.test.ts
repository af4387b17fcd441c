import { describe, expect, test } from 'vitest';
import { bondBelow, bondRows } from '../../src/core/bench/bond-rows.ts';
import { couponPoints } from '../../src/core/bench/coupon-points.ts';
import { evidenceOf } from '../../src/core/bench/evidence.ts';
import { plainText, type Sentence } from '../../src/wording/sentence.ts';
import { derivationsWithin, meaningOf, meaningOfEntry } from '../../src/wording/symbols.ts';
import { wordsOfFinding } from '../../src/wording/test-findings.ts';
import {
  nameOfSetup,
  reasonForTests,
  sentenceOfMovedBond,
  sentenceOfMovedForce,
} from '../../src/wording/what-tests-say.ts';
import { benchTest } from '../support/bench-tests.ts';
import { answerableJoint, given } from '../support/joints.ts';

const holds = (median: number, characteristic: number, unit: 'N' | '-') => ({
  median: given('R', median, unit),
  characteristic: given('R_k', characteristic, unit),
});
const MOVED = {
  coupons: 3,
  broke: 3,
  of: 'M3 5.0 × 5.0',
  before: holds(1304, 640, 'N'),
  after: holds(1178, 962, 'N'),
};
const plain = (sentence: Sentence) => plainText(sentence).replaceAll('\u00a0', ' ');

describe('what moved', () => {
  test('is told with both ends, and what 19 of 20 hold', () => {
    expect(plain(sentenceOfMovedForce(MOVED))).toBe(
      'Three tests moved the pull-out of M3 5.0 × 5.0 from 1,300 N, our estimate, to 1,180 N, measured; 19 of 20 hold 962 N, 640 N without them.',
    );
  });
  test('is not called measured where nothing broke', () => {
    expect(plain(sentenceOfMovedForce({ ...MOVED, coupons: 1, broke: 0 }))).toMatch(
      /^One test moved .* to 1,180 N, shown at least; .* without it\.$/,
    );
  });
  test('says so where nothing moved', () => {
    const after = holds(0.851, 0.61, '-');
    const before = holds(0.85, 0.43, '-');
    expect(plain(sentenceOfMovedBond({ ...MOVED, before, after }))).toBe(
      'Three tests left the bond factor of M3 5.0 × 5.0 at 0.85, where our estimate was; 19 of 20 hold 0.61, 0.43 without them.',
    );
  });
});

describe('the fifth answer', () => {
  test('has a sentence for each reason why nothing is said', () => {
    expect(reasonForTests({ tests: 0, setups: 0 })).toMatch(/^One pulled coupon turns/);
    expect(reasonForTests({ tests: 2, setups: 0 })).toMatch(/the log tells why\.$/);
    expect(reasonForTests({ tests: 2, setups: 1 })).toMatch(/^The tests are of other set-ups/);
  });
  test('says whether the answers follow', () => {
    expect(reasonForTests({ tests: 4, setups: 1, speaking: 4 })).toBe(
      'Four tests of this set-up moved the pull-out, and with it every answer.',
    );
    expect(reasonForTests({ tests: 1, setups: 1, speaking: 1, isLeftOut: true })).toBe(
      'One test of this set-up moved the pull-out; the answers leave it out.',
    );
  });
});

describe('the numbers of the tests', () => {
  const joint = answerableJoint();
  const { findings, setups } = evidenceOf(
    [
      benchTest({ value: 107 }),
      benchTest({ id: 'test-2', value: 0.6, unit: 'N·m', kind: 'jack-out-torque' }),
      benchTest({ id: 'test-3', value: 60, result: 'held' }),
      benchTest({ id: 'test-4', value: 0 }),
    ],
    joint,
    undefined,
  );
  test('are told in a few words at each row', () => {
    expect(findings.map(wordsOfFinding).map((words) => words && plainText(words))).toEqual([
      expect.stringMatching(/^bond 0\.68$/),
      expect.stringMatching(/^bond \d\.\d\d$/),
      expect.stringMatching(/^held: bond at least 0\.38$/),
      undefined,
    ]);
  });
  test('have a meaning for every symbol, down to what was given', () => {
    const numbers = setups.flatMap((setup) => [
      ...bondRows(setup).rows.flatMap(({ found, low, high, slenderness }) => [
        found.median,
        found.characteristic,
        low,
        high,
        ...(slenderness ? [slenderness] : []),
      ]),
      bondBelow(setup, 'usual', 0.25).after,
      ...couponPoints(setup, joint).flatMap(({ force, torque }) => [
        force,
        ...(torque ? [torque.value] : []),
      ]),
    ]);
    expect(numbers.length).toBeGreaterThan(10);
    for (const one of numbers.flatMap((number) => [...derivationsWithin(number)])) {
      expect(meaningOf(one), one.symbol).not.toBe(one.symbol);
      for (const put of one.entries) expect(meaningOfEntry(put, one), put.symbol).not.toBe(put.symbol);
    }
  });
});

describe('nameOfSetup', () => {
  test('names the printer where there is one', () => {
    expect(nameOfSetup({ material: 'PETG', setting: 'hammered' })).toBe('PETG, hammered in');
    expect(nameOfSetup({ material: 'PLA', setting: 'heat-set', printer: 'the grey one' })).toBe(
      'PLA, set with a hot iron, the grey one',
    );
  });
});
