import { type InsertShape, insertProfile } from './insert-profile.ts';
import type { DimensionLine, PlainLine } from './placed.ts';
import { boxOutline, mirrored, type Outline, type Point, type Polyline, point } from './points.ts';

export const portraitDimensionIds = ['knurl-diameter', 'length', 'knurled-length', 'pilot-diameter'] as const;

export type PortraitDimensionId = (typeof portraitDimensionIds)[number];

export interface PortraitLayout {
  readonly width: number;
  readonly height: number;
  /** px per mm */
  readonly scale: number;
  /** Left half, cut. */
  readonly cut: Outline;
  /** Right half, seen from outside. */
  readonly seen: Outline;
  readonly knurl: readonly Outline[];
  readonly thick: readonly Polyline[];
  readonly thin: readonly Polyline[];
  readonly centre: Polyline;
  readonly lines: readonly DimensionLine[];
  readonly extensions: readonly PlainLine[];
  /** Middle of each value. */
  readonly values: Readonly<Record<PortraitDimensionId, Point>>;
}

const SHEET = { width: 348, top: 50, below: 47, mostWidth: 138, mostHeight: 220 };
const LEFT_LINE = 66;
const RIGHT_LINE = 290;

/** The insert with its four sizes round it, px. */
export function portraitLayout(insert: InsertShape): PortraitLayout {
  const scale = Math.min(SHEET.mostWidth / insert.knurlDiameter, SHEET.mostHeight / insert.length);
  const axis = SHEET.width / 2;
  const place = ({ x, y }: Point) => point(axis + x * scale, SHEET.top + y * scale);
  const profile = insertProfile(insert);
  const [upper, lower] = profile.bands;
  const top = SHEET.top;
  const bottom = SHEET.top + insert.length * scale;
  const height = bottom + SHEET.below;
  const pilotLine = bottom + 31;
  const knurlTop = top + (upper?.top ?? 0) * scale;
  const knurlBottom = top + (lower?.bottom ?? insert.length) * scale;
  const knurl = (insert.knurlDiameter / 2) * scale;
  const pilot = (insert.pilotDiameter / 2) * scale;
  const ring = profile.rootRadius;
  return {
    width: SHEET.width,
    height,
    scale,
    cut: mirrored(profile.half).map(place),
    seen: [point(0, 0), ...profile.outside, point(0, insert.length)].map(place),
    knurl: profile.bands.map((band) => boxOutline({ left: 0, right: ring, ...band }).map(place)),
    thick: [
      [point(0, 0), ...profile.outside, point(0, insert.length)].map(place),
      [point(-insert.minorDiameter / 2, insert.length), point(0, insert.length)].map(place),
      [point(-insert.nominalDiameter / 2, 0), point(0, 0)].map(place),
    ],
    thin: [
      ...profile.bands.flatMap(({ top: from, bottom: to }) =>
        [from, to].map((y) => [point(0, y), point(ring, y)].map(place)),
      ),
      [point(-insert.nominalDiameter / 2, 0), point(-insert.nominalDiameter / 2, insert.length)].map(place),
    ],
    centre: [point(axis, top - 14), point(axis, bottom + 14)],
    lines: [
      dimension(point(axis - knurl, 20), point(axis + knurl, 20)),
      dimension(point(LEFT_LINE, top), point(LEFT_LINE, bottom)),
      dimension(point(RIGHT_LINE, knurlTop), point(RIGHT_LINE, knurlBottom)),
      dimension(point(axis - pilot, pilotLine), point(axis + pilot, pilotLine)),
    ],
    extensions: [
      { from: point(axis - knurl, knurlTop + 9), to: point(axis - knurl, 14) },
      { from: point(axis + knurl, knurlTop + 9), to: point(axis + knurl, 14) },
      { from: point(axis - pilot - 5, top), to: point(LEFT_LINE - 6, top) },
      { from: point(axis - pilot - 3, bottom), to: point(LEFT_LINE - 6, bottom) },
      { from: point(axis + knurl + 3, knurlTop), to: point(RIGHT_LINE + 6, knurlTop) },
      { from: point(axis + knurl + 3, knurlBottom), to: point(RIGHT_LINE + 6, knurlBottom) },
      { from: point(axis - pilot, bottom - 3), to: point(axis - pilot, pilotLine + 6) },
      { from: point(axis + pilot, bottom - 3), to: point(axis + pilot, pilotLine + 6) },
    ],
    values: {
      'knurl-diameter': point(axis, 20),
      length: point(LEFT_LINE, (top + bottom) / 2),
      'knurled-length': point(RIGHT_LINE, (knurlTop + knurlBottom) / 2),
      'pilot-diameter': point(axis, pilotLine),
    },
  };
}

/** Room between two extension lines that a value with its arrows takes, px. */
const ROOM = { level: 112, upright: 66 };

function dimension(from: Point, to: Point): DimensionLine {
  const room = from.x === to.x ? ROOM.upright : ROOM.level;
  const arrow = Math.hypot(to.x - from.x, to.y - from.y) < room ? 'outside' : 'inside';
  return { from, to, fromArrow: arrow, toArrow: arrow };
}
