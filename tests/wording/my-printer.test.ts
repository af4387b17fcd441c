import { describe, expect, test } from 'vitest';
import type { CalibrationNotice } from '../../src/core/holes/calibration-notices.ts';
import { compensationRule } from '../../src/core/holes/slicer-compensation.ts';
import {
  ASSUMED_FROM_VERTICAL,
  closingWords,
  HOLES_TOO_LARGE,
  NEXT_HOLE_GAINS_LITTLE,
  PERHAPS_SWAPPED,
  pastedHolesWords,
  sentenceOfCalibrationNotice,
  sentenceOfRule,
  tooManyHoles,
} from '../../src/wording/my-printer.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { given } from '../support/joints.ts';
import { expectSentence } from './expect-sentence.ts';

const NOTICES: readonly (readonly [CalibrationNotice, string])[] = [
  [
    { code: 'diameter-extrapolated', drawn: 7.2, least: 3.1, greatest: 5.4, of: 'readings' },
    'what was read here, ⌀ 3.10 to 5.40',
  ],
  [
    { code: 'diameter-extrapolated', drawn: 2.1, least: 3, greatest: 10, of: 'published-fit' },
    'A hole of ⌀ 2.10 lies outside of what was published',
  ],
  [{ code: 'one-diameter', diameter: 4.55, count: 6 }, '⌀ 4.55'],
  [{ code: 'few-readings', count: 0, enough: 3 }, 'No hole of this printer'],
  [{ code: 'few-readings', count: 1, enough: 3 }, 'One hole was read; from three on'],
  [{ code: 'few-readings', count: 2, enough: 3 }, 'Two holes were read'],
  [{ code: 'outliers-named', outliers: 1, count: 9 }, 'One of nine lies far from the others'],
  [
    { code: 'outliers-named', outliers: 3, count: 40 },
    'Three of 40 lie far from the others; the table names them',
  ],
];

describe('sentenceOfCalibrationNotice', () => {
  test.each(NOTICES)('of %o says “%s”', (notice, words) => {
    const sentence = plainText(sentenceOfCalibrationNotice(notice));
    expectSentence(sentence);
    expect(sentence).toContain(words);
  });
  test('lets the hole of the joint open where it is the one that is meant', () => {
    const drawn = given('D_CAD', 7.2, 'mm');
    const [notice] = NOTICES[0] ?? [];
    if (!notice) throw new Error('there is a first notice');
    expect(sentenceOfCalibrationNotice(notice, drawn)).toContainEqual({ derived: drawn, text: '7.20' });
    expect(sentenceOfCalibrationNotice(notice, { ...drawn, value: 6.1 })).not.toContainEqual(
      expect.objectContaining({ text: '6.10' }),
    );
  });
});

describe('sentenceOfRule', () => {
  test.each([
    ['in-cad', 'none', 'compensation at 0'],
    ['in-slicer', 'none', 'Do not draw it larger'],
    ['in-slicer', 'slicer', 'what it leaves'],
    ['in-cad', 'slicer', 'does not apply'],
  ] as const)('of a joint %s and a gauge with %s says “%s”', (joint, gauge, words) => {
    const sentence = sentenceOfRule(compensationRule(joint, gauge).code);
    expectSentence(sentence);
    expect(sentence).toContain(words);
  });
});

describe('words of pasted holes', () => {
  test('count what is taken, what is not and what there is room for', () => {
    expect(pastedHolesWords(0, 2)).toMatch(/^No line is a hole; 2 are not taken/);
    expect(pastedHolesWords(1, 0)).toBe('One line is a hole.');
    expect(pastedHolesWords(1_234, 1)).toBe(
      '1,234 lines are holes; one is not taken and stays in the field:',
    );
    expect(pastedHolesWords(12, 7)).toMatch(/7 are not taken and stay in the field:$/);
    const words = tooManyHoles(10_000, { room: 488, most: 500 });
    expectSentence(words);
    expect(words).toMatch(/10,000 holes\. A printer keeps up to 500, and there is room for 488 more/);
    expect(HOLES_TOO_LARGE(1_000_000)).toContain('1,000,000 lines');
    for (const sentence of [
      HOLES_TOO_LARGE(30_000),
      PERHAPS_SWAPPED,
      NEXT_HOLE_GAINS_LITTLE,
      ASSUMED_FROM_VERTICAL,
    ])
      expectSentence(sentence);
  });
});

describe('closingWords', () => {
  test('say which way a hole is off', () => {
    expect(closingWords(-0.123)).toBe('0.12\u00a0mm smaller than drawn');
    expect(closingWords(0.04)).toBe('0.04\u00a0mm larger than drawn');
  });
});
