import type { Span } from './levels.ts';
import { type Outline, type Point, point } from './points.ts';

/** The insert alone; lengths in mm. */
export interface InsertShape {
  readonly nominalDiameter: number;
  readonly minorDiameter: number;
  readonly knurlDiameter: number;
  readonly pilotDiameter: number;
  readonly length: number;
  readonly knurledLength: number;
}

/** The right half of an insert, its mouth at level 0, its pilot below. */
export interface InsertProfile {
  /** From the mouth along the outside to the pilot end. */
  readonly outside: readonly Point[];
  /** The cut half: outside and bore at the minor diameter. */
  readonly half: Outline;
  readonly bands: readonly Span[];
  readonly groove: Span;
  readonly rootRadius: number;
  readonly grooveRadius: number;
}

/** How the length without knurl is drawn: lead at the mouth, groove between two bands, pilot. */
const PLAIN_SHARES = { lead: 0.107, groove: 0.357 };
/** Drawn pitch of the knurl over its diameter. */
const TOOTH_PITCH = 0.072;

/** Draws an insert of given outer sizes; teeth and groove are a picture, not a measurement. */
export function insertProfile(insert: InsertShape): InsertProfile {
  const { nominalDiameter, minorDiameter, knurlDiameter, pilotDiameter, length } = insert;
  const knurl = knurlDiameter / 2;
  const pilot = pilotDiameter / 2;
  const thread = nominalDiameter / 2;
  const knurled = Math.min(insert.knurledLength, length);
  const plain = length - knurled;
  const lead = plain * PLAIN_SHARES.lead;
  const groove = { top: lead + knurled / 2, bottom: lead + knurled / 2 + plain * PLAIN_SHARES.groove };
  const bands = [
    { top: lead, bottom: groove.top },
    { top: groove.bottom, bottom: groove.bottom + knurled / 2 },
  ];
  const rootRadius = pilot + (knurl - pilot) * 0.25;
  const grooveRadius = Math.max(pilot - (knurl - pilot) * 0.2, thread + (pilot - thread) * 0.35);
  const edge = Math.min(0.024 * knurlDiameter, length * 0.05, (pilot - thread) * 0.4);
  const teeth = { rootRadius, tipRadius: knurl, pitch: TOOTH_PITCH * knurlDiameter };
  const knurlEnd = groove.bottom + knurled / 2;
  const outside = [
    point(Math.min(pilot, rootRadius) - edge / 3, 0),
    ...bands.slice(0, 1).flatMap((band) => toothedEdge(band, teeth)),
    point(grooveRadius, groove.top + (groove.bottom - groove.top) * 0.12),
    point(grooveRadius, groove.bottom - (groove.bottom - groove.top) * 0.12),
    ...bands.slice(1).flatMap((band) => toothedEdge(band, teeth)),
    point(pilot, Math.min(knurlEnd + edge / 2, length - edge)),
    point(pilot, length - edge),
    point(pilot - edge, length),
  ];
  const bore = minorDiameter / 2;
  const half = [point(bore, thread - bore + edge), point(thread + edge, 0), ...outside, point(bore, length)];
  return { outside, half, bands, groove, rootRadius, grooveRadius };
}

interface Teeth {
  readonly rootRadius: number;
  readonly tipRadius: number;
  readonly pitch: number;
}

/** Corners of one knurled band: root, rise, tip, fall, for each tooth. */
function toothedEdge({ top, bottom }: Span, { rootRadius, tipRadius, pitch }: Teeth): readonly Point[] {
  const count = Math.max(2, Math.round((bottom - top) / pitch));
  const step = (bottom - top) / count;
  return Array.from({ length: count }, (_, index) => top + index * step).flatMap((start) => [
    point(rootRadius, start),
    point(tipRadius, start + 0.3 * step),
    point(tipRadius, start + 0.62 * step),
    point(rootRadius, start + 0.92 * step),
  ]);
}
