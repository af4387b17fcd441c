import { describe, expect, test } from 'vitest';
import type { CouponRefusal } from '../../src/core/coupons/coupon.ts';
import { sentenceOfCouponNotice, sentenceOfCouponRefusal, TEST_CAUTIONS } from '../../src/wording/coupons.ts';

const BED = { x: 190, y: 210, z: 180 };
const REFUSALS = {
  'bore-too-small': [{ code: 'bore-too-small', bore: 0.85, least: 1 }, '0.85'],
  'boss-without-wall': [{ code: 'boss-without-wall', mouth: 5.3, bossDiameter: 5.1 }, '5.1'],
  'boss-without-rim': [
    { code: 'boss-without-rim', rim: 0.35, least: 0.8, bossDiameter: 7.2 },
    'a rim of 0.35',
  ],
  'chamfer-deeper-than-hole': [{ code: 'chamfer-deeper-than-hole', chamfer: 3.2, depth: 2.9 }, '3.2'],
  'larger-than-bed': [
    { code: 'larger-than-bed', size: { x: 231, y: 24, z: 9 }, bed: BED },
    '231.0 × 24.0 × 9.0',
  ],
  'too-many-bores': [{ code: 'too-many-bores', count: 37, most: 16, bed: BED }, '37 bores'],
} as const satisfies {
  readonly [Code in CouponRefusal['code']]: readonly [Extract<CouponRefusal, { code: Code }>, string];
};

describe('sentenceOfCouponRefusal', () => {
  test.each(Object.values(REFUSALS))('$0.code is said with its facts', (refusal, fact) => {
    expect(sentenceOfCouponRefusal(refusal).replaceAll('\u00a0', ' ')).toContain(fact);
  });
  test('every reason has a sentence of its own', () => {
    const sentences = Object.values(REFUSALS).map(([refusal]) => sentenceOfCouponRefusal(refusal));
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
