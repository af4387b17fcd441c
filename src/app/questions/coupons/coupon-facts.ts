import type { CouponHole } from '../../../core/coupons/coupon.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import type { Coupon } from '../../../solids/coupon-mesh.ts';
import { derivedText, lengthText } from '../../../wording/amount.ts';
import { sidesSentence } from '../../../wording/coupons.ts';
import { figure, type Sentence, said } from '../../../wording/sentence.ts';

/** One line about a coupon. */
export interface Fact {
  readonly name: string;
  readonly sentence: Sentence;
}

const fact = (name: string, derived: Derived): Fact => ({
  name,
  sentence: [figure(derived, derivedText(derived), name)],
});

const length = (derived: Derived) => figure(derived, lengthText(derived.value));

const holesOf = (name: string, { drawn, depth }: CouponHole): Fact => ({
  name,
  sentence: said`⌀ ${figure(drawn, derivedText(drawn))}, ${length(depth)} deep`,
});

/** What there is to know about a coupon before it is printed. */
export function factsOf(coupon: Coupon): readonly Fact[] {
  const size = { name: 'On the bed', sentence: sidesSentence(coupon.sides) };
  const volume = fact('Plastic, if printed solid', coupon.volume);
  switch (coupon.kind) {
    case 'hole-gauge':
      return [
        size,
        {
          name: 'Bores',
          sentence: said`${length(coupon.hole.depth)} deep, floor of ${length(coupon.floorUnder)}`,
        },
        volume,
      ];
    case 'pull-coupon':
      return [
        size,
        holesOf('Hole', coupon.hole),
        fact('Ring that holds it down, inner ⌀ at least', coupon.ringInner),
        volume,
      ];
    case 'torque-coupon':
      return [
        size,
        holesOf('Holes', coupon.hole),
        fact('Rim, inner ⌀', coupon.rimInner),
        fact('Washer over the rim, outer ⌀ at least', coupon.leastWasher),
        volume,
      ];
  }
}
