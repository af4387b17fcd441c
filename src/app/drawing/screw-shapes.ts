import type { Levels } from './levels.ts';
import { mirrored, type Outline, type Point, type Polyline, point } from './points.ts';
import type { SectionInput } from './section-input.ts';

export interface ScrewShapes {
  readonly head: Outline;
  readonly shank: Outline;
  /** The two minor lines of the thread and the line where the tip's chamfer starts. */
  readonly minorLines: readonly Polyline[];
  readonly tipLine: Polyline;
  readonly socket: readonly Polyline[];
  readonly washer: readonly Outline[];
}

/** Screw and head uncut, washer cut. */
export function screwShapes(input: SectionInput, levels: Levels): ScrewShapes {
  const { screw } = input;
  const major = screw.nominalDiameter / 2;
  const minor = screw.minorDiameter / 2;
  const { top, bottom } = levels.shank;
  const chamfer = Math.min(major - minor, (bottom - top) / 2);
  const shankRight = [point(major, top), point(major, bottom - chamfer), point(major - chamfer, bottom)];
  return {
    head: symmetric(headEdge(input, levels)),
    shank: symmetric(shankRight),
    minorLines: [-minor, minor].map((x) => [point(x, top), point(x, bottom - chamfer)]),
    tipLine: [point(-major, bottom - chamfer), point(major, bottom - chamfer)],
    socket: socketLines(input, levels),
    washer: washerHalves(input, levels),
  };
}

/** Closes a right edge, given from top to bottom, with its mirror image. */
function symmetric(right: readonly Point[]): Outline {
  return [...right, ...[...mirrored(right)].reverse()];
}

/** Right edge of the head from top to bottom. */
function headEdge({ screw }: SectionInput, { head }: Levels): readonly Point[] {
  const radius = screw.head.diameter / 2;
  const { top, bottom } = head;
  switch (screw.head.shape) {
    case 'cylindrical': {
      const chamfer = 0.05 * screw.head.diameter;
      return [point(radius - chamfer, top), point(radius, top + chamfer), point(radius, bottom)];
    }
    case 'countersunk':
      return [point(radius, top), point(screw.nominalDiameter / 2, bottom)];
    case 'button':
      return buttonEdge(radius, top, bottom);
  }
}

const BUTTON_CORNERS = 14;

/** A dome over a low rim, flat on top where the socket opens. */
function buttonEdge(radius: number, top: number, bottom: number): readonly Point[] {
  const rim = 0.14 * (bottom - top);
  const flat = 0.5 * radius;
  const height = bottom - top - rim;
  const dome = Array.from({ length: BUTTON_CORNERS + 1 }, (_, index) => {
    const angle = (Math.PI / 2) * (1 - index / BUTTON_CORNERS);
    return point(flat + (radius - flat) * Math.cos(angle), bottom - rim - height * Math.sin(angle));
  });
  return [...dome, point(radius, bottom)];
}

/** Hidden edges of the hexagon socket: sides, floor and the drill's cone below. */
function socketLines({ screw }: SectionInput, { head }: Levels): readonly Polyline[] {
  const half = screw.head.socketAcrossFlats / 2;
  const floor = head.top + Math.min(screw.head.socketDepth, 0.75 * screw.head.height);
  const cone = Math.min(half * 0.36, (head.bottom - floor) * 0.7);
  return [
    [
      point(-half, head.top),
      point(-half, floor),
      point(0, floor + cone),
      point(half, floor),
      point(half, head.top),
    ],
    [point(-half, floor), point(half, floor)],
  ];
}

function washerHalves({ screw }: SectionInput, { washer }: Levels): readonly Outline[] {
  if (!washer || !screw.washer) return [];
  const inner = screw.washer.holeDiameter / 2;
  const outer = screw.washer.outsideDiameter / 2;
  const right = [
    point(inner, washer.top),
    point(outer, washer.top),
    point(outer, washer.bottom),
    point(inner, washer.bottom),
  ];
  return [mirrored(right), right];
}
