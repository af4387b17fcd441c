import { bossSpans, type Frame, needsSupports, supportFoot, supportRadius } from './frame.ts';
import { uprightFreehand } from './freehand.ts';
import type { Levels } from './levels.ts';
import { mirrored, type Outline, type Point, type Polyline, point } from './points.ts';
import type { SectionInput } from './section-input.ts';

export interface HostShapes {
  /** The printed part with its hole filled in. */
  readonly body: Outline;
  /** What holds the clamped part over an open gap. */
  readonly supports: readonly Outline[];
  /** Hole as printed, empty. */
  readonly hole: Outline;
  readonly holeEdges: readonly Polyline[];
  /** Hole as drawn, where no insert hides it. */
  readonly drawnHole: readonly Polyline[];
  readonly edges: readonly Polyline[];
  readonly breakEdges: readonly Polyline[];
}

/** The printed part: outline, hole, and the edges that are seen. */
export function hostShapes(input: SectionInput, levels: Levels, frame: Frame): HostShapes {
  const body = bodyEdge(input, frame);
  const supports = supportEdge(input, levels, frame);
  const breaks = [body.breakEdge, ...(supports ? [supports.breakEdge] : [])];
  return {
    body: [...body.edge, ...[...mirrored(body.edge)].reverse()],
    supports: supports ? [mirrored(supports.outline), supports.outline] : [],
    hole: symmetricHole(input, levels),
    holeEdges: holeEdges(input, levels).flatMap(withMirror),
    drawnHole: drawnHole(input, levels).flatMap(withMirror),
    edges: [...faceEdges(input, levels, frame), ...(supports ? [supports.edge] : [])].flatMap(withMirror),
    breakEdges: breaks.flatMap(withMirror),
  };
}

export const withMirror = (line: Polyline): readonly Polyline[] => [mirrored(line), line];

interface BodyEdge {
  /** Right edge of the body from the face to the bottom. */
  readonly edge: readonly Point[];
  readonly breakEdge: Polyline;
}

function bodyEdge(input: SectionInput, frame: Frame): BodyEdge {
  const { thickness, bossDiameter } = input.host;
  const spans = bossSpans(input);
  if (!spans || bossDiameter === undefined) {
    const breakEdge = freehand(frame, 0, thickness);
    return { edge: breakEdge, breakEdge };
  }
  const breakEdge = freehand(frame, spans.plate.top, spans.plate.bottom);
  const side = [point(bossDiameter / 2, spans.boss.top), point(bossDiameter / 2, spans.boss.bottom)];
  const isUnder = spans.plate.top > spans.boss.top;
  return { edge: isUnder ? [...side, ...breakEdge] : [...breakEdge, ...side], breakEdge };
}

function freehand({ halfWidth, wobble }: Frame, from: number, to: number): Polyline {
  return uprightFreehand({ at: halfWidth, from, to, wobble, step: 2.6 * wobble, seed: 3 });
}

function supportEdge(input: SectionInput, { gap }: Levels, frame: Frame) {
  if (!needsSupports(input)) return undefined;
  const inner = supportRadius(input, frame);
  const foot = supportFoot(input);
  const breakEdge = freehand(frame, gap.top, foot);
  return {
    outline: [...breakEdge, point(inner, foot), point(inner, gap.top)],
    edge: [point(frame.halfWidth, gap.top), point(inner, gap.top), point(inner, foot)],
    breakEdge,
  };
}

/** Radius of the bore above the shoulder of a far side; never wider than the hole. */
export function throughRadius({ clamped, hole }: SectionInput): number {
  return Math.min(clamped.clearanceHole, hole.borePrinted) / 2;
}

function symmetricHole(input: SectionInput, { hole }: Levels): Outline {
  const radius = input.hole.borePrinted / 2;
  const right = [point(radius, hole.top), point(radius, hole.bottom)];
  const through = throughRadius(input);
  const isThrough = input.insert.side === 'far-side' && hole.top > 0;
  const edge = isThrough ? [point(through, 0), point(through, hole.top), ...right] : right;
  return [...edge, ...[...mirrored(edge)].reverse()];
}

/** Right half of the hole's visible edges: well, end of the hole, and the part above a sunk insert. */
function holeEdges(input: SectionInput, { hole, insert, host, well }: Levels): readonly Polyline[] {
  const radius = input.hole.borePrinted / 2;
  const isSunk = input.insert.sunk > 0;
  if (input.insert.side === 'far-side') {
    const through = throughRadius(input);
    return [
      [point(radius, well.bottom), point(radius, hole.top), point(through, hole.top), point(through, 0)],
      ...(isSunk ? [[point(radius, insert.bottom), point(radius, host.bottom)]] : []),
    ];
  }
  const isBlind = hole.bottom < host.bottom;
  return [
    [point(radius, well.top), point(radius, hole.bottom), ...(isBlind ? [point(0, hole.bottom)] : [])],
    ...(isSunk ? [[point(radius, 0), point(radius, insert.top)]] : []),
  ];
}

/** Below this the two holes are one line on paper, mm. */
const SAME_HOLE = 0.02;

function drawnHole(input: SectionInput, { hole, insert, well }: Levels): readonly Polyline[] {
  const { borePrinted, boreDrawn } = input.hole;
  if (Math.abs(boreDrawn - borePrinted) < SAME_HOLE) return [];
  const radius = boreDrawn / 2;
  const isNear = input.insert.side === 'near-side';
  const sunk = isNear ? { top: hole.top, bottom: insert.top } : { top: insert.bottom, bottom: hole.bottom };
  return [well, sunk]
    .filter(({ top, bottom }) => bottom > top)
    .map(({ top, bottom }) => [point(radius, top), point(radius, bottom)]);
}

/** Right halves of the face, the bottom, and a boss's side with the plate it stands on. */
function faceEdges(input: SectionInput, { hole, host }: Levels, frame: Frame): readonly Polyline[] {
  const { insert } = input;
  const isNear = insert.side === 'near-side';
  const radius = input.hole.borePrinted / 2;
  const mouth = insert.sunk > 0 ? radius : insert.knurlDiameter / 2;
  const isBlind = isNear && hole.bottom < host.bottom;
  const topInner = isNear ? mouth : throughRadius(input);
  const bottomInner = isNear ? (isBlind ? 0 : radius) : mouth;
  const wide = frame.halfWidth;
  const spans = bossSpans(input);
  const boss = (input.host.bossDiameter ?? 0) / 2;
  if (!spans) {
    return [
      [point(topInner, 0), point(faceEnd(input, frame), 0)],
      [point(bottomInner, host.bottom), point(wide, host.bottom)],
    ];
  }
  const { plate } = spans;
  if (isNear) {
    return [
      [point(topInner, 0), point(boss, 0), point(boss, plate.top), point(faceEnd(input, frame), plate.top)],
      [point(bottomInner, host.bottom), point(wide, host.bottom)],
    ];
  }
  return [
    [point(topInner, 0), point(faceEnd(input, frame), 0)],
    [
      point(bottomInner, host.bottom),
      point(boss, host.bottom),
      point(boss, plate.bottom),
      point(wide, plate.bottom),
    ],
  ];
}

/** The face ends at the break edge, or where a support stands on it. */
function faceEnd(input: SectionInput, frame: Frame): number {
  return needsSupports(input) ? supportRadius(input, frame) : frame.halfWidth;
}
