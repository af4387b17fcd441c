import { type Derived, entryFrom } from '../sources/derived.ts';
import {
  type Bed,
  type CouponHole,
  type CouponHost,
  type CouponInsert,
  floorIn,
  inLayers,
  mouthOf,
  type Refused,
  refused,
} from './coupon.ts';

/** Flange under the hole, in knurl diameters, [-], so that the ring does not bend it through. */
const FLANGE_PER_KNURL = 1.5;

/** What a coupon with inserts is made from. */
export interface CouponWish {
  readonly host: CouponHost;
  readonly hole: CouponHole;
  readonly insert: CouponInsert;
  /** What is raised on it, to tell it from the others. */
  readonly number: number;
  readonly bed: Bed;
}

/** Why a hole does not go into its host, the same for every coupon with an insert; undefined where it does. */
export function holeFault({ host, hole }: Pick<CouponWish, 'host' | 'hole'>): Refused | undefined {
  const { bossDiameter } = host;
  const { chamfer, depth } = hole;
  const mouth = mouthOf(hole);
  if (chamfer.value >= depth.value) return refused({ code: 'chamfer-deeper-than-hole', chamfer, depth });
  if (bossDiameter !== undefined && bossDiameter <= mouth.value) {
    return refused({ code: 'boss-without-wall', mouth, bossDiameter });
  }
  return undefined;
}

/**
 * Thickness that carries a pull or a grip.
 *
 *     t_f = ⌈1.5 · Dk/h⌉ · h        upright; 1.5 · Dk where it lies
 *
 * @param insert - knurl diameter Dk [mm]
 * @param host - axis of the insert, layer height h [mm]
 * @returns t_f [mm]
 * @source own-model so that the ring does not bend it through
 */
export const flangeThickness = ({ knurlDiameter }: CouponInsert, host: CouponHost): Derived =>
  inLayers(
    {
      symbol: 't_f',
      value: FLANGE_PER_KNURL * knurlDiameter.value,
      formula: '1.5 · D_k',
      entries: [entryFrom(knurlDiameter)],
    },
    host,
  );

/** The joint's boss with the usual floor under the hole, mm; undefined in a larger part. */
export const bossIn = (host: CouponHost, hole: CouponHole) =>
  host.bossDiameter === undefined
    ? undefined
    : { diameter: host.bossDiameter, height: floorIn(host).value + hole.depth.value };

/** The hole as plain numbers, mm. */
export const boreIn = ({ drawn, depth, chamfer }: CouponHole) => ({
  drawn: drawn.value,
  depth: depth.value,
  chamfer: chamfer.value,
});
