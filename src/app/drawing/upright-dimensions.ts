import { type Arrangement, labelSize, mainDimensions } from './label-size.ts';
import type { Levels } from './levels.ts';
import {
  type DimensionGroup,
  type DimensionLine,
  EXTENSION_OVERRUN,
  freeOf,
  LEAST_FOR_ARROWS,
  type PlacedLabel,
  type PlainLine,
  sharedOnce,
} from './placed.ts';
import { point } from './points.ts';
import type { SectionInput } from './section-input.ts';
import { spread } from './spread.ts';
import {
  chainDimensions,
  columnDimensions,
  middleOf,
  spanLength,
  type UprightDimension,
} from './upright-spans.ts';
import { sheets, type View } from './view.ts';

/** From one column of dimension lines to the next, and from the chain to the drawing, px. */
const PITCH = { wide: 60, narrow: 49 };
const CHAIN_FROM_WINDOW = { wide: 56, narrow: 31 };
const LABEL_GAP = 3;

/** Vertical dimensions left of the drawing: a chain next to it, then single ones, the shortest innermost. */
export function uprightDimensions(
  input: SectionInput,
  levels: Levels,
  view: View,
  height: number,
): DimensionGroup {
  const chain = chainDimensions(input, levels, view);
  const chainX = sheets[view.variant].window.left - CHAIN_FROM_WINDOW[view.variant];
  const placed = chainLabels(input, chain, { view, chainX, height });
  const columns = columnDimensions(input, levels, view);
  const singles = placeColumns(input, columns, { view, chainX, placed, height });
  const extensions = [
    ...chain.flatMap((each) => extensionLines(each, chainX, view)),
    ...columns.flatMap((each, index) => extensionLines(each, singles[index]?.middle.x ?? 0, view)),
  ];
  return {
    labels: [...placed, ...singles],
    lines: [
      ...chain.map((each, index) =>
        chainLine(each, chainX, { isFirst: index === 0, isLast: index === chain.length - 1 }),
      ),
      ...columns.map((each, index) => uprightLine(each, singles[index]?.middle.x ?? 0, 'inside')),
    ],
    extensions: sharedOnce(extensions),
    ties: chain.flatMap((each, index) => tie(each, placed[index], chainX)),
  };
}

interface ChainPlace {
  readonly view: View;
  readonly chainX: number;
  readonly height: number;
}

function chainLabels(
  input: SectionInput,
  chain: readonly UprightDimension[],
  { view, chainX, height }: ChainPlace,
): readonly PlacedLabel[] {
  const { variant } = view;
  const sized = chain.map((each) => {
    const isTiny = spanLength(each) < LEAST_FOR_ARROWS;
    const isShort = spanLength(each) < 60 && !isTiny && variant === 'wide';
    const arrangement: Arrangement = isShort ? 'row' : 'block';
    return { each, isTiny, arrangement, ...labelSize(input, each.id, { variant, arrangement }) };
  });
  const middles = spread(
    sized.map(({ each, height: size }) => ({ ideal: middleOf(each), size })),
    { from: 2, to: height - 2, gap: LABEL_GAP },
  );
  return sized.map(({ each, isTiny, arrangement, width, height: own }, index) => ({
    id: each.id,
    // Beside its line where the line would vanish behind it.
    middle: point(isTiny && variant === 'wide' ? chainX + 5 + width / 2 : chainX, middles[index] ?? 0),
    width,
    height: own,
    arrangement,
    isMain: false,
  }));
}

interface ColumnPlace extends ChainPlace {
  readonly placed: readonly PlacedLabel[];
}

/** Room left free at the edge of the sheet, px. */
const EDGE = 2;

function placeColumns(
  input: SectionInput,
  columns: readonly UprightDimension[],
  { view, chainX, placed, height }: ColumnPlace,
): readonly PlacedLabel[] {
  const { variant } = view;
  const labels: PlacedLabel[] = [];
  for (const each of columns) {
    const size = labelSize(input, each.id, { variant, arrangement: 'block' });
    const outer = (labels.at(-1)?.middle.x ?? chainX) - PITCH[variant];
    const label: PlacedLabel = {
      id: each.id,
      middle: point(Math.max(outer, EDGE + size.width / 2), middleOf(each)),
      ...size,
      arrangement: 'block',
      isMain: mainDimensions.includes(each.id),
    };
    labels.push(freeOf(label, [...placed, ...labels], [each.span, { top: 0, bottom: height }]));
  }
  return labels;
}

function uprightLine({ span }: UprightDimension, x: number, arrow: 'inside' | 'outside'): DimensionLine {
  return { from: point(x, span.top), to: point(x, span.bottom), fromArrow: arrow, toArrow: arrow };
}

/** In a chain the neighbours' arrows bound a short piece; its own go outside only at the ends of the chain. */
function chainLine(
  each: UprightDimension,
  x: number,
  { isFirst, isLast }: { readonly isFirst: boolean; readonly isLast: boolean },
): DimensionLine {
  if (spanLength(each) >= LEAST_FOR_ARROWS) return uprightLine(each, x, 'inside');
  const line = uprightLine(each, x, 'outside');
  return { ...line, fromArrow: isFirst ? 'outside' : 'none', toArrow: isLast ? 'outside' : 'none' };
}

function extensionLines(
  { span, startTop, startBottom }: UprightDimension,
  x: number,
  view: View,
): readonly PlainLine[] {
  const from = (mm: number) => view.x(-mm) - 4;
  const to = x - EXTENSION_OVERRUN;
  return [
    { from: point(from(startTop), span.top), to: point(to, span.top) },
    { from: point(from(startBottom), span.bottom), to: point(to, span.bottom) },
  ];
}

/** A value that no longer stands beside what it measures keeps a thin tie to it. */
function tie(each: UprightDimension, label: PlacedLabel | undefined, x: number): readonly PlainLine[] {
  if (!label) return [];
  const middle = middleOf(each);
  if (Math.abs(label.middle.y - middle) <= label.height / 2) return [];
  const edge = label.middle.y + (Math.sign(middle - label.middle.y) * label.height) / 2;
  return [{ from: point(x, middle), to: point(label.middle.x, edge) }];
}
