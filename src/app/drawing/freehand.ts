import { type Polyline, point } from './points.ts';

/** A fixed sequence of −1…1 that looks uneven; the same place always gives the same value. */
export function unevenness(index: number, seed: number): number {
  const wave = Math.sin(index * 12.9898 + seed * 78.233) * 43758.5453;
  return 2 * (wave - Math.floor(wave)) - 1;
}

export interface FreehandEdge {
  /** Where the edge would stand if it were straight, mm. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
  /** Largest departure, mm. */
  readonly wobble: number;
  /** Distance between two corners, mm. */
  readonly step: number;
  readonly seed: number;
}

/** An upright break edge, from its upper end to its lower end. */
export function uprightFreehand({ at, from, to, wobble, step, seed }: FreehandEdge): Polyline {
  const corners = Math.max(2, Math.round(Math.abs(to - from) / step));
  return Array.from({ length: corners + 1 }, (_, index) =>
    point(at + wobble * unevenness(index, seed), from + ((to - from) * index) / corners),
  );
}

/** A level break edge, from left to right. */
export function levelFreehand(edge: FreehandEdge): Polyline {
  return uprightFreehand(edge).map(({ x, y }) => point(y, x));
}
