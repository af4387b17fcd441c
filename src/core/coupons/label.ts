import { type Derived, type Entry, entry } from '../sources/derived.ts';
import { type CouponHost, inLayers } from './coupon.ts';

/** A corner of an outline in the plane of a face, mm. */
export type Corner = readonly [across: number, up: number];

/** Closed line round a plane shape, counter-clockwise, its last corner joined to the first. */
export type Corners = readonly Corner[];

/** Width of a stroke and of what lies between two, mm: two lines of a 0.4 mm nozzle and a little. */
export const STROKE = 0.9;
/** How far a number stands out of its face, mm. */
const RAISED = 0.6;
/** A digit is so many strokes wide, high, and apart from the next. */
const [WIDE, HIGH, APART] = [4, 6, 1];
/** Room between a number and whatever is beside it, mm. */
export const LABEL_CLEARANCE = 1.5;

export const LABEL_HEIGHT = HIGH * STROKE;

/** A digit in strokes: outlines of islands, then outlines of what is left open in them. */
interface Shape {
  readonly island: Corners;
  readonly openings: readonly Corners[];
}

const turnedRound = (corners: Corners): Corners => corners.map(([x, y]) => [WIDE - x, HIGH - y]);

const box = (left: number, bottom: number, right: number, top: number): Corners => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

const ROUNDED: Corners = [
  [0.7, 0],
  [3.3, 0],
  [4, 0.7],
  [4, 5.3],
  [3.3, 6],
  [0.7, 6],
  [0, 5.3],
  [0, 0.7],
];

const SIX: Corners = [
  [0.7, 0],
  [3.3, 0],
  [4, 0.7],
  [4, 2.8],
  [3.3, 3.5],
  [1, 3.5],
  [1, 5],
  [3.8, 5],
  [3.8, 6],
  [0.7, 6],
  [0, 5.3],
  [0, 0.7],
];

// Drawn for this program: bars of one stroke, corners cut so that no two digits are one another mirrored or half hidden.
const SHAPES: readonly Shape[] = [
  { island: ROUNDED, openings: [box(1, 1, 3, 5)] },
  // biome-ignore format: a shape is read as a row of corners
  { island: [[1.6, 0], [2.8, 0], [2.8, 6], [1.7, 6], [0.4, 4.7], [0.4, 3.1], [1.6, 4.3]], openings: [] },
  // biome-ignore format: a shape is read as a row of corners
  { island: [[0, 0], [4, 0], [4, 1], [1, 1], [1, 2.5], [3.3, 2.5], [4, 3.2], [4, 5.3], [3.3, 6], [0.2, 6], [0.2, 5], [3, 5], [3, 3.5], [0.7, 3.5], [0, 2.8]], openings: [] },
  // biome-ignore format: a shape is read as a row of corners
  { island: [[0.2, 0], [3.3, 0], [4, 0.7], [4, 5.3], [3.3, 6], [0.2, 6], [0.2, 5], [3, 5], [3, 3.5], [0.9, 3.5], [0.9, 2.5], [3, 2.5], [3, 1], [0.2, 1]], openings: [] },
  // biome-ignore format: a shape is read as a row of corners
  { island: [[2.6, 0], [3.6, 0], [3.6, 6], [2.6, 6], [2.6, 2.9], [1, 2.9], [1, 6], [0, 6], [0, 1.9], [2.6, 1.9]], openings: [] },
  // biome-ignore format: a shape is read as a row of corners
  { island: [[0.2, 0], [3.3, 0], [4, 0.7], [4, 2.8], [3.3, 3.5], [1, 3.5], [1, 5], [3.8, 5], [3.8, 6], [0, 6], [0, 2.5], [3, 2.5], [3, 1], [0.2, 1]], openings: [] },
  { island: SIX, openings: [box(1, 1, 3, 2.5)] },
  // biome-ignore format: a shape is read as a row of corners
  { island: [[0.9, 0], [2.1, 0], [4, 5], [4, 6], [0, 6], [0, 5], [2.8, 5]], openings: [] },
  { island: ROUNDED, openings: [box(1, 1, 3, 2.5), box(1, 3.5, 3, 5)] },
  { island: turnedRound(SIX), openings: [turnedRound(box(1, 1, 3, 2.5))] },
];

const digitsOf = (number: number): readonly number[] => String(number).split('').map(Number);

/**
 * Width of a number as it stands on a coupon, as a plain number.
 *
 *     W = (4 · k + k − 1) · stroke        k digits
 *
 * @param number - a whole number [-], ≥ 0
 * @returns W [mm]
 * @source own-model alphabet of bars
 * @example one digit is 3.6 mm wide
 */
export function labelWidth(number: number): number {
  const digits = digitsOf(number).length;
  return (digits * WIDE + (digits - 1) * APART) * STROKE;
}

/** A number on a face: where it stands and how far it rises. */
export interface Label {
  readonly number: number;
  /** Middle of its lower edge, mm. */
  readonly at: Corner;
  readonly raised: number;
}

/** The outlines of a number where it stands; openings lie inside an island. */
export function labelOutlines({ number, at: [across, up] }: Label): readonly Corners[] {
  const left = across - labelWidth(number) / 2;
  return digitsOf(number).flatMap((digit, place) => {
    const { island, openings } = SHAPES[digit] ?? { island: [], openings: [] };
    return [island, ...openings].map((corners) =>
      corners.map(([x, y]): Corner => [left + (place * (WIDE + APART) + x) * STROKE, up + y * STROKE]),
    );
  });
}

/** Area inside an outline, by the sum over its corners, mm². */
export const areaWithin = (corners: Corners): number =>
  corners.reduce((sum, [x, y], place) => {
    const [nextX, nextY] = corners[(place + 1) % corners.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/**
 * Plastic in a raised number, as a plain number.
 *
 * @param label - number, how far it rises [mm]
 * @returns V [mm³]
 * @source own-model alphabet of bars
 */
export const labelVolume = ({ number, raised }: Pick<Label, 'number' | 'raised'>): number =>
  digitsOf(number).reduce((sum, digit) => {
    const { island, openings } = SHAPES[digit] ?? { island: [], openings: [] };
    const area = areaWithin(island) - openings.reduce((open, corners) => open + areaWithin(corners), 0);
    return sum + area * STROKE ** 2 * raised;
  }, 0);

/**
 * How far a number stands out of its face: up to whole layers where it lies on top of the print.
 *
 *     r_n = ⌈0.6 mm/h⌉ · h        upright; 0.6 mm where it lies
 *
 * @param host - axis of the insert, layer height h [mm]
 * @returns r_n [mm], ≥ 0.6
 * @source own-model three layers of 0.2 mm
 */
export const raisedBy = (host: Pick<CouponHost, 'axis' | 'layerHeight'>): Derived =>
  inLayers({ symbol: 'r_n', value: RAISED, formula: '0.6 mm', entries: [] }, host);

/** Width and height of a number, to put into a formula. */
export const labelEntries = {
  width: (number: number): Entry => entry('w_n', labelWidth(number), 'mm'),
  height: entry('h_n', LABEL_HEIGHT, 'mm'),
} as const;
