import type { InsertAxis } from '../host/host.ts';
import { type Derived, entry } from '../sources/derived.ts';
import {
  type CouponNotice,
  couponVolume,
  fitsOn,
  holeVolume,
  noticesFor,
  type OnBed,
  onBed,
  type Refused,
  refused,
} from './coupon.ts';
import { boreIn, bossIn, type CouponWish, flangeThickness, holeFault } from './held-insert.ts';
import { LABEL_CLEARANCE, LABEL_HEIGHT, type Label, labelVolume, labelWidth, raisedBy } from './label.ts';
import { ringInnerDiameter } from './pulling-ring.ts';
import { leastWasherOver, rimInnerDiameter } from './rim.ts';

/** Width of the rim in a larger part, mm: it bears the clamp force without yielding first. */
const RIM_WIDTH = 3;
/** Two lines of a nozzle of 0.4 mm, mm. */
const LEAST_RIM = 0.8;
/** Gap under the washer where the joint has none, mm: as much as an insert may rise before it turns loose. */
const LEAST_GAP = 1;
/** Two inserts of one joint to tighten to the end. Lengths mm; the face lies across the bores. */
export interface TorqueCoupon {
  readonly kind: 'torque-coupon';
  readonly axis: InsertAxis;
  /** Base that is held in a vise; without a boss the block that the inserts sit in. */
  readonly length: number;
  readonly width: number;
  readonly baseThickness: number;
  /** The joint's free-standing bosses on the base; absent: the bores are in the block itself. */
  readonly boss?: { readonly diameter: number; readonly height: number };
  readonly bore: { readonly drawn: number; readonly depth: number; readonly chamfer: number };
  /** Middle of the bore with the flat face: the washer lies on the insert. */
  readonly flatAt: readonly [across: number, up: number];
  /** Middle of the bore with the raised rim: the washer bridges a gap. */
  readonly rimAt: readonly [across: number, up: number];
  readonly rim: { readonly outer: number; readonly height: number };
  readonly floor: number;
  readonly label: Label;
  /** Inner diameter of the rim, above the knurl's. */
  readonly rimInner: Derived;
  /** A washer that bridges the rim is at least as wide. */
  readonly leastWasher: Derived;
  readonly onBed: OnBed;
  readonly notices: readonly CouponNotice[];
  readonly volume: Derived;
}

export interface TorqueWish extends CouponWish {
  /** Hole in the clamped part, mm. */
  readonly clearanceHole: number;
  /** Free distance between clamped part and face in the joint, mm; 0 is none. */
  readonly gap: number;
}

/** Rim and room round each bore, mm. */
interface Stations {
  readonly rimInner: Derived;
  readonly rimOuter: number;
  /** Width of plastic that each insert has for itself. */
  readonly field: number;
}

function stationsOf(wish: TorqueWish): Stations {
  const { host, insert } = wish;
  const rimInner = rimInnerDiameter(wish);
  const rimOuter = host.bossDiameter ?? rimInner.value + 2 * RIM_WIDTH;
  const field = Math.max(ringInnerDiameter(insert, host).value, rimOuter + 2 * LABEL_CLEARANCE);
  return { rimInner, rimOuter, field };
}

/** The body of a torque coupon before its volume, mm. */
function bodyOf(wish: TorqueWish, { rimOuter, field }: Stations) {
  const { host, hole, insert, number } = wish;
  const boss = bossIn(host, hole);
  const base = flangeThickness(insert, host);
  const baseThickness = boss ? base : base + hole.depth.value;
  const rim = { outer: rimOuter, height: wish.gap > 0 ? wish.gap : LEAST_GAP };
  const length = Math.max(2 * field, labelWidth(number) + 2 * LABEL_CLEARANCE);
  const width = field + LABEL_HEIGHT + LABEL_CLEARANCE;
  const label: Label = { number, at: [length / 2, field], raised: raisedBy(host) };
  const height = baseThickness + Math.max(label.raised, (boss?.height ?? 0) + rim.height);
  return {
    length,
    width,
    baseThickness,
    ...(boss ? { boss } : {}),
    bore: boreIn(hole),
    flatAt: [length / 2 - field / 2, field / 2] as const,
    rimAt: [length / 2 + field / 2, field / 2] as const,
    rim,
    floor: boss ? boss.height - hole.depth.value : base,
    label,
    onBed: onBed({ length, width, height }, host.axis),
  };
}

/**
 * A coupon with two inserts for tightening: one with a flat face, one under a raised rim.
 *
 * On the flat face a washer with a hole below the knurl bears on the insert; over the rim it bridges a gap and the screw
 * draws the insert up. Each insert has as much plastic round it as a pull needs free; the straight sides go into a vise.
 *
 * @param wish - host, hole, insert, clearance hole, gap [mm], number to raise, bed [mm]
 * @returns dimensions [mm] and volume [mm³], or why it cannot be made: as pullCoupon, and a boss without room for a rim
 * @source own-model rim, gap of the joint or 1 mm
 * @source trade-practice floor of 2 mm
 */
export function torqueCoupon(wish: TorqueWish): TorqueCoupon | Refused {
  const { host, hole, bed } = wish;
  const fault = holeFault(wish);
  if (fault) return fault;
  const { bossDiameter } = host;
  const stations = stationsOf(wish);
  const { rimInner, rimOuter } = stations;
  const rimWidth = (rimOuter - rimInner.value) / 2;
  if (bossDiameter !== undefined && rimWidth < LEAST_RIM) {
    return refused({ code: 'boss-without-rim', rim: rimWidth, least: LEAST_RIM, bossDiameter });
  }
  const body = bodyOf(wish, stations);
  if (!fitsOn(bed, body.onBed)) return refused({ code: 'larger-than-bed', size: body.onBed, bed });
  const { length, width, boss, rim, label } = body;
  const parts = {
    flange: length * width * body.baseThickness,
    boss: boss ? 2 * (Math.PI / 4) * boss.diameter ** 2 * boss.height : 0,
    rim: (Math.PI / 4) * (rimOuter ** 2 - rimInner.value ** 2) * rim.height,
    bores: 2 * holeVolume(hole),
    numbers: labelVolume(label),
  };
  return {
    kind: 'torque-coupon',
    axis: host.axis,
    ...body,
    rimInner,
    leastWasher: leastWasherOver(rimInner),
    notices: noticesFor(host),
    volume: couponVolume(
      parts.flange + parts.boss + parts.rim - parts.bores + parts.numbers,
      'flange + boss + rim − bores + numbers',
      [
        entry('flange', parts.flange, 'mm³'),
        entry('boss', parts.boss, 'mm³'),
        entry('rim', parts.rim, 'mm³'),
        entry('bores', parts.bores, 'mm³'),
        entry('numbers', parts.numbers, 'mm³'),
      ],
    ),
  };
}
