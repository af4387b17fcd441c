import type { DimensionId } from './dimension-ids.ts';
import type { Arrangement } from './label-size.ts';
import type { Point } from './points.ts';

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
const CLEAR = 3;
/** Way of one try up or down along the dimension line, px. */
const TRY = 4;

/** The same value, moved up or down its dimension line as little as needed to keep clear of others. */
export function freeOf(label: PlacedLabel, others: readonly PlacedLabel[], height: number): PlacedLabel {
  const room = height / TRY;
  const ways = Array.from(
    { length: 2 * room },
    (_, index) => Math.ceil(index / 2) * (index % 2 === 0 ? -TRY : TRY),
  );
  const moved = ways
    .map((way) => ({ ...label, middle: { x: label.middle.x, y: label.middle.y + way } }))
    .find(
      (each) =>
        each.middle.y - each.height / 2 >= 0 &&
        each.middle.y + each.height / 2 <= height &&
        others.every((other) => !touches(each, other)),
    );
  return moved ?? label;
}

function touches(one: PlacedLabel, other: PlacedLabel): boolean {
  return (
    Math.abs(one.middle.x - other.middle.x) < (one.width + other.width) / 2 + CLEAR &&
    Math.abs(one.middle.y - other.middle.y) < (one.height + other.height) / 2 + CLEAR
  );
}
