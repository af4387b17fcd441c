import type { DimensionId } from './dimension-ids.ts';
import type { Arrangement } from './label-size.ts';
import type { Span } from './levels.ts';
import { type Point, point } from './points.ts';

/** A value in its place; px of the sheet. */
export interface PlacedLabel {
  readonly id: DimensionId;
  readonly middle: Point;
  readonly width: number;
  readonly height: number;
  readonly arrangement: Arrangement;
  readonly isMain: boolean;
}

export type ArrowPlace = 'inside' | 'outside' | 'none';

/** A dimension line between two points on one level or upright. */
export interface DimensionLine {
  readonly from: Point;
  readonly to: Point;
  readonly fromArrow: ArrowPlace;
  readonly toArrow: ArrowPlace;
}

export interface PlainLine {
  readonly from: Point;
  readonly to: Point;
}

export interface DimensionGroup {
  readonly labels: readonly PlacedLabel[];
  readonly lines: readonly DimensionLine[];
  readonly extensions: readonly PlainLine[];
  /** From a value that had to move to what it measures. */
  readonly ties: readonly PlainLine[];
}

/** Below this many px between two extension lines arrows go outside. */
export const LEAST_FOR_ARROWS = 26;
/** An extension line reaches past its dimension line by this much, px. */
export const EXTENSION_OVERRUN = 6;

/** A shared extension line is drawn once: lines on one another become one that covers them all. */
export function sharedOnce(lines: readonly PlainLine[]): readonly PlainLine[] {
  const isUpright = ({ from, to }: PlainLine) => from.x === to.x;
  const key = (line: PlainLine) =>
    isUpright(line) ? `x ${line.from.x.toFixed(1)}` : `y ${line.from.y.toFixed(1)}`;
  const shared = new Map<string, PlainLine>();
  for (const line of lines) {
    const other = shared.get(key(line));
    shared.set(key(line), other ? covering(line, other) : line);
  }
  return [...shared.values()];
}

function covering(one: PlainLine, other: PlainLine): PlainLine {
  const ends = [one.from, one.to, other.from, other.to].sort((a, b) => a.x - b.x || a.y - b.y);
  return { from: ends[0] ?? one.from, to: ends[3] ?? one.to };
}

/** Room kept between two values, px. */
const CLEAR = 2;
/** Way of one try up or down along the dimension line, px. */
const TRY = 4;

/**
 * The same value, moved up or down its dimension line as little as needed to keep clear of others: inside the
 * first of the spans where there is such a place.
 */
export function freeOf(
  label: PlacedLabel,
  others: readonly PlacedLabel[],
  spans: readonly Span[],
): PlacedLabel {
  const half = label.height / 2;
  for (const { top, bottom } of spans) {
    for (const way of ways(bottom - top)) {
      const y = label.middle.y + way;
      if (y - half < top || y + half > bottom) continue;
      const moved = { ...label, middle: point(label.middle.x, y) };
      if (!others.some((other) => touches(moved, other))) return moved;
    }
  }
  return label;
}

/** No way, then a little up and down, then more. */
function* ways(length: number): Generator<number> {
  yield 0;
  for (let way = TRY; way < length + TRY; way += TRY) {
    yield -way;
    yield way;
  }
}

function touches(one: PlacedLabel, other: PlacedLabel): boolean {
  return (
    Math.abs(one.middle.x - other.middle.x) < (one.width + other.width) / 2 + CLEAR &&
    Math.abs(one.middle.y - other.middle.y) < (one.height + other.height) / 2 + CLEAR
  );
}
