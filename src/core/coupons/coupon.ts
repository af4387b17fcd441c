import { wholeLayers } from '../holes/hole-depth.ts';
import type { InsertAxis } from '../host/host.ts';
import { withoutDust } from '../numerics/binary-dust.ts';
import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';

/** The printed part of the joint as far as a coupon copies it; lengths in mm. */
export interface CouponHost {
  readonly axis: InsertAxis;
  /** Wall that the joint's own lines give. */
  readonly wall: Derived;
  readonly layerHeight: number;
  /** Outside diameter of a free-standing boss; absent: the insert sits in a larger part. */
  readonly bossDiameter?: number;
}

/** The hole of the joint as it is drawn, mm; a chamfer of 0 is none. */
export interface CouponHole {
  readonly drawn: Derived;
  readonly depth: Derived;
  readonly chamfer: Derived;
}

/** The insert as far as a coupon asks, mm. */
export interface CouponInsert {
  readonly knurlDiameter: Derived;
  readonly knurledLength: Derived;
}

/** Room of the printer, mm. */
export interface Bed {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A coupon's box as it lies on the bed, mm. */
export type OnBed = Bed;

/** Why a coupon cannot be made. */
export type CouponRefusal =
  /** Smallest bore of a row is nothing, or is below what a nozzle leaves open. */
  | { readonly code: 'bore-too-small'; readonly bore: Derived; readonly least: number }
  /** The mouth of the bore reaches the outside of the boss. */
  | { readonly code: 'boss-without-wall'; readonly mouth: Derived; readonly bossDiameter: number }
  /** The rim that a washer bridges would be thinner than two lines of a nozzle. */
  | {
      readonly code: 'boss-without-rim';
      readonly rim: Derived;
      readonly least: number;
      readonly bossDiameter: number;
    }
  | { readonly code: 'chamfer-deeper-than-hole'; readonly chamfer: Derived; readonly depth: Derived }
  | { readonly code: 'larger-than-bed'; readonly size: Sides; readonly bed: Bed }
  /** A row that is too long for the bed; so many bores fit. */
  | { readonly code: 'too-many-bores'; readonly count: number; readonly most: Derived; readonly bed: Bed };

export interface Refused {
  readonly kind: 'refused';
  readonly refusal: CouponRefusal;
}

export const refused = (refusal: CouponRefusal): Refused => ({ kind: 'refused', refusal });

/** What to know before a coupon is printed. */
export type CouponNotice =
  /** A boss that lies along the bed hangs in the air. */
  'boss-needs-support';

export const noticesFor = ({ axis, bossDiameter }: CouponHost): readonly CouponNotice[] =>
  axis === 'across-build' && bossDiameter !== undefined ? ['boss-needs-support'] : [];

/** Plastic under a bore where the joint asks for no more, mm: one source asks at least 2. */
const FLOOR = 2;

/** A length of a coupon before it has its unit and its source. */
type Way = Pick<Derived, 'symbol' | 'value' | 'formula' | 'entries'>;

/** A length of a coupon, mm. */
export const couponLength = (way: Way): Derived => ({
  ...way,
  value: withoutDust(way.value),
  unit: 'mm',
  source: 'own-model',
  standing: 'estimate',
});

/** A thickness of a coupon, mm: in whole layers where layers lie across it. */
export const inLayers = (
  way: Way,
  { axis, layerHeight }: Pick<CouponHost, 'axis' | 'layerHeight'>,
): Derived =>
  axis === 'along-build'
    ? couponLength({
        ...way,
        value: wholeLayers(way.value, layerHeight),
        formula: `⌈${way.formula}/h⌉ · h`,
        entries: [...way.entries, entry('h', layerHeight, 'mm')],
      })
    : couponLength(way);

/**
 * Plastic under a bore: its bottom lies on a layer's border.
 *
 *     f_c = ⌈2 mm/h⌉ · h        upright; 2 mm where it lies
 *
 * @param host - axis of the insert, layer height h [mm]
 * @returns f_c [mm], ≥ 2
 * @source trade-practice floor of 2 mm
 */
export const floorIn = (host: Pick<CouponHost, 'axis' | 'layerHeight'>): Derived => ({
  ...inLayers({ symbol: 'f_c', value: FLOOR, formula: '2 mm', entries: [] }, host),
  source: 'trade-practice',
  standing: 'common-practice',
});

/**
 * Widest place of a hole.
 *
 *     D_mo = D_CAD + 2 · c
 *
 * @param hole - drawn diameter D_CAD and leg of the chamfer c [mm]
 * @returns D_mo [mm]
 * @source own-model chamfer of 45°
 */
export const mouthOf = ({ drawn, chamfer }: Pick<CouponHole, 'drawn' | 'chamfer'>): Derived =>
  couponLength({
    symbol: 'D_mo',
    value: drawn.value + 2 * chamfer.value,
    formula: `${drawn.symbol} + 2 · c`,
    entries: [entryFrom(drawn), entryFrom(chamfer)],
  });

/** Length across, width and height over the closed face, mm; the height with its raised number. */
export interface Block {
  readonly length: Derived;
  readonly width: Derived;
  readonly height: Derived;
}

/** Sides of a coupon as it lies on the bed, with their ways, mm. */
export interface Sides {
  readonly x: Derived;
  readonly y: Derived;
  readonly z: Derived;
}

/**
 * The sides of a coupon on the bed: as modelled, or turned so that the bores lie along the bed's y axis.
 *
 * @param block - sides as modelled, height along the bores [mm]
 * @param axis - insert axis along or across the build direction
 * @returns sides along x, y and z [mm]
 */
export const sidesOnBed = ({ length, width, height }: Block, axis: InsertAxis): Sides =>
  axis === 'along-build' ? { x: length, y: width, z: height } : { x: length, y: height, z: width };

/** The box of a coupon on the bed, mm. */
export const onBed = ({ x, y, z }: Sides): OnBed => ({ x: x.value, y: y.value, z: z.value });

/** True where a box stands within the printer's room. */
export const fitsOn = (bed: Bed, size: OnBed): boolean =>
  size.x <= bed.x && size.y <= bed.y && size.z <= bed.z;

/** Plastic that a blind hole with its chamfer takes away, mm³: cylinder, and frustum at the mouth. */
export function holeVolume({ drawn, depth, chamfer }: CouponHole): number {
  const [inner, outer, c] = [drawn.value / 2, drawn.value / 2 + chamfer.value, chamfer.value];
  const frustum = ((Math.PI * c) / 3) * (inner ** 2 + inner * outer + outer ** 2);
  return Math.PI * inner ** 2 * (depth.value - c) + frustum;
}

/** The volume of a coupon, as solid plastic with round bores, mm³. */
export const couponVolume = (value: number, formula: string, entries: readonly Entry[]): Derived => ({
  symbol: 'V_c',
  value,
  unit: 'mm³',
  formula,
  entries,
  source: 'own-model',
  standing: 'estimate',
});
