import type { InsertAxis } from '../host/host.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import {
  type CouponHole,
  type CouponNotice,
  couponLength,
  couponVolume,
  fitsOn,
  holeVolume,
  noticesFor,
  type OnBed,
  onBed,
  type Refused,
  refused,
  type Sides,
  sidesOnBed,
} from './coupon.ts';
import { boreIn, bossIn, flangeThickness, holeFault } from './held-insert.ts';
import { type Label, labelVolume, raisedBy } from './label.ts';
import { leastWasherOver } from './rim.ts';
import { rimHeightOf, type Stations, stationsOf, type TorqueWish, torqueBlock } from './torque-block.ts';

/** Two lines of a nozzle of 0.4 mm, mm. */
const LEAST_RIM = 0.8;

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
  /** The joint's own hole, with the ways to its sizes. */
  readonly hole: CouponHole;
  readonly sides: Sides;
  readonly onBed: OnBed;
  readonly notices: readonly CouponNotice[];
  readonly volume: Derived;
}

/** Width of the ring that a washer lies on, mm. */
const rimWidthOf = ({ rimInner, rimOuter }: Stations): Derived =>
  couponLength({
    symbol: 'w_r',
    value: (rimOuter.value - rimInner.value) / 2,
    formula: '(D_rim − D_ri)/2',
    entries: [entryFrom(rimOuter), entryFrom(rimInner)],
  });

/** The body of a torque coupon before its volume, mm. */
function bodyOf(wish: TorqueWish, stations: Stations) {
  const { host, hole, insert, number } = wish;
  const block = torqueBlock(wish, stations);
  const boss = bossIn(host, hole);
  const base = flangeThickness(insert, host).value;
  const field = stations.field.value;
  const length = block.length.value;
  const sides = sidesOnBed(block, host.axis);
  const label: Label = { number, at: [length / 2, field], raised: raisedBy(host).value };
  return {
    length,
    width: block.width.value,
    baseThickness: boss ? base : base + hole.depth.value,
    ...(boss ? { boss } : {}),
    bore: boreIn(hole),
    flatAt: [length / 2 - field / 2, field / 2] as const,
    rimAt: [length / 2 + field / 2, field / 2] as const,
    rim: { outer: stations.rimOuter.value, height: rimHeightOf(wish) },
    floor: boss ? boss.height - hole.depth.value : base,
    label,
    hole,
    sides,
    onBed: onBed(sides),
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
  const { rimInner } = stations;
  const rimOuter = stations.rimOuter.value;
  const rim = rimWidthOf(stations);
  if (bossDiameter !== undefined && rim.value < LEAST_RIM) {
    return refused({ code: 'boss-without-rim', rim, least: LEAST_RIM, bossDiameter });
  }
  const body = bodyOf(wish, stations);
  if (!fitsOn(bed, body.onBed)) return refused({ code: 'larger-than-bed', size: body.sides, bed });
  const { length, width, boss, label } = body;
  const parts = {
    flange: length * width * body.baseThickness,
    boss: boss ? 2 * (Math.PI / 4) * boss.diameter ** 2 * boss.height : 0,
    rim: (Math.PI / 4) * (rimOuter ** 2 - rimInner.value ** 2) * body.rim.height,
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
