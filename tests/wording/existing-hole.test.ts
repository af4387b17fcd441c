import { describe, expect, test } from 'vitest';
import { existingFinding } from '../../src/core/joint/existing-finding.ts';
import type { Impossible, Rescue } from '../../src/core/recommend/rescue.ts';
import type { Derived } from '../../src/core/sources/derived.ts';
import { NUTS } from '../../src/data/nuts.ts';
import {
  nameOfRescue,
  sentenceOfBore,
  sentenceOfDepth,
  sentenceOfRescue,
  sentenceOfVerdict,
  VERDICT_NAMES,
} from '../../src/wording/existing-hole.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { answerableJoint, assessed, type Changes, given } from '../support/joints.ts';
import { expectSentence } from './expect-sentence.ts';

const findingIn = (
  diameter_mm: number,
  depth_mm?: number,
  known: 'as-drawn' | 'as-measured' = 'as-measured',
) => {
  const existing = { diameter_mm, known, ...(depth_mm === undefined ? {} : { depth_mm }) };
  const changes: Changes = { holes: { existing } };
  const finding = existingFinding(answerableJoint(changes), assessed(changes));
  if (!finding) throw new Error('the joint of the test has a hole that is there');
  return finding;
};

describe('sentenceOfVerdict', () => {
  test.each([
    [4.3, 7, 'Fits', ['4.21', '4.46']],
    [4.5, 7, 'Loose', ['4.46', '64']],
    [4.17, 7, 'Tight', ['4.21']],
    [4.02, 7, 'Too small', ['4.21', '16.6']],
    [4.3, 5.2, 'Too shallow', ['5.2', '5.9']],
    [4.97, 7, 'No bite', ['4.93']],
  ] as const)('of a bore of %f mm, %f mm deep: %s, with its numbers', (diameter, depth, name, numbers) => {
    const finding = findingIn(diameter, depth);
    expect(VERDICT_NAMES[finding.verdict]).toBe(name);
    const sentence = plainText(sentenceOfVerdict(finding));
    expectSentence(sentence);
    for (const number of numbers) expect(sentence).toContain(number);
    expect(sentenceOfVerdict(finding).some((part) => typeof part === 'object')).toBe(true);
  });
});

const depthOf = (depth?: number) => plainText(sentenceOfDepth(findingIn(4.3, depth)));

describe('what is known of the hole', () => {
  test('is said of the bore: as measured, or what a drawn one comes out at', () => {
    expect(plainText(sentenceOfBore(findingIn(4.4)))).toBe('A bore of 4.40\u00a0mm, as measured.');
    const drawn = plainText(sentenceOfBore(findingIn(4.7, 7, 'as-drawn')));
    expectSentence(drawn);
    expect(drawn).toContain('4.46');
  });
  test('is said of the depth: not given, enough, or through', () => {
    expect(depthOf()).toContain('not given');
    expect(depthOf(7.3)).toContain('7.3');
    expect(depthOf(11.3)).toContain('goes through');
    for (const depth of [undefined, 7.3, 11.3]) expectSentence(depthOf(depth));
  });
});

const gain = { holds: given('R_k', 311, 'N'), isEnough: true } as const;
const mm = (value: number) => given('T', value, 'mm');
const [nut] = NUTS;

const IMPOSSIBLE = {
  'none-in-drawer': { code: 'another-insert', why: 'none-in-drawer' },
  'not-too-small': { code: 'open-up', why: 'not-too-small', bore: mm(4.78) },
  'no-drill': { code: 'open-up', why: 'no-drill', least: mm(4.31), greatest: mm(4.39) },
  'wall-drilled-away': {
    code: 'open-up',
    why: 'wall-drilled-away',
    drill: mm(4.3),
    wallLeft: mm(0.31),
    least: 0.43,
  },
  'no-floor-left': { code: 'drill-deeper', why: 'no-floor-left', depth: mm(6.1), thickness: 6.7, floor: 1 },
  'still-does-not-fit': { code: 'open-up', why: 'still-does-not-fit' },
  'no-nut-known': { code: 'nut-behind', why: 'no-nut-known', thread: '6-32' },
  'falls-through': { code: 'nut-behind', why: 'falls-through', outside: 7, hole: mm(7.12) },
  'no-screw-length': { code: 'nut-behind', why: 'no-screw-length', least: mm(33.4), longest: 30 },
  'no-room': { code: 'reprint', why: 'no-room' },
} as const satisfies { readonly [Why in Impossible['why']]: Extract<Impossible, { readonly why: Why }> };

const POSSIBLE: readonly Rescue[] = [
  { kind: 'possible', code: 'another-insert', insertId: 'a', verdict: 'fits', ...gain },
  { kind: 'possible', code: 'another-insert', insertId: 'a', verdict: 'tight', ...gain },
  { kind: 'possible', code: 'open-up', drill: mm(4.3), wallLeft: mm(1.78), verdict: 'fits', ...gain },
  { kind: 'possible', code: 'drill-deeper', depth: mm(6.1), verdict: 'fits', ...gain },
  ...(nut
    ? [{ kind: 'possible', code: 'nut-behind', nut, area: mm(20), screwLength: mm(16), ...gain } as const]
    : []),
  {
    kind: 'possible',
    code: 'self-tapping-insert',
    room: { least: 2, most: 3 },
    wallShare: { least: 0.2, most: 0.9 },
  },
  { kind: 'possible', code: 'reprint', drawn: mm(4.5), depth: mm(6.4), ...gain },
];

describe('sentenceOfRescue', () => {
  test.each(POSSIBLE)('says what to do: $code', (rescue) => {
    expectSentence(plainText(sentenceOfRescue(rescue)));
    expect(nameOfRescue(rescue.code)).toMatch(/^[A-Z]/);
  });
  test.each(Object.values(IMPOSSIBLE))('says why not, with each of its numbers: $why', (impossible) => {
    const sentence = plainText(sentenceOfRescue({ kind: 'impossible', ...impossible }));
    expectSentence(sentence);
    const facts = Object.entries<string | number | Derived>(impossible).filter(
      ([key]) => key !== 'code' && key !== 'why',
    );
    for (const [, fact] of facts) {
      expect(sentence).toContain(String(typeof fact === 'object' ? fact.value : fact));
    }
  });
});
