import type { DimensionId } from './dimension-ids.ts';
import { bossSpans } from './frame.ts';
import { labelSize, mainDimensions } from './label-size.ts';
import {
  type DimensionGroup,
  type DimensionLine,
  EXTENSION_OVERRUN,
  type PlacedLabel,
  type PlainLine,
  sharedOnce,
} from './placed.ts';
import { extent, point } from './points.ts';
import type { SectionGeometry } from './section-geometry.ts';
import type { SectionInput } from './section-input.ts';
import { sheets, type View } from './view.ts';

/** From the lowest edge to the first row below the drawing, and from row to row, px. */
const FIRST_ROW = { wide: 44, narrow: 34 };
const ROW = { wide: 42, narrow: 36 };
/** Room beside a value that its line needs for arrows, px. */
const ARROWS_BESIDE = { wide: 24, narrow: 12 };

interface LevelDimension {
  readonly id: DimensionId;
  readonly radius: number;
  /** Level where the extension lines start, mm. */
  readonly start: number;
}

export interface LevelGroup extends DimensionGroup {
  /** Where its rows begin and end, px. */
  readonly top: number;
  readonly bottom: number;
}

/** Hole and boss below the drawing, the narrowest first; the printed bore inside its well when it has room there. */
export function levelDimensions(input: SectionInput, geometry: SectionGeometry, view: View): LevelGroup {
  const inside = boreInside(input, geometry, view);
  const rows = rowDimensions(input, geometry, view, inside === undefined);
  const lowest = view.y(Math.max(geometry.levels.host.bottom, geometry.levels.shank.bottom));
  const placed = rows.map((each, index) =>
    rowLabel(input, each, { view, y: lowest + FIRST_ROW[view.variant] + index * ROW[view.variant] }),
  );
  const extensions = rows.flatMap(({ radius, start }, index): readonly PlainLine[] =>
    [-radius, radius].map((x) => ({
      from: point(view.x(x), view.y(start)),
      to: point(view.x(x), (placed[index]?.line.from.y ?? 0) + EXTENSION_OVERRUN),
    })),
  );
  const all = [...(inside ? [inside] : []), ...placed];
  return {
    labels: all.map(({ label }) => label),
    lines: all.map(({ line }) => line),
    extensions: sharedOnce(extensions),
    ties: [],
    top: lowest + FIRST_ROW[view.variant] - 16,
    bottom: lowest + FIRST_ROW[view.variant] + (rows.length - 1) * ROW[view.variant] + 22,
  };
}

interface PlacedRow {
  readonly label: PlacedLabel;
  readonly line: DimensionLine;
}

function rowDimensions(
  input: SectionInput,
  { levels }: SectionGeometry,
  view: View,
  withPrinted: boolean,
): readonly LevelDimension[] {
  const { hole, host, insert } = input;
  const holeStart = insert.side === 'near-side' ? levels.hole.bottom : levels.host.bottom;
  const bossStart = bossSpans(input)?.boss.bottom ?? holeStart;
  const rows: readonly LevelDimension[] = [
    ...(withPrinted && view.variant === 'wide'
      ? [{ id: 'bore-printed' as const, radius: hole.borePrinted / 2, start: holeStart }]
      : []),
    { id: 'bore-drawn', radius: hole.boreDrawn / 2, start: holeStart },
    { id: 'boss-least', radius: hole.bossLeast / 2, start: bossStart },
    ...(host.bossDiameter === undefined
      ? []
      : [{ id: 'boss-diameter' as const, radius: host.bossDiameter / 2, start: bossStart }]),
  ];
  return [...rows].sort((a, b) => a.radius - b.radius);
}

function rowLabel(
  input: SectionInput,
  { id, radius }: LevelDimension,
  { view, y }: { readonly view: View; readonly y: number },
): PlacedRow {
  const { variant } = view;
  const size = labelSize(input, id, { variant, arrangement: 'row' });
  const left = view.x(-radius);
  const right = view.x(radius);
  const fits = right - left >= size.width + ARROWS_BESIDE[variant];
  const line: DimensionLine = {
    from: point(left, y),
    to: point(right, y),
    fromArrow: fits ? 'inside' : 'outside',
    toArrow: fits ? 'inside' : 'outside',
  };
  const middle = fits
    ? view.axis
    : besideMiddle({ left, right, width: size.width, sheet: sheets[variant].width });
  return {
    label: { id, middle: point(middle, y), ...size, arrangement: 'row', isMain: mainDimensions.includes(id) },
    line,
  };
}

/** Length of an outside arrow with some room beside it, px. */
const OUTSIDE_ARROW = 26;

interface Beside {
  readonly left: number;
  readonly right: number;
  readonly width: number;
  readonly sheet: number;
}

/** Middle of a value that its dimension line is too short for: at the right of it, or left where the sheet ends. */
function besideMiddle({ left, right, width, sheet }: Beside): number {
  const atRight = right + OUTSIDE_ARROW + width;
  return atRight <= sheet - 2 ? atRight - width / 2 : left - OUTSIDE_ARROW - width / 2;
}

/** The printed bore's value in the empty part of the well, or nothing when there is no room for it. */
function boreInside(
  input: SectionInput,
  { levels, melt }: SectionGeometry,
  view: View,
): PlacedRow | undefined {
  if (view.variant === 'narrow' || input.insert.side === 'far-side') return undefined;
  const size = labelSize(input, 'bore-printed', { variant: 'wide', arrangement: 'row' });
  const lumps = melt.bulges.map((bulge) => extent(bulge).bottom);
  const free = Math.max(levels.insert.bottom, levels.shank.bottom, ...lumps);
  const room = view.y(levels.hole.bottom) - view.y(free);
  const width = 2 * (view.x(input.hole.borePrinted / 2) - view.axis);
  if (room < size.height + 6 || width < size.width + ARROWS_BESIDE.wide) return undefined;
  const y = view.y(levels.hole.bottom) - Math.max(size.height / 2 + 4, Math.min(room / 2, 18));
  return rowLabel(input, { id: 'bore-printed', radius: input.hole.borePrinted / 2, start: 0 }, { view, y });
}
