import { unevenness } from './freehand.ts';
import type { Levels } from './levels.ts';
import { lowered, mirrored, type Outline, point, turnedOver } from './points.ts';
import type { SectionInput } from './section-input.ts';

export interface MeltShapes {
  /** Plastic that the hot insert melted around itself. */
  readonly collar: readonly Outline[];
  /** What it pushed into the well. */
  readonly bulges: readonly Outline[];
}

/** Remelted plastic to both sides of the axis. */
export function meltShapes(input: SectionInput, levels: Levels): MeltShapes {
  const collar = input.insert.remelted ? collarOutline(input) : undefined;
  const isFar = input.insert.side === 'far-side';
  const middle = (levels.insert.top + levels.insert.bottom) / 2;
  const placed = collar && lowered(collar, levels.insert.top);
  const turned = placed && (isFar ? turnedOver(placed, middle) : placed);
  const bulge = bulgeOutline(input, levels);
  return {
    collar: turned ? [mirrored(turned), turned] : [],
    bulges: bulge.length > 0 ? [mirrored(bulge), bulge] : [],
  };
}

/** Drawn reach of the melt beyond the knurl over the knurl diameter, and how uneven it is. */
const REACH = 0.026;
const UNEVEN = 0.009;

function collarOutline({ insert, hole }: SectionInput): Outline {
  const { knurlDiameter, length } = insert;
  const knurl = knurlDiameter / 2;
  const bore = hole.borePrinted / 2;
  const hidden = insert.pilotDiameter * 0.47;
  const knurlEnd = length - (length - Math.min(insert.knurledLength, length)) * 0.536;
  const corners = Math.max(4, Math.round(knurlEnd / (0.06 * knurlDiameter)));
  const outer = Array.from({ length: corners }, (_, index) => {
    const reach = (REACH + UNEVEN * unevenness(index, 11)) * knurlDiameter;
    return point(knurl + reach, (knurlEnd * (index + 0.6)) / corners);
  });
  return [
    point(hidden, 0),
    point(Math.max(knurl + 0.01 * knurlDiameter, bore + hole.chamfer), 0),
    ...outer,
    point((knurl + bore) / 2, knurlEnd + (length - knurlEnd) * 0.6),
    point(bore, length),
    point(hidden, length),
  ];
}

const BULGE_CORNERS = 24;
/** A well lower than this share of the bore's radius holds no lump that could be seen. */
const LEAST_ROOM = 0.15;

/** Share of its box that the lumpy bulge fills: mean of the drawn profile. */
const BULGE_FULLNESS = 0.78;

/** A lump on the wall of the well, next to the insert, of the volume that was displaced. */
function bulgeOutline({ insert, hole, screw }: SectionInput, { well, shank }: Levels): Outline {
  const room = well.bottom - well.top;
  const bore = hole.borePrinted / 2;
  if (!(hole.meltHeight > 0) || room < LEAST_ROOM * bore) return [];
  const height = Math.min(room, Math.max(2 * hole.meltHeight, 0.5 * bore));
  // Ring of rectangular cut: height · fullness · (bore² − (bore − p)²) = meltHeight · bore².
  const share = Math.min(1, hole.meltHeight / (height * BULGE_FULLNESS));
  const free = bore - bore * Math.sqrt(1 - share);
  const isNear = insert.side === 'near-side';
  const screwInWell = isNear ? shank.bottom > well.top : shank.bottom > well.top && shank.top < well.bottom;
  const most = screwInWell ? Math.max(0, bore - (1.04 * screw.nominalDiameter) / 2) : 0.86 * bore;
  const reach = Math.min(free, most);
  const lump = Array.from({ length: BULGE_CORNERS + 1 }, (_, index) => {
    const along = index / BULGE_CORNERS;
    const swell = Math.sin(Math.PI * along) ** 0.55 * (1 - 0.06 + 0.06 * Math.cos(6 * Math.PI * along));
    const y = isNear ? well.top + along * height : well.bottom - along * height;
    return point(bore - reach * swell, y);
  });
  return lump;
}
