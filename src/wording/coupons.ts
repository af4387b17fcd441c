import type { CouponNotice, CouponRefusal, OnBed, Sides } from '../core/coupons/coupon.ts';
import type { HoleGauge } from '../core/coupons/hole-gauge.ts';
import type { PullCoupon } from '../core/coupons/pull-coupon.ts';
import type { TorqueCoupon } from '../core/coupons/torque-coupon.ts';
import type { InsertAxis } from '../core/host/host.ts';
import type { Derived } from '../core/sources/derived.ts';
import { countWord, decimalText, lengthNumber, lengthText, NO_BREAK_SPACE } from './amount.ts';
import { figure, type Sentence, said } from './sentence.ts';

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

const lengthFigure = (derived: Derived, what?: string) => figure(derived, lengthText(derived.value), what);

/** The sides of a coupon as it lies on the bed. */
export const sidesSentence = ({ x, y, z }: Sides): Sentence => {
  const side = (derived: Derived, axis: string) => lengthFigure(derived, `Along the bed’s ${axis}`);
  return said`${side(x, 'x')} × ${side(y, 'y')} × ${side(z, 'z')}`;
};

/** Why a coupon cannot be made. */
export function sentenceOfCouponRefusal(refusal: CouponRefusal): Sentence {
  switch (refusal.code) {
    case 'bore-too-small':
      return said`The smallest bore would be ${lengthFigure(refusal.bore)}; below ${lengthText(refusal.least)} a nozzle leaves nothing open. Take fewer bores or a smaller step.`;
    case 'boss-without-wall':
      return said`The mouth of the hole, ${lengthFigure(refusal.mouth)}, reaches the outside of the boss, ${lengthText(refusal.bossDiameter)}.`;
    case 'boss-without-rim':
      return said`The boss of ${lengthText(refusal.bossDiameter)} leaves a rim of ${lengthFigure(refusal.rim)} for the washer; it takes ${lengthText(refusal.least)}.`;
    case 'chamfer-deeper-than-hole':
      return said`The chamfer of ${lengthFigure(refusal.chamfer)} is deeper than the hole, ${lengthFigure(refusal.depth)}.`;
    case 'larger-than-bed':
      return said`It would be ${sidesSentence(refusal.size)} and does not fit on the bed, ${sizeText(refusal.bed)}.`;
    case 'too-many-bores':
      return said`${decimalText(refusal.count, 0)} bores are too long for the bed; ${figure(refusal.most, countWord(refusal.most.value))} fit.`;
  }
}

const NOTICES = {
  'boss-needs-support':
    'The boss lies along the bed and hangs in the air: print it with support, as you would the part.',
} as const satisfies Record<CouponNotice, string>;

export const sentenceOfCouponNotice = (notice: CouponNotice): string => NOTICES[notice];

const AXIS_WORDS = {
  'along-build': 'upright',
  'across-build': 'along the bed',
} as const satisfies Record<InsertAxis, string>;

/** How a coupon lies on the bed, and whether the part lies so too. */
export const lyingText = (coupon: HoleGauge | PullCoupon | TorqueCoupon, inPart: InsertAxis): string =>
  `As it lies in the file, ${sizeText(coupon.onBed)}: the insert’s axis is then ${AXIS_WORDS[coupon.axis]}, ${
    coupon.axis === inPart
      ? 'as in the part'
      : `but ${AXIS_WORDS[inPart]} in the part, so its results do not speak for the part`
  }.`;

/** Where a coupon goes once it is printed. */
export function placesOfCoupon(coupon: HoleGauge | PullCoupon | TorqueCoupon): readonly string[] {
  switch (coupon.kind) {
    case 'hole-gauge':
      return [
        'On the bench, cooled to the room. Measure each bore in three directions, below the chamfer.',
        'Try the insert’s pilot in each bore, from number 1 up: cold, by hand, without force.',
      ];
    case 'pull-coupon':
      return [
        `Under a ring of at least ${lengthText(coupon.ringInner.value)} inside and at most ${lengthText(coupon.ringOuter)} outside, in the middle over the insert; the number stays outside it.`,
        'Pull by a screw that sits in the full thread, along its axis, slowly and without a jerk.',
      ];
    case 'torque-coupon':
      return [
        'In a vise that grips the block by its sides, clear of both bores.',
        'Flat bore: washer and screw lie on the brass.',
        `Bore with the rim: a washer of at least ${lengthText(coupon.leastWasher.value)} outside lies on the rim and touches no brass, so the screw draws the insert up.`,
      ];
  }
}

/** What keeps a person whole at the bench; the workshop’s own rules come first. */
export const TEST_CAUTIONS: readonly string[] = [
  'Your workshop’s own rules and the law of the place come first.',
  'Put a shield before the coupon and wear eye protection: inserts, bits of plastic and scale hooks fly.',
  'Stand off the line of the pull, and let nobody stand in it.',
  'The iron and the insert burn the skin for minutes after they are set. Hot plastic gives off fumes: set inserts with the air drawn off.',
  'A pull that has not broken it still holds its force: let it down slowly before you reach in.',
  'Brass may hold lead: wash your hands before you eat.',
];
