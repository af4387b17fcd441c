import { bossSpans, type Frame, needsSupports, supportRadius } from './frame.ts';
import { throughRadius } from './host-shapes.ts';
import type { Levels } from './levels.ts';
import { type Outline, type Point, point } from './points.ts';
import type { SectionInput } from './section-input.ts';

export interface ForcePath {
  /** Corners of the closed line on the left of the axis, upwards in the screw first. */
  readonly corners: Outline;
  readonly arrows: readonly ForceArrow[];
}

export interface ForceArrow {
  readonly at: Point;
  readonly direction: 'up' | 'down' | 'right';
}

/** The way of the clamp force: up the screw, down the clamped part, back through brass or through plastic. */
export function forcePath(input: SectionInput, levels: Levels, frame: Frame): ForcePath {
  const { screw, clamped } = input;
  const inScrew = -0.24 * screw.nominalDiameter;
  const headRadius = screw.head.diameter / 2;
  const bore = clamped.clearanceHole / 2;
  const bearingRadius = Math.min(headRadius, (clamped.sleeve?.outsideDiameter ?? Infinity) / 2);
  const isCountersunk = screw.head.shape === 'countersunk';
  const bearing = isCountersunk ? levels.head.top : levels.head.bottom;
  const top = isCountersunk ? levels.head.top + 0.3 * screw.head.height : bearing - 0.3 * screw.head.height;
  const length = levels.insert.bottom - levels.insert.top;
  const reached = Math.min(levels.shank.bottom, levels.insert.bottom) - 0.08 * length;
  const turn = Math.max(
    levels.insert.top + 0.2 * length,
    Math.min(levels.insert.top + 0.52 * length, reached),
  );
  const underHead = -(isCountersunk
    ? (headRadius + bore) / 2
    : bore + 0.45 * Math.max(0.2, bearingRadius - bore));
  const up: ForceArrow = {
    at: point(inScrew, clampedLevel(input, levels)),
    direction: 'up',
  };
  const brass = brassLane(input);
  if (brass !== undefined) {
    return {
      corners: [point(inScrew, top), point(underHead, top), point(-brass, turn), point(inScrew, turn)],
      arrows: [up, { at: point((underHead - brass) / 2, levels.clamped.bottom), direction: 'down' }],
    };
  }
  return throughPlastic({ input, levels, frame, inScrew, underHead, top, turn, up });
}

interface PlasticWay {
  readonly input: SectionInput;
  readonly levels: Levels;
  readonly frame: Frame;
  readonly inScrew: number;
  readonly underHead: number;
  readonly top: number;
  readonly turn: number;
  readonly up: ForceArrow;
}

function throughPlastic(way: PlasticWay): ForcePath {
  const { input, levels, frame, inScrew, underHead, top, turn, up } = way;
  const sideways = clampedLevel(input, levels);
  const lane = -plasticLane(input, frame);
  const start = [
    point(inScrew, top),
    point(underHead, top),
    point(underHead, sideways),
    point(lane, sideways),
  ];
  const boss = input.host.bossDiameter;
  const spans = bossSpans(input);
  if (needsSupports(input) && boss !== undefined && spans) {
    const plate = (spans.plate.top + spans.plate.bottom) / 2;
    const inBoss = -(boss / 2 + input.insert.knurlDiameter / 2) / 2;
    return {
      corners: [
        ...start,
        point(lane, plate),
        point(inBoss, plate),
        point(inBoss, turn),
        point(inScrew, turn),
      ],
      arrows: [
        up,
        { at: point(lane, (levels.clamped.bottom + plate) / 2), direction: 'down' },
        { at: point(inBoss, (plate + turn) / 2), direction: turn < plate ? 'up' : 'down' },
      ],
    };
  }
  const down = Math.max(0, levels.clamped.bottom) + (turn - levels.clamped.bottom) * 0.5;
  return {
    corners: [...start, point(lane, turn), point(inScrew, turn)],
    arrows: [
      up,
      { at: point(lane, Math.min(down, turn)), direction: 'down' },
      { at: point((lane - input.insert.knurlDiameter / 2) / 2, turn), direction: 'right' },
    ],
  };
}

/** Distance from the axis at which the force goes down in plastic. */
function plasticLane(input: SectionInput, frame: Frame): number {
  const { clamped, insert, hole, host } = input;
  if (needsSupports(input)) return (supportRadius(input, frame) + frame.halfWidth) / 2;
  const beside = Math.max(clamped.clearanceHole, insert.knurlDiameter, hole.borePrinted) / 2;
  const outer = Math.min((host.bossDiameter ?? 2 * frame.halfWidth) / 2, frame.halfWidth);
  return beside + Math.min(0.45 * (outer - beside), 0.3 * insert.knurlDiameter);
}

/** Level in the clamped part that stays in sight when the middle of a thick one is left out. */
function clampedLevel({ insert }: SectionInput, { clamped }: Levels): number {
  return clamped.top + Math.min((clamped.bottom - clamped.top) / 2, 0.7 * insert.knurlDiameter);
}

/** Distance from the axis at which the force goes down into the brass; none where it takes the plastic. */
function brassLane(input: SectionInput): number | undefined {
  const { screw, insert } = input;
  const pilot = insert.pilotDiameter / 2;
  if (input.seat === 'on-insert') return (screw.nominalDiameter / 2 + pilot) / 2;
  const shoulder = throughRadius(input);
  return input.seat === 'far-side' && insert.side === 'far-side' && shoulder < pilot && !needsSupports(input)
    ? Math.max(shoulder + 0.35 * (pilot - shoulder), (screw.nominalDiameter / 2 + pilot) / 2)
    : undefined;
}
