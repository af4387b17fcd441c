import type { Span } from './levels.ts';
import type { SectionInput } from './section-input.ts';

/** How much of the joint is drawn to each side, and how the break edges look. */
export interface Frame {
  readonly halfWidth: number;
  /** Largest departure of a break edge, mm. */
  readonly wobble: number;
}

/** Room beside the widest feature over the knurl diameter; little on a narrow sheet. */
const ROOM_BESIDE = { ample: 0.32, tight: 0.2 };
/** Width of a support over the knurl diameter. */
const SUPPORT = 0.34;

export type Room = keyof typeof ROOM_BESIDE;

/** Least half width that shows every feature of the joint with some of what surrounds it. */
export function leastHalfWidth(input: SectionInput, room: Room): number {
  const { screw, clamped, insert, hole, host } = input;
  const features = [
    hole.bossLeast,
    host.bossDiameter ?? 0,
    hole.borePrinted + 2 * host.wallThickness,
    screw.head.diameter,
    screw.washer?.outsideDiameter ?? 0,
    clamped.clearanceHole,
    clamped.sleeve?.outsideDiameter ?? 0,
    insert.knurlDiameter,
  ];
  const beside = ROOM_BESIDE[room] + (needsSupports(input) ? SUPPORT : 0);
  return Math.max(...features) / 2 + beside * insert.knurlDiameter;
}

/** Over an open gap the clamped part stands on something beside the insert. */
export function needsSupports({ gap }: SectionInput): boolean {
  return gap > 0;
}

/** Where the supports of an open gap begin, from the axis. */
export function supportRadius(input: SectionInput, frame: Frame): number {
  return frame.halfWidth - SUPPORT * input.insert.knurlDiameter;
}

/** A free boss, and the plate it stands on or hangs from. */
export interface BossSpans {
  readonly boss: Span;
  readonly plate: Span;
}

/** Share of the floor that the drawn plate takes; how thick it really is, nobody asked. */
const PLATE = 0.6;

/** None without a free boss; from the far side the plate lies under the clamped part. */
export function bossSpans({ host, insert }: SectionInput): BossSpans | undefined {
  if (host.bossDiameter === undefined) return undefined;
  const { thickness } = host;
  const plate = PLATE * Math.max(host.floor, 0.1 * thickness);
  return insert.side === 'near-side'
    ? {
        boss: { top: 0, bottom: thickness - plate },
        plate: { top: thickness - plate, bottom: thickness },
      }
    : { boss: { top: plate, bottom: thickness }, plate: { top: 0, bottom: plate } };
}

/** Level that the supports of an open gap stand on. */
export function supportFoot(input: SectionInput): number {
  return bossSpans(input)?.plate.top ?? 0;
}
