import { type Frame, leastHalfWidth } from './frame.ts';
import { type Levels, sectionLevels } from './levels.ts';
import type { Point, Polyline } from './points.ts';
import type { SectionInput } from './section-input.ts';

export type Variant = 'wide' | 'narrow';

/** A stretch without events that is left out, as in a broken view, mm. */
export interface Cut {
  readonly from: number;
  readonly to: number;
}

/** Where the drawing stands on the sheet; the sheet's unit is one pixel at full width. */
export interface View {
  readonly variant: Variant;
  readonly scale: number;
  readonly axis: number;
  readonly frame: Frame;
  readonly cuts: readonly Cut[];
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  readonly place: (at: Point) => Point;
}

interface Sheet {
  readonly width: number;
  readonly window: { readonly left: number; readonly right: number };
  readonly top: number;
  readonly mostHeight: number;
}

export const sheets: Readonly<Record<Variant, Sheet>> = {
  wide: { width: 900, window: { left: 262, right: 688 }, top: 40, mostHeight: 600 },
  narrow: { width: 358, window: { left: 104, right: 312 }, top: 26, mostHeight: 330 },
};

/** Room between the two edges of a cut, px. */
export const CUT_GAP = 9;
/** Freehand edges depart by this much, px. */
const WOBBLE = { wide: 5.5, narrow: 2.6 };
/** Lengths over the knurl diameter beyond which the middle is left out. */
const LONGEST = { clamped: 2.2, gap: 1.2, floor: 1.7 };

/** The largest scale at which the whole joint fits the sheet's window. */
export function sectionView(input: SectionInput, variant: Variant): View {
  const sheet = sheets[variant];
  const levels = sectionLevels(input);
  const cuts = sectionCuts(input, levels);
  const left = cuts.reduce((sum, { from, to }) => sum + to - from, 0);
  const upper = Math.min(levels.head.top, levels.clamped.top);
  const lower = Math.max(levels.host.bottom, levels.shank.bottom);
  const windowWidth = sheet.window.right - sheet.window.left;
  const room = sheet.mostHeight - cuts.length * CUT_GAP;
  const scale = Math.min(
    windowWidth / 2 / leastHalfWidth(input, variant === 'wide' ? 'ample' : 'tight'),
    room / (lower - upper - left),
  );
  const axis = (sheet.window.left + sheet.window.right) / 2;
  const x = (mm: number) => axis + mm * scale;
  const y = (mm: number) => sheet.top + scale * (mm - upper) - cutShift(mm, cuts, scale);
  return {
    variant,
    scale,
    axis,
    frame: { halfWidth: windowWidth / 2 / scale, wobble: WOBBLE[variant] / scale },
    cuts,
    x,
    y,
    place: (at) => ({ x: x(at.x), y: y(at.y) }),
  };
}

/** How far the cuts above a level draw it up, px. */
function cutShift(level: number, cuts: readonly Cut[], scale: number): number {
  return cuts.reduce((sum, { from, to }) => {
    const passed = Math.min(1, Math.max(0, (level - from) / (to - from)));
    return sum + passed * ((to - from) * scale - CUT_GAP);
  }, 0);
}

function sectionCuts(input: SectionInput, { clamped, gap, floor }: Levels): readonly Cut[] {
  const knurl = input.insert.knurlDiameter;
  return [
    { span: clamped, longest: LONGEST.clamped * knurl },
    { span: gap, longest: LONGEST.gap * knurl },
    { span: floor, longest: LONGEST.floor * knurl },
  ].flatMap(({ span, longest }) => {
    const excess = span.bottom - span.top - longest;
    if (excess < 0.15 * longest) return [];
    const middle = (span.top + span.bottom) / 2;
    return [{ from: middle - excess / 2, to: middle + excess / 2 }];
  });
}

/** The pieces of a falling line that stay when the cuts are taken out, each ending at the edge of a cut. */
export function outsideCuts(line: Polyline, cuts: readonly Cut[]): readonly Polyline[] {
  return cuts.reduce<readonly Polyline[]>(
    (pieces, { from, to }) =>
      pieces
        .flatMap((piece) => [between(piece, -Infinity, from), between(piece, to, Infinity)])
        .filter(({ length }) => length > 1),
    [line],
  );
}

function between(line: Polyline, top: number, bottom: number): Polyline {
  return line.flatMap((corner, index) => {
    const before = line[index - 1];
    const crossings = before
      ? [top, bottom]
          .filter((level) => before.y < level && level < corner.y)
          .map((level) => at(before, corner, level))
      : [];
    return corner.y >= top && corner.y <= bottom ? [...crossings, corner] : crossings;
  });
}

function at(from: Point, to: Point, level: number): Point {
  const share = (level - from.y) / (to.y - from.y);
  return { x: from.x + (to.x - from.x) * share, y: level };
}
