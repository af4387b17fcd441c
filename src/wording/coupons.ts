import type { CouponNotice, CouponRefusal, OnBed } from '../core/coupons/coupon.ts';
import { countWord, decimalText, lengthNumber, lengthText, NO_BREAK_SPACE } from './amount.ts';

export const COUPON_NAMES = {
  'hole-gauge': 'Hole gauge',
  'pull-coupon': 'Pull coupon',
  'torque-coupon': 'Torque coupon',
} as const;

export type CouponKind = keyof typeof COUPON_NAMES;

/** What a coupon is for, in a sentence. */
export const COUPON_PURPOSES = {
  'hole-gauge':
    'A row of bores round the hole to draw. Measure each and enter it under My printer; try the insert’s pilot in them.',
  'pull-coupon':
    'One insert in the joint’s own walls, with room for a ring that holds the coupon down and props nothing.',
  'torque-coupon':
    'Two inserts: a flat face, where a washer lies on the brass, and a rim that a washer bridges, so that the screw jacks the insert out.',
} as const satisfies Record<CouponKind, string>;

const sizeText = ({ x, y, z }: OnBed): string =>
  `${lengthNumber(x)} × ${lengthNumber(y)} × ${lengthNumber(z)}${NO_BREAK_SPACE}mm`;

export const onBedText = sizeText;

/** Why a coupon cannot be made. */
export function sentenceOfCouponRefusal(refusal: CouponRefusal): string {
  switch (refusal.code) {
    case 'bore-too-small':
      return `The smallest bore would be ${lengthText(refusal.bore)}; below ${lengthText(refusal.least)} a nozzle leaves nothing open. Take fewer bores or a smaller step.`;
    case 'boss-without-wall':
      return `The mouth of the hole, ${lengthText(refusal.mouth)}, reaches the outside of the boss, ${lengthText(refusal.bossDiameter)}.`;
    case 'boss-without-rim':
      return `The boss of ${lengthText(refusal.bossDiameter)} leaves a rim of ${lengthText(refusal.rim)} for the washer; it takes ${lengthText(refusal.least)}.`;
    case 'chamfer-deeper-than-hole':
      return `The chamfer of ${lengthText(refusal.chamfer)} is deeper than the hole, ${lengthText(refusal.depth)}.`;
    case 'larger-than-bed':
      return `It would be ${sizeText(refusal.size)} and does not fit on the bed, ${sizeText(refusal.bed)}.`;
    case 'too-many-bores':
      return `${decimalText(refusal.count, 0)} bores are too long for the bed; ${countWord(refusal.most)} fit.`;
  }
}

const NOTICES = {
  'boss-needs-support':
    'The boss lies along the bed and hangs in the air: print it with support, as you would the part.',
} as const satisfies Record<CouponNotice, string>;

export const sentenceOfCouponNotice = (notice: CouponNotice): string => NOTICES[notice];

/** What keeps a person whole at the bench; the workshop’s own rules come first. */
export const TEST_CAUTIONS: readonly string[] = [
  'Your workshop’s own rules and the law of the place come first.',
  'Put a shield before the coupon and wear eye protection: inserts, bits of plastic and scale hooks fly.',
  'Stand off the line of the pull, and let nobody stand in it.',
  'The iron and the insert are hot enough to burn for minutes; set inserts with the air drawn off.',
  'Brass may hold lead: wash your hands before you eat.',
];
