import { describe, expect, test } from 'vitest';
import type { CouponRefusal } from '../../src/core/coupons/coupon.ts';
import { sentenceOfCouponNotice, sentenceOfCouponRefusal, TEST_CAUTIONS } from '../../src/wording/coupons.ts';

import { plainText } from '../../src/wording/sentence.ts';
import { given } from '../support/joints.ts';

const BED = { x: 190, y: 210, z: 180 };
const REFUSALS = {
  'bore-too-small': [{ code: 'bore-too-small', bore: given('D_j', 0.85, 'mm'), least: 1 }, '0.85'],
  'boss-without-wall': [
    { code: 'boss-without-wall', mouth: given('D_mo', 5.3, 'mm'), bossDiameter: 5.1 },
    '5.1',
  ],
  'boss-without-rim': [
    { code: 'boss-without-rim', rim: given('w_r', 0.35, 'mm'), least: 0.8, bossDiameter: 7.2 },
    'a rim of 0.35',
  ],
  'chamfer-deeper-than-hole': [
    { code: 'chamfer-deeper-than-hole', chamfer: given('c', 3.2, 'mm'), depth: given('T', 2.9, 'mm') },
    '3.2',
  ],
  'larger-than-bed': [
    {
      code: 'larger-than-bed',
      size: { x: given('l_c', 231, 'mm'), y: given('w_c', 24, 'mm'), z: given('h_c', 9, 'mm') },
      bed: BED,
    },
    '231.0 mm × 24.0 mm × 9.0 mm',
  ],
  'too-many-bores': [
    { code: 'too-many-bores', count: 37, most: given('n_b', 16, '-'), bed: BED },
    '37 bores',
  ],
} as const satisfies {
  readonly [Code in CouponRefusal['code']]: readonly [Extract<CouponRefusal, { code: Code }>, string];
};

describe('sentenceOfCouponRefusal', () => {
  test.each(Object.values(REFUSALS))('$0.code is said with its facts', (refusal, fact) => {
    expect(plainText(sentenceOfCouponRefusal(refusal)).replaceAll('\u00a0', ' ')).toContain(fact);
  });
  test('every reason has a sentence of its own', () => {
    const sentences = Object.values(REFUSALS).map(([refusal]) => plainText(sentenceOfCouponRefusal(refusal)));
    expect(new Set(sentences).size).toBe(sentences.length);
  });
});

test('a boss that hangs in the air is said with what to do', () => {
  expect(sentenceOfCouponNotice('boss-needs-support')).toContain('support');
});

describe('TEST_CAUTIONS', () => {
  test('begin with the rules of the place', () => {
    expect(TEST_CAUTIONS[0]).toMatch(/rules.*law.*first/);
  });
  test.each(['shield', 'eye protection', 'line of the pull', 'fumes', 'burn'])('tell of the %s', (danger) => {
    expect(TEST_CAUTIONS.join(' ')).toContain(danger);
  });
});
