import type { Box, Point } from '../drawing/points.ts';

/** Height of the text of the plan and of its lines, px. */
export const PLAN_TEXT = 13;
export const PLAN_LINE = 15;
/** Width of a figure or letter over the height of the text, for the widest of the faces. */
const LETTER = 0.5;
/** Room between a label and what it belongs to, px. */
const GAP = 5;

export interface WantedLabel {
  readonly id: string;
  readonly lines: readonly string[];
  readonly at: Point;
  /** How far from the point its thing reaches. */
  readonly reach: number;
  /** Whether it may stand farther off: not where it could be taken for that of another thing. */
  readonly mayStray: boolean;
}

export interface PlanLabel {
  readonly id: string;
  readonly lines: readonly string[];
  readonly left: number;
  readonly top: number;
}

const isApart = (one: Box, other: Box): boolean =>
  one.right <= other.left || other.right <= one.left || one.bottom <= other.top || other.bottom <= one.top;

/** Box of a round thing. */
export const boxRound = ({ x, y }: Point, radius: number): Box => ({
  left: x - radius,
  right: x + radius,
  top: y - radius,
  bottom: y + radius,
});

/** Right, left, below, above, and the four corners of a point, in the order of trying. */
const SIDES = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** How much farther off a label may stand when all nearer places are taken, px. */
const FARTHER = [0, 12, 26];

function boxBeside(
  { lines, at, reach }: WantedLabel,
  [x, y]: readonly [number, number],
  farther: number,
): Box {
  const width = Math.max(...lines.map(({ length }) => length)) * LETTER * PLAN_TEXT;
  const height = lines.length * PLAN_LINE;
  const middle = {
    x: at.x + x * (reach + farther + GAP + width / 2),
    y: at.y + y * (reach + farther + GAP + height / 2),
  };
  return {
    left: middle.x - width / 2,
    right: middle.x + width / 2,
    top: middle.y - height / 2,
    bottom: middle.y + height / 2,
  };
}

/**
 * Each label at the first side of its point where it meets nothing and stays on the sheet; one that finds none is left
 * out, for the list beside the plan has it all.
 */
export function placeLabels(
  wanted: readonly WantedLabel[],
  taken: readonly Box[],
  sheet: { readonly width: number; readonly height: number },
): readonly PlanLabel[] {
  const boxes = [...taken];
  return wanted.flatMap((label) => {
    const distances = label.mayStray ? FARTHER : FARTHER.slice(0, 1);
    const candidates = distances.flatMap((farther) => SIDES.map((side) => boxBeside(label, side, farther)));
    const box = candidates.find(
      (candidate) =>
        candidate.left >= 0 &&
        candidate.top >= 0 &&
        candidate.right <= sheet.width &&
        candidate.bottom <= sheet.height &&
        boxes.every((other) => isApart(candidate, other)),
    );
    if (box === undefined) return [];
    boxes.push(box);
    return [{ id: label.id, lines: label.lines, left: box.left, top: box.top }];
  });
}
