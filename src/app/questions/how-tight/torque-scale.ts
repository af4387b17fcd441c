import { torqueNumber } from '../../../wording/amount.ts';
import { niceTicks, tickTexts } from '../../charts/nice-ticks.ts';
import { type Label, labelAt, meet, rowsOf, thinned } from './scale-labels.ts';

/** A torque that the scale names, N·mm. */
export interface Mark {
  readonly torque: number;
  readonly text: string;
}

export interface ScaleInput {
  readonly width: number;
  readonly least: Mark;
  readonly most: Mark;
  readonly dial?: Mark;
  /** Smallest torque at which the screw may break; named where the scale reaches it. */
  readonly breaking?: Mark;
  /** Settings of the tool, N·mm. */
  readonly settings: readonly number[];
}

export interface PlacedMark {
  readonly x: number;
  readonly torque: number;
  /** Absent where there is no room for it. */
  readonly label?: Label;
}

export interface ScaleLayout {
  readonly height: number;
  /** Level of the scale's line, px. */
  readonly axis: number;
  readonly ticks: readonly PlacedMark[];
  readonly unit: Label;
  /** least and most, and breaking where the scale reaches it, each with its label. */
  readonly ends: readonly (PlacedMark & { readonly label: Label })[];
  readonly dial?: PlacedMark & { readonly label: Label };
  readonly settings: readonly PlacedMark[];
}

const SIDE = 14;
const MARK_SIZE = 16;
const DIAL_SIZE = 22;
const TICK_SIZE = 13;
const ROW = 22;
const ROWS_ABOVE_AXIS = 26;
const TICKS_BELOW_AXIS = 24;
const SETTINGS_BELOW_AXIS = 64;
const UNIT = 'N·m';
/** How far beyond the window the scale runs. */
const BEYOND = 1.5;
const NARROW = 600;

interface Scale {
  readonly width: number;
  readonly greatest: number;
  readonly xOf: (torque: number) => number;
}

/** Where everything on the torque scale stands, so that no two labels meet at any width. */
export function torqueScale(input: ScaleInput): ScaleLayout {
  const { width, least, most, dial, settings } = input;
  const top = BEYOND * Math.max(least.torque, most.torque, dial?.torque ?? 0);
  const torques = niceTicks(top, width < NARROW ? 4 : 8);
  const greatest = torques.at(-1) ?? top;
  const scale: Scale = { width, greatest, xOf: (torque) => SIDE + (torque / greatest) * (width - 2 * SIDE) };
  const { ends, rowCount } = endsOf(input, scale);
  const axis = (dial ? DIAL_SIZE + 8 : 0) + rowCount * ROW + ROWS_ABOVE_AXIS - 4;
  const shown = settings.filter((torque) => torque <= greatest);
  return {
    height: axis + (shown.length > 0 ? SETTINGS_BELOW_AXIS + 8 : TICKS_BELOW_AXIS + 10),
    axis,
    ...ticksOf(torques, scale, axis + TICKS_BELOW_AXIS),
    ends: ends.map(({ row, label, ...end }) => ({
      ...end,
      label: { ...label, baseline: axis - ROWS_ABOVE_AXIS - row * ROW },
    })),
    ...(dial ? { dial: placed(dial, scale, { side: 'over', size: DIAL_SIZE, baseline: DIAL_SIZE }) } : {}),
    settings: thinnedMarks(
      shown.map((torque) => ({ torque, text: torqueNumber(torque) })),
      scale,
      axis + SETTINGS_BELOW_AXIS,
      dial?.torque,
    ),
  };
}

function placed(
  mark: Mark,
  { width, xOf }: Scale,
  place: { readonly side: 'before' | 'after' | 'over'; readonly size: number; readonly baseline: number },
): PlacedMark & { readonly label: Label } {
  const x = xOf(mark.torque);
  return { x, torque: mark.torque, label: labelAt(mark.text, { ...place, x, within: width }) };
}

/** The two ends outside of the window, the breaking torque beyond; in as many rows as they need. */
function endsOf({ least, most, breaking }: ScaleInput, scale: Scale) {
  const leastFirst = least.torque <= most.torque;
  const at = { size: MARK_SIZE, baseline: 0 };
  const ends = [
    placed(least, scale, { ...at, side: leastFirst ? 'before' : 'after' }),
    placed(most, scale, { ...at, side: leastFirst ? 'after' : 'before' }),
    ...(breaking && breaking.torque <= scale.greatest
      ? [placed(breaking, scale, { ...at, side: 'after' })]
      : []),
  ];
  const rows = rowsOf(ends.map(({ label }) => label));
  return {
    ends: ends.map((end, index) => ({ ...end, row: rows[index] ?? 0 })),
    rowCount: Math.max(...rows) + 1,
  };
}

function ticksOf(torques: readonly number[], scale: Scale, baseline: number) {
  const text = { size: TICK_SIZE, baseline, within: scale.width };
  const unit = labelAt(UNIT, { ...text, x: scale.width, side: 'before' });
  const atEnd = { ...unit, left: scale.width - unit.width };
  const texts = tickTexts(torques, 'N·m');
  const marks = torques.map((torque, index) => ({ torque, text: texts[index] ?? '' }));
  const ticks = thinnedMarks(marks, scale, baseline, 0);
  return {
    unit: atEnd,
    ticks: ticks.map(({ label, ...tick }) =>
      label === undefined || meet(label, atEnd) ? tick : { ...tick, label },
    ),
  };
}

/** Marks on one line under the scale; those without room keep their mark and lose their figure. */
function thinnedMarks(
  given: readonly Mark[],
  scale: Scale,
  baseline: number,
  wanted: number | undefined,
): readonly PlacedMark[] {
  const marks = given.map((mark) => placed(mark, scale, { side: 'over', size: TICK_SIZE, baseline }));
  const first = marks.find(({ torque }) => torque === wanted)?.label;
  const kept = thinned(
    marks.map(({ label }) => label),
    (label) => label === first,
  );
  return marks.map(({ label, ...mark }) => (kept.has(label) ? { ...mark, label } : mark));
}
