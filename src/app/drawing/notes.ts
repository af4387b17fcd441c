import type { DimensionId, NoteId } from './dimension-ids.ts';
import { bossSpans, supportRadius } from './frame.ts';
import { type Point, point } from './points.ts';
import type { SectionGeometry } from './section-geometry.ts';
import type { SectionInput } from './section-input.ts';

/** Words, or the place of a value. */
export type NotePiece = string | { readonly value: DimensionId };

export interface Note {
  readonly id: NoteId;
  readonly head: readonly NotePiece[];
  readonly detail: readonly NotePiece[];
  /** What the leader points at, mm. */
  readonly anchor: Point;
}

const value = (id: DimensionId): NotePiece => ({ value: id });

/** The notes of a section; the skin is noted only when asked for. */
export function sectionNotes(
  input: SectionInput,
  geometry: SectionGeometry,
  withSkin: boolean,
): readonly Note[] {
  return [
    screwNote(input, geometry),
    ...washerNote(input, geometry),
    ...sleeveNote(input, geometry),
    clearanceNote(input, geometry),
    seatNote(input, geometry),
    knurlNote(input, geometry),
    ...(withSkin ? [skinNote(input, geometry)] : []),
    wallNote(input, geometry),
    ...meltNote(input, geometry),
    infillNote(input, geometry),
  ];
}

function screwNote({ screw }: SectionInput, { levels }: SectionGeometry): Note {
  const { top, bottom } = levels.head;
  const isFlat = screw.head.shape === 'countersunk';
  return {
    id: 'screw',
    head: [`Screw ${screw.designation} × `, value('screw-choice')],
    detail: [screw.state === 'refused' ? 'no length fits; the least is drawn' : screw.description],
    anchor: point((isFlat ? 0.32 : 0.42) * screw.head.diameter, top + (isFlat ? 0.2 : 0.45) * (bottom - top)),
  };
}

function washerNote({ screw }: SectionInput, { levels: { washer } }: SectionGeometry): readonly Note[] {
  if (!washer || !screw.washer) return [];
  const { outsideDiameter, thickness } = screw.washer;
  const anchor = point(0.46 * outsideDiameter, (washer.top + washer.bottom) / 2);
  return [{ id: 'washer', head: [`Washer ⌀ ${outsideDiameter} × ${thickness}`], detail: [], anchor }];
}

function sleeveNote({ clamped, insert }: SectionInput, { levels }: SectionGeometry): readonly Note[] {
  if (!clamped.sleeve) return [];
  const { outsideDiameter, name } = clamped.sleeve;
  const { top, bottom } = levels.clamped;
  return [
    {
      id: 'sleeve',
      head: [`Spacer ⌀ ${outsideDiameter}`],
      detail: [name],
      anchor: point(
        (outsideDiameter + clamped.clearanceHole) / 4,
        top + Math.min(0.18 * (bottom - top), 0.3 * insert.knurlDiameter),
      ),
    },
  ];
}

function clearanceNote(input: SectionInput, { levels: { clamped } }: SectionGeometry): Note {
  const { screw, insert } = input;
  const hole = input.clamped.clearanceHole;
  const words =
    input.seat === 'far-side'
      ? []
      : [hole < insert.knurlDiameter ? 'smaller than the knurl' : 'reaches the knurl'];
  const share = screw.head.shape === 'countersunk' ? 0.85 : 0.3;
  return {
    id: 'clearance',
    head: ['Clearance ⌀ ', value('clearance-hole')],
    detail: words,
    anchor: point(
      (hole + screw.nominalDiameter) / 4,
      clamped.top + Math.min(share * (clamped.bottom - clamped.top), 0.6 * insert.knurlDiameter),
    ),
  };
}

function seatNote(input: SectionInput, geometry: SectionGeometry): Note {
  const { levels, frame } = geometry;
  const { insert, clamped, hole, host } = input;
  switch (input.seat) {
    case 'on-insert':
      return {
        id: 'seat',
        head: [`${clamped.sleeve ? 'Spacer' : 'Lid'} seats on brass`],
        detail: ['clamp force stays in metal'],
        anchor: point((clamped.clearanceHole + insert.pilotDiameter) / 4, Math.max(levels.insert.top, 0)),
      };
    case 'far-side':
      return {
        id: 'seat',
        head: ['Shoulder over the insert'],
        detail: ['carries the clamp force'],
        anchor: point((clamped.clearanceHole + hole.borePrinted) / 4, levels.hole.top),
      };
    case 'over-gap':
      return {
        id: 'seat',
        head: ['Gap under the lid'],
        detail: ['force pulls at the knurl'],
        anchor:
          input.gap > 0
            ? point(supportRadius(input, frame) - 0.15 * insert.knurlDiameter, -input.gap / 2)
            : point(0.55 * insert.knurlDiameter, 0),
      };
    case 'on-plastic':
      return {
        id: 'seat',
        head: [`${clamped.sleeve ? 'Spacer' : 'Lid'} seats on plastic`],
        detail: ['force pulls at the knurl'],
        anchor: point(
          (Math.max(clamped.clearanceHole, insert.knurlDiameter) +
            Math.min(hole.bossLeast, host.bossDiameter ?? Infinity)) /
            4,
          levels.clamped.bottom,
        ),
      };
  }
}

