import type { DimensionId } from './dimension-ids.ts';
import type { Levels, Span } from './levels.ts';
import type { SectionInput } from './section-input.ts';
import type { View } from './view.ts';

/** A vertical length that is dimensioned, and where its extension lines start. */
export interface UprightDimension {
  readonly id: DimensionId;
  /** px */
  readonly span: Span;
  /** From the axis, mm: where its extension lines start. */
  readonly startTop: number;
  readonly startBottom: number;
}

/** What follows and is shorter than this is no length to read on paper, px. */
const LEAST_SEEN = 3;
/** What a person has opened stays open to them, however small. */
const isGiven = (id: DimensionId) => id === 'gap' || id === 'sunk';

/** The chain from the clamped part down to the foot of the printed one; what has no length is not in it. */
export function chainDimensions(
  input: SectionInput,
  levels: Levels,
  view: View,
): readonly UprightDimension[] {
  const { frame } = view;
  const edge = frame.halfWidth;
  const bore = input.hole.borePrinted / 2;
  const pilot = input.insert.pilotDiameter / 2;
  const isNear = input.insert.side === 'near-side';
  const sunk: [DimensionId, Span] = [
    'sunk',
    isNear
      ? { top: 0, bottom: levels.insert.top }
      : { top: levels.insert.bottom, bottom: levels.host.bottom },
  ];
  const near: readonly [DimensionId, Span][] = [
    sunk,
    ['insert-length', levels.insert],
    ['well', levels.well],
    ['floor', levels.floor],
  ];
  const spans: readonly [DimensionId, Span][] = [
    ['clamped-thickness', levels.clamped],
    ['gap', levels.gap],
    ...(isNear ? near : [...near].reverse()),
  ];
  const isFace = (level: number) => level === levels.host.top || level === levels.host.bottom;
  const start = (level: number) => {
    if (isFace(level)) return edge;
    if (level === levels.insert.top || level === levels.insert.bottom) return pilot;
    return level === levels.hole.top || level === levels.hole.bottom ? bore : edge;
  };
  return spans
    .filter(
      ([id, { top, bottom }]) => bottom > top && (isGiven(id) || (bottom - top) * view.scale >= LEAST_SEEN),
    )
    .map(([id, { top, bottom }]) => ({
      id,
      span: { top: view.y(top), bottom: view.y(bottom) },
      startTop: start(top),
      startBottom: start(bottom),
    }));
}

/** Lengths that overlap others and need a line of their own, the shortest first. */
export function columnDimensions(
  input: SectionInput,
  levels: Levels,
  view: View,
): readonly UprightDimension[] {
  const edge = view.frame.halfWidth;
  const isNear = input.insert.side === 'near-side';
  const bore = input.hole.borePrinted / 2;
  const measuredFrom = input.screw.head.shape === 'countersunk' ? levels.head.top : levels.shank.top;
  const px = ({ top, bottom }: Span) => ({ top: view.y(top), bottom: view.y(bottom) });
  const hole: UprightDimension = {
    id: 'hole-depth',
    span: px(levels.hole),
    startTop: isNear ? edge : bore,
    startBottom: isNear ? bore : edge,
  };
  if (view.variant === 'narrow') return [hole];
  const screw: UprightDimension = {
    id: 'screw-length',
    span: px({ top: measuredFrom, bottom: levels.shank.bottom }),
    startTop: edge,
    startBottom: input.screw.minorDiameter / 2,
  };
  const part: UprightDimension = {
    id: 'host-thickness',
    span: px(levels.host),
    startTop: edge,
    startBottom: edge,
  };
  return [screw, hole, part].sort((a, b) => spanLength(a) - spanLength(b));
}

export const spanLength = ({ span }: UprightDimension) => span.bottom - span.top;
export const middleOf = ({ span }: UprightDimension) => (span.top + span.bottom) / 2;
