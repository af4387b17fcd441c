import type { Derived } from '../../../core/sources/derived.ts';
import type { Coupon } from '../../../solids/coupon-mesh.ts';
import { diameterNumber, lengthText } from '../../../wording/amount.ts';
import { onBedText } from '../../../wording/coupons.ts';

/** One line about a coupon: a text, or a number that opens its derivation. */
export type Fact =
  | { readonly name: string; readonly text: string }
  | { readonly name: string; readonly derived: Derived };

/** What there is to know about a coupon before it is printed. */
export function factsOf(coupon: Coupon): readonly Fact[] {
  const size = { name: 'On the bed', text: onBedText(coupon.onBed) };
  const volume = { name: 'Plastic, if printed solid', derived: coupon.volume };
  switch (coupon.kind) {
    case 'hole-gauge':
      return [
        size,
        { name: 'Bores', text: `${lengthText(coupon.depth)} deep, floor of ${lengthText(coupon.floor)}` },
        volume,
      ];
    case 'pull-coupon':
      return [
        size,
        {
          name: 'Hole',
          text: `⌀ ${diameterNumber(coupon.bore.drawn)} mm, ${lengthText(coupon.bore.depth)} deep`,
        },
        { name: 'Ring that holds it down, inner ⌀ at least', derived: coupon.ringInner },
        volume,
      ];
    case 'torque-coupon':
      return [
        size,
        {
          name: 'Holes',
          text: `⌀ ${diameterNumber(coupon.bore.drawn)} mm, ${lengthText(coupon.bore.depth)} deep`,
        },
        { name: 'Rim, inner ⌀', derived: coupon.rimInner },
        { name: 'Washer over the rim, outer ⌀ at least', derived: coupon.leastWasher },
        volume,
      ];
  }
}