function knurlNote({ insert, host }: SectionInput, { levels }: SectionGeometry): Note {
  const { top, bottom } = levels.insert;
  return {
    id: 'knurl',
    head: ['Knurl ⌀ ', value('knurl-diameter'), ', bite ', value('bite')],
    detail: [insert.remelted ? `a side, in remelted ${host.name}` : `a side, in cold ${host.name}`],
    anchor: point(0.485 * insert.knurlDiameter, top + (bottom - top) * 0.28),
  };
}

function skinNote({ host }: SectionInput, { frame }: SectionGeometry): Note {
  const edge = Math.min(frame.halfWidth, (host.bossDiameter ?? Infinity) / 2);
  return {
    id: 'skin',
    head: ['Skin ', value('top-skin'), ' solid'],
    detail: [],
    anchor: point(0.93 * edge, Math.min(host.topSkin, host.thickness) / 2),
  };
}

function wallNote({ host, hole }: SectionInput, { levels }: SectionGeometry): Note {
  const { top, bottom } = levels.insert;
  return {
    id: 'walls',
    head: host.wallMeasured
      ? ['Wall ', value('wall'), ', measured']
      : [value('wall-count'), ' walls of ', value('line-width')],
    detail: host.wallMeasured
      ? ['layers of ', value('layer-height')]
      : ['in all ', value('wall'), ', layers ', value('layer-height')],
    anchor: point(hole.borePrinted / 2 + 0.6 * host.wallThickness, top + (bottom - top) * 0.76),
  };
}

function meltNote({ insert, hole }: SectionInput, { levels, melt }: SectionGeometry): readonly Note[] {
  if (!insert.remelted) return [];
  const bulge = melt.bulges.at(-1);
  const xs = bulge?.map(({ x }) => x) ?? [];
  const ys = bulge?.map(({ y }) => y) ?? [];
  const anchor = bulge
    ? point((Math.min(...xs) + (3 * hole.borePrinted) / 2) / 4, (Math.min(...ys) + Math.max(...ys)) / 2)
    : point(
        0.47 * insert.knurlDiameter,
        levels.insert.top + (insert.side === 'near-side' ? 0.44 : 0.56) * insert.length,
      );
  return [
    {
      id: 'melt',
      head: ['Melt ', value('melt-volume'), ' mm³'],
      detail: [bulge ? 'gathers in the well' : 'stays round the knurl'],
      anchor,
    },
  ];
}

function infillNote(input: SectionInput, geometry: SectionGeometry): Note {
  return {
    id: 'infill',
    head: ['Infill ', value('infill'), ` %, ${input.host.infill.pattern}`],
    detail: [],
    anchor: infillAnchor(input, geometry),
  };
}

/** Under the hole where the floor has room for infill, else beside the walls, else in a boss's plate. */
function infillAnchor(input: SectionInput, { levels, frame }: SectionGeometry): Point {
  const { insert, host, hole } = input;
  const { floor } = levels;
  const wallsEnd = hole.borePrinted / 2 + host.wallThickness;
  const boss = host.bossDiameter === undefined ? undefined : host.bossDiameter / 2;
  const outer = boss === undefined ? frame.halfWidth : boss - host.wallThickness;
  const room = floor.bottom - floor.top - host.topSkin;
  const beside = levels.hole.top + 0.62 * (levels.hole.bottom - levels.hole.top);
  if (outer > wallsEnd) {
    const isUnder = insert.side === 'near-side' && boss === undefined && room > 0.2 * insert.knurlDiameter;
    const under = levels.hole.bottom + Math.min(0.45 * room, 0.6 * insert.knurlDiameter);
    return point((wallsEnd + outer) / 2, isUnder ? under : beside);
  }
  const plate = bossSpans(input)?.plate ?? floor;
  return point(((boss ?? 0) + frame.halfWidth) / 2, (plate.top + plate.bottom) / 2);
}
