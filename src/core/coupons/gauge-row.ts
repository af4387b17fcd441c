import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { type Bed, type Block, type CouponHole, type CouponHost, couponLength, floorIn } from './coupon.ts';
import { LABEL_CLEARANCE, LABEL_HEIGHT, labelEntries, labelWidth, raisedBy } from './label.ts';

/** Infill between the walls of two neighbours, mm, so that each has its own. */
const INFILL_STRIP = 2;

/** What is asked of a gauge. */
export interface GaugeWish {
  readonly host: CouponHost;
  /** The joint's own hole: its drawn diameter stands in the row. */
  readonly hole: CouponHole;
  readonly count: number;
  readonly step: number;
  readonly bed: Bed;
}

/**
 * Drawn diameters of the row, ascending; the joint's own is the middle one, of an even count the one before it.
 *
 *     D_j = D_CAD + (i − i_m) · step        i_m = ⌊(n + 1)/2⌋
 *
 * @param wish - drawn hole D_CAD [mm], number of bores n [-], step [mm]
 * @returns D_j [mm], one a bore
 * @source own-model row round the joint's own hole
 * @example five round 4.55 mm by 0.05 mm begin at 4.45 mm
 */
export function drawnDiameters({ hole, count, step }: GaugeWish): readonly Derived[] {
  const own = Math.floor((count + 1) / 2);
  return Array.from({ length: count }, (_, place) =>
    couponLength({
      symbol: 'D_j',
      value: hole.drawn.value + (place + 1 - own) * step,
      formula: `${hole.drawn.symbol} + (i − i_m) · step`,
      entries: [
        entryFrom(hole.drawn),
        entry('i', place + 1, '-'),
        entry('i_m', own, '-'),
        entry('step', step, 'mm'),
      ],
    }),
  );
}

/** Plastic round a bore: that of the joint's boss, else its wall, a strip of infill and the wall of the outside. */
function surroundOf({ host, hole }: GaugeWish): Derived {
  const { bossDiameter, wall } = host;
  return bossDiameter === undefined
    ? couponLength({
        symbol: 't_e',
        value: 2 * wall.value + INFILL_STRIP,
        formula: '2 · t + 2 mm',
        entries: [entryFrom(wall)],
      })
    : couponLength({
        symbol: 't_e',
        value: (bossDiameter - hole.drawn.value) / 2,
        formula: `(boss − ${hole.drawn.symbol})/2`,
        entries: [entry('boss', bossDiameter, 'mm'), entryFrom(hole.drawn)],
      });
}

/** Where bores and numbers stand on the face, and its sides, mm. */
export interface GaugeRow extends Block {
  /** Plastic from a bore to the edge and to its neighbour. */
  readonly surround: Derived;
  /** From the edge to the middle of the first bore. */
  readonly edge: Derived;
  readonly pitch: Derived;
  readonly floor: Derived;
  readonly raised: Derived;
  /** Height of the bores' middles and of the numbers' lower edges on the face. */
  readonly middle: number;
  readonly baseline: number;
}

/**
 * The row of a gauge.
 *
 *     e_c = max(D_l/2 + t_e, w_n/2 + 1.5 mm)        p_c = max(D_l + t_e, D_l + 2 · c + 1.5 mm, w_n + 3 mm)
 *     l_c = 2 · e_c + (n − 1) · p_c        w_c = max(D_l + 2 · t_e, D_l + t_e + c + h_n + 3 mm)
 *     h_c = f_c + T + r_n
 *
 * @param wish - host, hole [mm], number of bores n [-]
 * @param diameters - of the bores [mm], ascending
 * @returns places and sides [mm]
 * @source own-model infill between two walls, room round the numbers
 */
export function gaugeRow(wish: GaugeWish, diameters: readonly Derived[]): GaugeRow {
  const { host, hole, count } = wish;
  const { chamfer, depth } = hole;
  const largest = Math.max(...diameters.map(({ value }) => value));
  const mouth = largest + 2 * chamfer.value;
  const widest = labelWidth(count);
  const surround = surroundOf(wish);
  const floor = floorIn(host);
  const raised = raisedBy(host);
  const middle = largest / 2 + surround.value;
  const baseline = middle + mouth / 2 + LABEL_CLEARANCE;
  const common = [entry('D_l', largest, 'mm'), entryFrom(surround)];
  const edge = couponLength({
    symbol: 'e_c',
    value: Math.max(largest / 2 + surround.value, widest / 2 + LABEL_CLEARANCE),
    formula: 'max(D_l/2 + t_e, w_n/2 + 1.5 mm)',
    entries: [...common, labelEntries.width(count)],
  });
  const pitch = couponLength({
    symbol: 'p_c',
    value: Math.max(largest + surround.value, mouth + LABEL_CLEARANCE, widest + 2 * LABEL_CLEARANCE),
    formula: 'max(D_l + t_e, D_l + 2 · c + 1.5 mm, w_n + 3 mm)',
    entries: [...common, entryFrom(chamfer), labelEntries.width(count)],
  });
  return {
    surround,
    edge,
    pitch,
    floor,
    raised,
    middle,
    baseline,
    length: couponLength({
      symbol: 'l_c',
      value: 2 * edge.value + (count - 1) * pitch.value,
      formula: '2 · e_c + (n − 1) · p_c',
      entries: [entryFrom(edge), entry('n', count, '-'), entryFrom(pitch)],
    }),
    width: couponLength({
      symbol: 'w_c',
      value: Math.max(2 * middle, baseline + LABEL_HEIGHT + LABEL_CLEARANCE),
      formula: 'max(D_l + 2 · t_e, D_l + t_e + c + h_n + 3 mm)',
      entries: [...common, entryFrom(chamfer), labelEntries.height],
    }),
    height: couponLength({
      symbol: 'h_c',
      value: floor.value + depth.value + raised.value,
      formula: `f_c + ${depth.symbol} + r_n`,
      entries: [entryFrom(floor), entryFrom(depth), entryFrom(raised)],
    }),
  };
}
